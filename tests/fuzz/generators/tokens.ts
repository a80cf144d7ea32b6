import { AstUtils } from 'langium';
import { RebuildGrammar } from '../../../language/syntax/generated/grammar.ts';
import type { FuzzCase } from '../case.ts';
import type { Random } from '../random.ts';
import { changed, everyText, someWorkspace } from '../seeds.ts';

/** Every keyword and sign of the grammar. */
const keywords = [
  ...new Set(
    RebuildGrammar().rules.flatMap((rule) =>
      AstUtils.streamAllContents(rule)
        .filter((node) => node.$type === 'Keyword')
        .map((node) => (node as unknown as { value: string }).value)
        .toArray(),
    ),
  ),
];

/** Names, figures and strings as the library writes them. */
const written = [
  ...new Set(
    everyText.flatMap((text) => text.match(/"[^"\n]*"|\d[\d.]*(?: ?[\p{L}°·/%]+)?|[\p{L}][\p{L}\d_-]*/gu) ?? []),
  ),
];

const heads = [
  'shop s {',
  'family f {',
  'procedure p for one-spring at bench-two {',
  'job 1 of p {',
  'stage x at tester {',
  'repair r {',
  'sequence q with a; b {',
  'unit 1 {',
  'only A-250 {',
  '}',
  '}',
];

function tokenRun(random: Random, most: number): string {
  let text = '';
  for (let count = random.below(most); count > 0; count--) {
    const word = random.chance(0.55) ? random.pick(keywords) : random.pick(written);
    text += word + (random.chance(0.2) ? '\n' : random.chance(0.9) ? ' ' : '');
    if (random.chance(0.04)) text += `${random.pick(heads)}\n`;
  }
  return text;
}

/** Random sequences of the lexer’s words, alone or in the middle of a text. */
export function tokens(random: Random): FuzzCase {
  if (random.chance(0.4))
    return { kind: 'tokens', versions: [[{ uri: 'tokens.rebuild', text: tokenRun(random, 200) }]] };
  const files = changed(someWorkspace(random), random, (text) => {
    const lines = text.split('\n');
    lines.splice(random.below(lines.length + 1), random.below(3), tokenRun(random, 25));
    return lines.join('\n');
  });
  return { kind: 'tokens', versions: [files] };
}
