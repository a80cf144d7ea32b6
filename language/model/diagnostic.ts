import type { Source } from './source.ts';

/** An error keeps the sheet from being released; a warning prints; a hint shows in the editor only. */
export type Severity = 'error' | 'warning' | 'hint';

/** A text that is put in the place of another. */
export interface Edit {
  readonly source: Source;
  readonly text: string;
  /** It goes to the end of the statement that the source is in, before its brace: a name is all that is known of a declaration. */
  readonly endsStatement?: true;
}

/** A change of text that fixes a finding. */
export interface Fix {
  readonly title: string;
  /**
   * There is one way to fix it, and this is it: it adds no figure and no fact that nobody gave, and changes nothing else.
   * Only such a fix is preferred, and applied together with others.
   */
  readonly safe: boolean;
  readonly edits: readonly Edit[];
}

/** A report on one place, in parts that can be shown separately. `fullMessage` joins them. */
export interface Statement {
  /** What is wrong: one sentence that stands alone. Without the other parts, everything. */
  readonly message: string;
  /** Why it matters at the bench: goes on behind the message after a colon, in lower case, with a period at its end. */
  readonly why?: string | undefined;
  /** What to do: sentences. */
  readonly help?: string | undefined;
}

export interface Diagnostic extends Statement {
  /** Stable name of the rule, or of what could not be read or checked at all. */
  readonly rule: string;
  readonly severity: Severity;
  /** On which way through the procedure and for which part numbers it happens, where that is not always. Sentences. */
  readonly when?: string;
  readonly source: Source;
  /** Printed number of the step, if it is at a step. */
  readonly step?: string;
  readonly related?: readonly { readonly message: string; readonly source: Source }[];
  readonly fix?: Fix;
}

/** All that is said, as one text. */
export function fullMessage({ message, why, help, when }: Statement & Pick<Diagnostic, 'when'>): string {
  return inOne(why === undefined ? message : `${message.replace(/\.$/u, '')}: ${why}`, help, when);
}

/** What a list of problems has room for: what is wrong, when, and what to do. */
export function shortMessage({ message, help, when }: Statement & Pick<Diagnostic, 'when'>): string {
  return inOne(message, when, help);
}

function inOne(...parts: readonly (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined).join(' ');
}
