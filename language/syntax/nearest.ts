import { distance } from 'fastest-levenshtein';

/** Longest word that is compared, and most names that it is compared with: a slip of the keyboard is made in short words. */
const longest = 60;
const most = 5_000;

/** Slips that are taken for slips in a word: one of the keyboard for each three letters. */
function slips(word: string): number {
  return Math.max(1, Math.min(3, Math.floor(word.length / 3) + (word.length > 3 ? 1 : 0)));
}

/**
 * The names most like a written one, best first, at most three; case is not counted. Empty where none is near enough to
 * be meant. @param reach most slips between them
 */
export function nearest(written: string, names: Iterable<string>, reach = slips(written)): string[] {
  if (written.length > longest) return [];
  const word = written.toLowerCase();
  return [...new Set(names)]
    .slice(0, most)
    .filter((name) => Math.abs(name.length - word.length) <= reach)
    .map((name) => ({ name, far: transposedDistance(word, name.toLowerCase(), reach) }))
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
    return sorted(short) === sorted(long) && transposedDistance(written, meant, 1) === 1 && !/\d/u.test(long);
  if (long.length > short.length + 1) return false;
  const at = [...long].findIndex((letter, index) => letter !== short[index]);
  return long.slice(0, at) + long.slice(at + 1) === short && /\p{L}/u.test(long[at]!);
}

function sorted(text: string): string {
  return [...text].sort().join('');
}

/** Edit distance in which two swapped neighbors (`fti`) count as one slip. Beyond twice the reach no swap helps. */
function transposedDistance(a: string, b: string, reach: number): number {
  let best = distance(a, b);
  if (best > reach + 1) return best;
  for (let index = 0; index + 1 < a.length; index++) {
    const swapped = a.slice(0, index) + a[index + 1] + a[index] + a.slice(index + 2);
    best = Math.min(best, distance(swapped, b) + 1);
  }
  return best;
}
