/** One single break of a text. */
export interface Mutant {
  /** What kind of break it is: a row of the report. */
  readonly kind: Kind;
  readonly file: string;
  readonly edits: readonly Edit[];
  /** What was done, in words and with its line: the name of the mutant in the list of survivors. */
  readonly label: string;
  readonly line: number;
  /** Names in the text that was touched: a finding that kills it should mention one of them. */
  readonly names: readonly string[];
}

export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export const kinds = [
  'delete a step',
  'delete a part from a list',
  'swap two steps',
  'delete a tool',
  'delete an accept',
  'delete an on fail',
  'delete a repair from an on fail',
  'delete a time',
  'delete a count of tries',
  'delete a source',
  'delete located',
  'delete another clause',
  'drop a tolerance',
  'change a unit to another kind',
  'change one of a pair',
  'drop a spec of a part number',
  'drop a fact of the family',
  'move a caution behind its step',
  'raise the air',
  'slip a point',
  'turn a limit round',
  'keep what is used once',
  'take another fluid',
  'send to another repair',
  'take the figure of another',
  'empty the words',
] as const;

export type Kind = (typeof kinds)[number];

/** The text with a mutant's edits, which do not overlap. */
export function applied(text: string, edits: readonly Edit[]): string {
  return [...edits]
    .sort((a, b) => b.start - a.start)
    .reduce((now, { start, end, text: put }) => now.slice(0, start) + put + now.slice(end), text);
}
