import { describe, expect, it } from 'vitest';
import { checkFiles } from '../db/workspace.ts';
import { english } from '../say/say.ts';
import { hiddenSigns, textProblem } from './text-problem.ts';

const found = (text: string) =>
  checkFiles([{ uri: 'x', text }]).diagnostics.map(
    ({ rule, source: { range }, message }) =>
      `${range.start.line}:${range.start.character}-${range.end.character} ${rule} ${/U\+\w+/u.exec(message)?.[0] ?? message}`,
  );

describe('characters that cannot be seen', () => {
  it('are errors at their place, wherever they are, and take nothing else with them', () => {
    expect(
      found(
        'shop a "x\u202Ey" {\n  station \u200Bb "c"\u001B\n} // \u2066\u0085\nsequence s {\u007F\n  receive\n}\uFEFF\n',
      ),
    ).toEqual([
      '0:9-10 hidden-character U+202E',
      '1:10-11 hidden-character U+200B',
      '1:16-17 hidden-character U+001B',
      '2:5-6 hidden-character U+2066',
      '2:6-7 hidden-character U+0085',
      '3:12-13 hidden-character U+007F',
      '5:1-2 hidden-character U+FEFF',
    ]);
  });

  it('are none where they belong: byte order mark, tab, line ends, joiners, hard and narrow spaces', () => {
    const text = '\uFEFFshop a "Prüfstand 針 👩\u200D🔧 نمی\u200Cخواهم 5\u00A0bar\u202F±" {\r\n\tstation b\r}\n';
    expect(hiddenSigns(text)).toEqual([]);
    expect(found(text)).toEqual([]);
  });

  it('are not reported without end', () => {
    expect(hiddenSigns('\u200B'.repeat(100_000))).toHaveLength(20);
  });

  it('say what to do', () => {
    const messages = hiddenSigns('x\u001B\u202E\u200B').map(({ message }) => english(message));
    expect(messages.map((message) => message.split('.')[0])).toEqual([
      'This is a control character',
      'This character changes the direction of the text',
      'This character has no width',
    ]);
    for (const message of messages) expect(message).toMatch(/\. Delete it; if that does not work, retype the line\.$/u);
  });
});

describe('a file in another encoding', () => {
  const decoded = (bytes: Buffer) => {
    const problem = textProblem(bytes.toString('utf8'));
    return problem === null ? null : english(problem.message);
  };
  const text = 'shop a "針針針針針針針針針針針針" {\n}\n';

  it.each([
    ['UTF-16 LE', Buffer.from(`\uFEFF${text}`, 'utf16le')],
    ['UTF-16 BE', Buffer.from(`\uFEFF${text}`, 'utf16le').swap16()],
    ['UTF-16 LE without a mark', Buffer.from('shop a {\n}\n', 'utf16le')],
  ])('of %s', (_, bytes) => {
    expect(decoded(bytes)).toMatch(/^This file is in UTF-16\. Save it as UTF-8/u);
  });

  it('of one byte a character, at the place of the first that is no UTF-8', () => {
    const bytes = Buffer.from('shop a "b" {\n  gauge g range 0..9 bar within \u00B12 %\n}\n', 'latin1');
    expect(decoded(bytes)).toContain('Save it as UTF-8');
    expect(textProblem(bytes.toString('utf8'))).toMatchObject({
      range: { start: { line: 1, character: 32 } },
    });
  });

  it('with binary data far behind', () => {
    expect(decoded(Buffer.from(`${'// note\n'.repeat(2000)}\0`))).toMatch(/binary data/u);
  });
});
