/** Somebody who types in one document of a language server, always the same slip and its correction. */
export interface Typist {
  readonly name: string;
  /** Types once, and waits for the findings that this makes; ms. */
  edit(): Promise<number>;
  /** Types once and asks something at the place at once; ms to the answer. It waits for the findings all the same. */
  askAfterEdit(question: Question): Promise<number>;
  /** Processor time of the process so far, ms, in steps of ten. */
  processorTime(): number;
  /** Resident memory, MB. */
  memory(): number;
  stop(): Promise<void>;
}

export type Question = 'completion' | 'hover' | 'definition';

/** Pause between two keystrokes: what a server does when it has answered must not be measured with the next one. */
export const pause = () => new Promise((resolve) => setTimeout(resolve, 20));

/** A place in a text by its offset. */
export function positionAt(text: string, offset: number): { readonly line: number; readonly character: number } {
  const before = text.slice(0, offset).split('\n');
  return { line: before.length - 1, character: before.at(-1)!.length };
}

/** What is waited for, or an error after some seconds. */
export async function inTime<T>(what: string, seconds: number, waited: Promise<T>): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_resolve, reject) => {
    timer = setTimeout(() => reject(new Error(`${what}: nothing after ${seconds} s`)), seconds * 1000);
  });
  try {
    return await Promise.race([waited, late]);
  } finally {
    clearTimeout(timer);
  }
}
