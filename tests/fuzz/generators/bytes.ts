import type { FuzzCase } from '../case.ts';
import type { Random } from '../random.ts';
import { changed, someWorkspace } from '../seeds.ts';

/** Signs that editors, terminals and parsers stumble over: controls, joiners, turners, halves of pairs, wide blanks. */
const odd = [
  '\u0000',
  '\u0001',
  '\u0007',
  '\u0008',
  '\u000b',
  '\u000c',
  '\u001b',
  '\u007f',
  '\u0085',
  '\u00a0',
  '\u00ad',
  '\u0300',
  '\u200b',
  '\u200d',
  '\u200f',
  '\u2028',
  '\u2029',
  '\u202a',
  '\u202e',
  '\u2066',
  '\u2069',
  '\ufeff',
  '\ufffd',
  '\ufffe',
  '\ud800',
  '\udc00',
  '😀',
  'ﬀ',
  'İ',
  'ß',
  '𝔸',
  '\r',
  '\n',
  '\r\n',
  '\t',
  '"',
  '{',
  '}',
  '/',
  '\\',
  '.',
  '..',
  '-',
  '±',
  '°',
];

const decoder = new TextDecoder();

function junk(random: Random, most: number): string {
  const length = random.below(most);
  switch (random.below(3)) {
    case 0:
      return decoder.decode(Uint8Array.from({ length }, () => random.below(256)));
    case 1:
      return Array.from({ length }, () => random.pick(odd)).join('');
    default:
      return Array.from({ length }, () =>
        String.fromCodePoint(random.below(random.chance(0.7) ? 0x250 : 0x11000)),
      ).join('');
  }
}

/** Random bytes and signs, alone or thrown into a text. */
export function bytes(random: Random): FuzzCase {
  if (random.chance(0.3)) return { kind: 'bytes', versions: [[{ uri: 'junk.rebuild', text: junk(random, 600) }]] };
  const files = changed(someWorkspace(random), random, (text) => {
    let made = text;
    for (let count = 1 + random.below(5); count > 0; count--) {
      const at = random.below(made.length + 1);
      made = made.slice(0, at) + junk(random, random.chance(0.8) ? 4 : 60) + made.slice(at + random.below(4));
    }
    return made;
  });
  return { kind: 'bytes', versions: [files] };
}
