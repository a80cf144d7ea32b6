import { describe, expect, it } from 'vitest';
import { avoidedIn } from './avoided.ts';
import { piecesIn } from './texts.ts';

const found = (text: string) => avoidedIn(text).map(({ phrase }) => phrase);

describe('the phrases that the prose avoids', () => {
  it.each([
    ['The figure stands in the table.', ['stands']],
    ['What is missing is told, and the line is mended.', ['is told', 'mended']],
    ['He takes the one of which his sheet speaks.', ['He', 'of which', 'his']],
    ['A change bears on the sheet, and the colour is worked out anew.', ['anew', 'bears on', 'colour']],
    ['The neighbour is a millimetre off; minimise it.', ['neighbour', 'millimetre', 'minimise']],
  ])('are found in “%s”', (text, phrases) => {
    expect(found(text).sort()).toEqual([...phrases].sort());
  });

  it.each([
    'A part next to one that `bears on` another.',
    'A standing tolerance counts. What the name stands for.',
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
});
