import { english, type Said } from '../say/say.ts';
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

/** A change of text that fixes a finding. @typeParam Text a rule says it, a finding has it in English */
export interface Fix<Text = string> {
  readonly title: Text;
  /**
   * There is one way to fix it, and this is it: it adds no figure and no fact that nobody gave, and changes nothing else.
   * Only such a fix is preferred, and applied together with others.
   */
  readonly safe: boolean;
  readonly edits: readonly Edit[];
}

/** A report on one place, in parts that can be shown separately. `fullMessage` joins them. */
export interface Statement<Text = Said> {
  /** What is wrong: one sentence that stands alone. Without the other parts, everything. */
  readonly message: Text;
  /** Why it matters at the bench: goes on behind the message after a colon, in lower case, with a period at its end. */
  readonly why?: Text | undefined;
  /** What to do: sentences. */
  readonly help?: Text | undefined;
}

/** Another place that has to do with a finding. */
export interface Related<Text = Said> {
  readonly message: Text;
  readonly source: Source;
}

/** A finding in English; what is needed to say it in another language is in `said`. */
export interface Diagnostic extends Statement<string> {
  /** Stable name of the rule, or of what could not be read or checked at all. */
  readonly rule: string;
  readonly severity: Severity;
  /** On which way through the procedure and for which part numbers it happens, where that is not always. Sentences. */
  readonly when?: string;
  readonly source: Source;
  /** Printed number of the step, if it is at a step. */
  readonly step?: string;
  readonly related?: readonly (Related<string> & { readonly said?: Said })[];
  readonly fix?: Fix & { readonly said?: Said };
  readonly said?: Statement & { readonly when?: Said | undefined };
  /** Its severity is that of the day on which what it is judged by was issued: the settings of today change nothing. */
  readonly isSettled?: true;
}

/** A finding in words and as it was said. @param words English unless said otherwise */
export function stated(
  said: NonNullable<Diagnostic['said']>,
  words: (said: Said) => string = english,
): Pick<Diagnostic, 'message' | 'why' | 'help' | 'when' | 'said'> {
  const { message, why, help, when } = said;
  return {
    message: words(message),
    ...(why === undefined ? {} : { why: words(why) }),
    ...(help === undefined ? {} : { help: words(help) }),
    ...(when === undefined ? {} : { when: words(when) }),
    said,
  };
}

/** All that is said, as one text. */
export function fullMessage({ message, why, help, when }: Statement<string> & Pick<Diagnostic, 'when'>): string {
  return inOne(why === undefined ? message : `${message.replace(/\.$/u, '')}: ${why}`, help, when);
}

/** What a list of problems has room for: what is wrong, when, and what to do. */
export function shortMessage({ message, help, when }: Statement<string> & Pick<Diagnostic, 'when'>): string {
  return inOne(message, when, help);
}

function inOne(...parts: readonly (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined).join(' ');
}
