import type { Source } from './source.ts';

/** An error keeps the sheet from being released; a warning prints; a hint shows in the editor only. */
export type Severity = 'error' | 'warning' | 'hint';

/** A change of text that mends a finding. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly { readonly source: Source; readonly text: string }[];
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
