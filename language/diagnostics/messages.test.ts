import { expect, it } from 'vitest';
import { wholeExample } from '../../tests/fixtures/example-base.ts';
import { check, pages } from '../../tests/fixtures/example-pages.ts';
import { fullMessage } from '../model/diagnostic.ts';

/**
 * The messages for every bad example, in one text, so that a change of wording is reviewed before it is accepted:
 * `npx vitest run language/diagnostics/messages.test.ts -u` rewrites it.
 */
it('the messages of all bad examples are those that were reviewed', async () => {
  const text = pages()
    .map(({ code, examples }) => {
      const lines = examples.filter(({ kind }) => kind === 'bad').flatMap((example) => said(code, example.text));
      return `${code}\n${lines.join('\n')}\n`;
    })
    .join('\n');
  await expect(text).toMatchFileSnapshot('./messages.txt');
});

/** The line of a finding, its text, its related places and the title of its fix. */
function said(code: string, example: string): string[] {
  const { text } = wholeExample(example);
  const rows = text.split('\n');
  const row = (line: number) => rows[line]!.trim();
  return check(text)
    .diagnostics.filter((diagnostic) => diagnostic.rule === code)
    .flatMap((diagnostic) => {
      const { source, related, fix } = diagnostic;
      return [
        `  | ${row(source.range.start.line)}`,
        `    ${fullMessage(diagnostic)}`,
        ...(related ?? []).map((place) => `    · ${place.message} (${row(place.source.range.start.line)})`),
        ...(fix === undefined ? [] : [`    → ${fix.title}`]),
      ];
    });
}
