import type { DoubtReason } from '../model/doubt.ts';
import { limitWords } from './limit-words.ts';
import type { Words } from './words.ts';

/** Says why a figure of a job cannot be as it is written, and what to do. */
export function doubtWords(words: Words, why: DoubtReason): string {
  const { quantity, list, certificate } = words;
  const { missing } = certificate;
  const { name, value } = why;
  const said = { name, reading: quantity(value) };
  switch (why.is) {
    case 'zero':
      return missing.zero(said);
    case 'far':
      return missing.far({ ...said, limit: limitWords(words, why.limit, value) });
    case 'slip':
      return missing.slip({ ...said, limit: limitWords(words, why.limit, value), meant: quantity(why.meant) });
    case 'wrong tool':
      return missing.wrongTool({ ...said, tool: why.tool });
    case 'beyond all tools':
      return missing.beyondAll(said);
    case 'not in stock':
      return missing.notInStock({ name, size: quantity(value), stock: why.stock, near: list(why.near.map(quantity)) });
    case 'over most':
      return missing.overMost({ name, size: quantity(value), most: quantity(why.most) });
  }
}
