/**
 * What can be wrong with a text before any rule can judge what it says. Each has a rule and a page of its name in
 * diagnostics/areas/language.
 */
export const problemCodes = [
  'blank-left',
  'call-mismatch',
  'clause-without-meaning',
  'endless-steps',
  'head-incomplete',
  'hidden-character',
  'impossible-figure',
  'job-mismatch',
  'line-breaks-off',
  'no-such-step',
  'not-a-name',
  'not-text',
  'number-unreadable',
  'out-of-place',
  'patch-without-effect',
  'quote-missing',
  'result-unreadable',
  'stray-character',
  'too-much-to-read',
  'two-ways-at-once',
  'unbalanced-brace',
  'unit-of-another-kind',
  'unit-unreadable',
  'unknown-word',
  'written-twice',
  'wrong-date',
  'wrong-form-of-limit',
  'wrong-use-of-name',
] as const;

export type ProblemCode = (typeof problemCodes)[number];

/** Those that can come with the text to write instead. */
export type CorrectableCode =
  | 'job-mismatch'
  | 'number-unreadable'
  | 'quote-missing'
  | 'unit-unreadable'
  | 'unknown-word';

const codes: ReadonlySet<string> = new Set(problemCodes);

/** A finding with this rule's name says that something could not be read. */
export function isProblemCode(code: string): code is ProblemCode {
  return codes.has(code);
}
