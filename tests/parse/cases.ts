import { pages } from '../fixtures/example-pages.ts';
import { caseAt } from '../fuzz/generate.ts';
import { Random } from '../fuzz/random.ts';
import { everyText, wordsOf } from '../fuzz/seeds.ts';

/** Library, corpus, and the examples of the pages of rules. */
const examples = pages().flatMap((page) => page.examples.map(({ text }) => text));
export const writtenTexts: readonly string[] = [...everyText, ...examples];

const words = [...new Set(writtenTexts.flatMap((text) => wordsOf(text).map(({ from, to }) => text.slice(from, to))))];
const signs = [
  '{',
  '}',
  '\n',
  '\r\n',
  '\r',
  ',',
  '"',
  '#',
  '//',
  '–',
  '(',
  ')',
  ';',
  '±',
  '..',
  '-',
  '\t',
  '\u0000',
  '\ud800',
  '😀',
];

/** A text with a word taken away, put in or put in place of another. */
function edited(text: string, random: Random): string {
  const all = wordsOf(text);
  const { from, to } = all.length === 0 ? { from: 0, to: 0 } : random.pick(all);
  const word = random.chance(0.7) ? random.pick(words) : random.pick(signs);
  const made = random.pick(['', word, `${text.slice(from, to)} ${word}`, `${word} ${text.slice(from, to)}`]);
  return text.slice(0, from) + made + text.slice(random.chance(0.9) ? to : from);
}

/** A text as it is after some edits, one state after another. */
export function statesOf(seed: number, index: number): string[] {
  const random = new Random(Math.imul(seed, 1_000_003) + index);
  if (random.chance(0.2)) {
    const { versions } = caseAt(seed, index);
    return versions.map((files) => files.map(({ text }) => text).join('\n')).filter((text) => text.length < 20_000);
  }
  const states = [random.pick(writtenTexts)];
  if (random.chance(0.4)) states[0] = states[0]!.slice(0, random.below(states[0]!.length + 1));
  for (let count = 1 + random.below(5); count > 0; count--) {
    const now = states.at(-1)!;
    // Now and then something is undone, or moved.
    if (random.chance(0.15)) states.push(random.pick(states));
    else if (random.chance(0.1))
      states.push(now.slice(random.below(now.length + 1)) + now.slice(0, random.below(now.length + 1)));
    else states.push(edited(now, random));
  }
  return states;
}
