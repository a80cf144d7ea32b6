import { numbersOf, type PrintContext } from '../print-context.ts';

/** Something that is the same for some of the part numbers. */
export interface ForNumbers<T> {
  readonly made: T;
  readonly numbers: readonly (string | null)[];
  /** It is for all that there are. */
  readonly all: boolean;
}

/** What is made for each part number, once for all for which it is the same; one for which nothing is made has none. */
export function forNumbers<T>(
  numbers: readonly (string | null)[],
  make: (number: string | null) => T | null,
): ForNumbers<T>[] {
  const groups = new Map<string, { made: T; numbers: (string | null)[] }>();
  for (const number of numbers) {
    const made = make(number);
    if (made === null) continue;
    const key = JSON.stringify(made);
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { made, numbers: [number] });
    else known.numbers.push(number);
  }
  return [...groups.values()].map((group) => ({ ...group, all: group.numbers.length === numbers.length }));
}

/** `A-250, A-235`; empty where it is for all of the sheet. */
export function whoseWords({ numbers, all }: ForNumbers<unknown>): string {
  return all ? '' : numbers.join(', ');
}

/** A value, and the part numbers that it is for. */
export interface ByNumber<T> {
  readonly told: T;
  /** `A-250, A-235`; empty: it is for all of the sheet. */
  readonly whose: string;
}

/** The value for each part number of the sheet; with no part numbers it is worked out once, for none. */
export function byNumber<T>(
  setting: Pick<PrintContext, 'numbers'>,
  work: (number: string | null) => T | null,
): ByNumber<T>[] {
  return forNumbers(numbersOf(setting), work).map((group) => ({ told: group.made, whose: whoseWords(group) }));
}

/** `A-250: 53.3 N·m`; the text alone where it is for all. */
export function withNumbers({ told, whose }: ByNumber<string>): string {
  return whose === '' ? told : `${whose}: ${told}`;
}
