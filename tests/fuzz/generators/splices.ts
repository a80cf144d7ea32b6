import type { FuzzCase } from '../case.ts';
import type { Random } from '../random.ts';
import { changed, everyText, someWorkspace, wordsOf } from '../seeds.ts';

interface Span {
  readonly from: number;
  readonly to: number;
}

/** A piece of a text, cut at words, lines or anywhere. */
function piece(random: Random, text: string): Span {
  switch (random.below(3)) {
    case 0: {
      const words = wordsOf(text);
      if (words.length === 0) return { from: 0, to: 0 };
      const first = random.below(words.length);
      const last = Math.min(words.length - 1, first + random.below(12));
      return { from: words[first]!.from, to: words[last]!.to };
    }
    case 1: {
      const ends = [...text.matchAll(/\n/gu)].map(({ index }) => index + 1);
      if (ends.length === 0) return { from: 0, to: text.length };
      const first = random.below(ends.length);
      return { from: ends[first]!, to: ends[Math.min(ends.length - 1, first + 1 + random.below(15))]! };
    }
    default: {
      const from = random.below(text.length + 1);
      return { from, to: Math.min(text.length, from + random.below(80)) };
    }
  }
}

/** Pieces of one text in the place of pieces of another. */
export function splices(random: Random): FuzzCase {
  const files = changed(someWorkspace(random), random, (text) => {
    let made = text;
    for (let count = 1 + random.below(4); count > 0; count--) {
      const other = random.chance(0.5) ? made : random.pick(everyText);
      const [gone, come] = [piece(random, made), piece(random, other)];
      made =
        made.slice(0, gone.from) +
        other.slice(come.from, come.to) +
        made.slice(random.chance(0.5) ? gone.from : gone.to);
    }
    return made;
  });
  return { kind: 'splices', versions: [files] };
}
