/** Takes the place of a figure, a name or words that only the shop or the maker knows; `blank-left` reports it. */
export const blank = '…';

/** Names as a step lists them. */
export function list(names: readonly string[]): string {
  return names.join(', ');
}
