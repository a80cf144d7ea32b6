/** Takes the place of a figure, a name or words that only the shop or the maker knows; `blank-left` reports it. */
export const blank = '…';

/** Names as a step lists them; copies of a part have one name together. */
export function list(names: readonly string[]): string {
  return [...new Set(names)].join(', ');
}

/** The first of each name that copies share. */
export function firstOfBase<T>(all: readonly T[], base: (one: T) => string): T[] {
  return [...new Map([...all].reverse().map((one) => [base(one), one])).values()].reverse();
}
