import { describe, expect, it } from 'vitest';
import { avoidedIn } from './avoided.ts';
import { piecesIn, piecesToSearch } from './texts.ts';

const found = (text: string) => avoidedIn(text).map(({ phrase }) => phrase);

describe('the phrases that the prose avoids', () => {
  it.each([
    ['The figure stands in the table.', ['stands']],
    ['What is missing is told, and the line is mended.', ['mended', 'told']],
    ['He takes the one of which his sheet speaks.', ['He', 'of which', 'his']],
    ['A change bears on the sheet, and the colour is worked out anew.', ['anew', 'bears on', 'colour']],
    ['The neighbour is a millimetre off; minimise it.', ['neighbour', 'millimetre', 'minimise']],
    [
      'It hangs on what was asked for, and nobody says what it came to.',
      ['asked for', 'came to', 'hangs on', 'nobody says'],
    ],
    ['Of which a spanner is told apart, the other way round.', ['Of which', 'spanner', 'the other way round', 'told']],
  ])('are found in “%s”', (text, phrases) => {
    expect(found(text).sort()).toEqual([...phrases].sort());
  });

  it.each([
    'A part next to one that `bears on` another.',
    'A standing tolerance counts. What the name stands for.',
    'held by "spanner", and vice versa; write “bears on needle” there.',
    'She, the shop, this, whistle, standard, recommend, amended: words that contain one.',
  ])('are not seen in “%s”', (text) => {
    expect(found(text)).toEqual([]);
  });
});

describe('the texts that are searched', () => {
  it('are prose, not code: examples and expressions are left out, and comments and strings are separate', () => {
    const page = 'It stands.\n\n```\nit stands\n```\n\n    it stands\n';
    expect(piecesIn('page.md', page, 'page').map(({ line }) => line)).toEqual([1]);
    const source = `// it stands\nconst stands = \`a $\{stands} b\` + 'it stands';\n`;
    expect(piecesIn('a.ts', source, 'strings').filter(({ text }) => /stands/u.test(text))).toEqual([
      { file: 'a.ts', line: 2, text: "'it stands'" },
    ]);
    expect(piecesIn('a.ts', source, 'comments')).toEqual([{ file: 'a.ts', line: 1, text: '// it stands' }]);
  });

  it('are of a test its names, and not the text that it tries', () => {
    const source =
      "it('stands here', async () => {\n  check('it stands', 1);\n});\ndescribe.each(x)('%s stands', (one) => {});\n";
    expect(piecesIn('a.test.ts', source, 'titles').map(({ text }) => text)).toEqual(["'stands here'", "'%s stands'"]);
  });

  it('are all comments, messages and pages, in every folder', () => {
    const files = new Set(piecesToSearch().map(({ file }) => file.split('/').slice(0, -1).join('/')));
    for (const folder of [
      'language/diagnostics',
      'language/diagnostics/areas/gates',
      'language/documents/traveler',
      'server/lsp',
      'extension',
      'tests',
    ])
      expect(files).toContain(folder);
    expect(piecesToSearch().map(({ file }) => file)).toEqual(
      expect.arrayContaining(['README.md', 'package.json', 'language/syntax/rebuild.langium']),
    );
  });
});
