import { globSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { fullMessage } from '../../language/model/diagnostic.ts';
import { check } from '../fixtures/example-pages.ts';
import { saidInSource } from './templates.ts';
import { texts } from './texts.ts';

const read = (files: readonly string[]) => files.map((file) => readFileSync(file, 'utf8'));

/** Found in nearly every text, since none is a whole procedure. */
const everywhere = ['not-clamped', 'open-port-in-dirt', 'part-left-out', 'spec-unused'];

/** The line of each finding in these texts, and its message. */
const messages = (() => {
  const seen = new Set<string>();
  const found = texts.flatMap((text) => {
    const rows = text.split('\n');
    const diagnostics = check(text).diagnostics.filter(({ rule }) => !everywhere.includes(rule));
    return diagnostics.flatMap((diagnostic) => {
      const row = (rows[diagnostic.source.range.start.line] ?? '').trim();
      const related = (diagnostic.related ?? []).map(({ message }) => `\n    · ${message}`).join('');
      const lines = `  | ${JSON.stringify(row)}\n    ${diagnostic.rule}: ${fullMessage(diagnostic)}${related}`;
      return seen.size === seen.add(lines).size ? [] : [lines];
    });
  });
  return `${found.join('\n')}\n`;
})();

it('the messages on short wrong texts are those that were reviewed', async () => {
  await expect(messages).toMatchFileSnapshot('./messages.txt');
});

it('every message of the front end and of the rules is quoted in a test or a snapshot', () => {
  const quotes = read([
    ...globSync('{language,server,tests}/**/*.test.ts'),
    ...globSync('{language,tests}/**/messages.txt'),
  ])
    .concat(messages)
    .join('\n')
    .replace(/[\u00a0\u202f]/gu, ' ')
    // A regular expression or a string in a test.
    .replace(/\\(?=[^nu])/gu, '')
    .toLowerCase();
  const unquoted = saidInSource()
    .filter(
      ({ file }) => /^language\/(?:syntax|quantities|semantics|diagnostics)\//u.test(file) && !/near-units/u.test(file),
    )
    .map(({ template, file }) => ({ file, template, pieces: piecesOf(template) }))
    .filter(({ pieces }) => pieces.length > 0 && !pieces.some((piece) => quotes.includes(piece.toLowerCase())))
    .map(({ file, template }) => `${file}: ${template}`);
  expect(unquoted).toEqual([]);
});

/** What of a sentence stays the same whatever is filled in. */
function piecesOf(template: string): string[] {
  if (!/[.?]$/u.test(template)) return [];
  return template
    .split(/\{\d+\}/u)
    .map((piece) => piece.trim().replace(/\.$/u, ''))
    .filter((piece) => piece.split(' ').length > 2);
}
