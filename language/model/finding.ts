import type { Source } from './source.ts';

/** An error keeps the sheet from being released; a warning prints; a hint shows in the editor only. */
export type Severity = 'error' | 'warning' | 'hint';

/** A text that is put in the place of another. */
export interface Edit {
  readonly source: Source;
  readonly text: string;
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

export interface Finding {
  /** Stable name of the rule, or `syntax`. */
  readonly rule: string;
  readonly severity: Severity;
  /** What is wrong, why it matters at the bench, what to do. */
  readonly message: string;
  readonly source: Source;
  /** Printed number of the step, where it stands at one. */
  readonly step?: string;
  readonly related?: readonly { readonly message: string; readonly source: Source }[];
  readonly fix?: Fix;
}
