import { distance } from 'fastest-levenshtein';

/**
 * The names most like a written one, best first, at most three: one slip of the keyboard for each three
 * letters, case not counted. Empty where none is near enough to be meant.
 */
export function nearest(written: string, names: Iterable<string>): string[] {
  const reach = Math.max(1, Math.min(3, Math.floor(written.length / 3) + (written.length > 3 ? 1 : 0)));
  return [...new Set(names)]
    .map((name) => ({ name, far: transposedDistance(written.toLowerCase(), name.toLowerCase()) }))
    .filter(({ far }) => far <= reach)
    .sort((a, b) => a.far - b.far || (a.name < b.name ? -1 : 1))
    .slice(0, 3)
    .map(({ name }) => name);
}

/**
 * A slip of the keyboard beyond doubt: the same letters in another order, or one letter too many or too few. Another
 * letter or figure in the same place may be another name.
 */
export function isSlip(written: string, meant: string): boolean {
  const [short, long] = written.length <= meant.length ? [written, meant] : [meant, written];
  if (short.length < 4) return false;
  if (short.length === long.length)
    return sorted(short) === sorted(long) && transposedDistance(written, meant) === 1 && !/\d/u.test(long);
  if (long.length > short.length + 1) return false;
  const at = [...long].findIndex((letter, index) => letter !== short[index]);
  return long.slice(0, at) + long.slice(at + 1) === short && /\p{L}/u.test(long[at]!);
}

function sorted(text: string): string {
  return [...text].sort().join('');
}

/** Edit distance in which two swapped neighbours (`fti`) count as one slip. */
function transposedDistance(a: string, b: string): number {
  let best = distance(a, b);
  for (let index = 0; index + 1 < a.length; index++) {
    const swapped = a.slice(0, index) + a[index + 1] + a[index] + a.slice(index + 2);
    best = Math.min(best, distance(swapped, b) + 1);
  }
  return best;
}
