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
    .sort((a, b) => a.far - b.far || a.name.localeCompare(b.name))
    .slice(0, 3)
    .map(({ name }) => name);
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
