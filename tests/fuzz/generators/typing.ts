import type { SourceFile } from '../../../language/db/workspace.ts';
import type { FuzzCase } from '../case.ts';
import type { Random } from '../random.ts';
import { changed, everyText, someWorkspace, wordsOf } from '../seeds.ts';

/** What an author does between two checks. */
function edited(random: Random, text: string): string {
  const words = wordsOf(text);
  if (words.length < 2) return everyText[0]!;
  const at = random.below(words.length);
  const { from, to } = words[at]!;
  switch (random.below(8)) {
    case 0:
      return text.slice(0, random.below(text.length));
    case 1: {
      // A line that is half typed, everything else in place.
      const end = text.indexOf('\n', from);
      return end < 0 ? text.slice(0, from) : text.slice(0, from) + text.slice(end);
    }
    case 2:
    case 3:
      return text.slice(0, from) + text.slice(to);
    case 4:
      return `${text.slice(0, to)} ${text.slice(from)}`;
    case 5: {
      const other = words[Math.min(words.length - 1, at + 1)]!;
      return (
        text.slice(0, from) +
        text.slice(other.from, other.to) +
        text.slice(to, other.from) +
        text.slice(from, to) +
        text.slice(other.to)
      );
    }
    case 6:
      return text.slice(0, from + 1) + text.slice(from + 2);
    default: {
      const line = random.pick(random.pick(everyText).split('\n'));
      return `${text.slice(0, from)}${line.slice(0, random.below(line.length + 1))}\n${text.slice(from)}`;
    }
  }
}

/** States that a text passes through while it is typed: prefixes, half lines, one word gone, doubled or swapped. */
export function typing(random: Random): FuzzCase {
  const start = someWorkspace(random);
  const versions: (readonly SourceFile[])[] = random.chance(0.3) ? [start] : [];
  let now = start;
  for (let count = 1 + random.below(3); count > 0; count--) {
    now = changed(now, random, (text) => edited(random, text));
    versions.push(now);
  }
  return { kind: 'typing', versions };
}
