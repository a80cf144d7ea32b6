/**
 * `node server/glyph-advances.ts`: writes the widths of the sheet's font anew, language/drawing/advances.ts. A core that
 * reads no files cannot ask the font; a test holds the table to it.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { create, type Font } from 'fontkit';

const require = createRequire(import.meta.url);
const font = (file: string): Font =>
  create(readFileSync(require.resolve(`@expo-google-fonts/atkinson-hyperlegible-next/${file}`))) as Font;
const faces = {
  regular: font('400Regular/AtkinsonHyperlegibleNext_400Regular.ttf'),
  bold: font('700Bold/AtkinsonHyperlegibleNext_700Bold.ttf'),
};

/** Characters of the font by their advance in thousandths of an em, rounded up. */
function advancesOf(face: Font): Map<number, string> {
  const byAdvance = new Map<number, string>();
  for (const point of [...face.characterSet].sort((a, b) => a - b)) {
    if (point < 0x20 || point === 0xffff) continue;
    const advance = Math.ceil((face.glyphForCodePoint(point).advanceWidth * 1000) / face.unitsPerEm);
    byAdvance.set(advance, (byAdvance.get(advance) ?? '') + String.fromCodePoint(point));
  }
  return new Map([...byAdvance].sort(([a], [b]) => a - b));
}

/** Letters as they are; what an editor would not show, or would join to its neighbour, as an escape. */
function literal(text: string): string {
  const shown = [...text].map((character) => {
    if (character === "'" || character === '\\') return `\\${character}`;
    if (/[\p{L}\p{N}\p{P}\p{S} ]/u.test(character) && !/[\p{M}\p{Co}]/u.test(character)) return character;
    return `\\u{${character.codePointAt(0)!.toString(16)}}`;
  });
  return `'${shown.join('')}'`;
}

const tables = Object.entries(faces).map(([name, face]) => {
  const rows = [...advancesOf(face)].map(([advance, characters]) => `  [${advance}, ${literal(characters)}],`);
  return `export const ${name}: readonly (readonly [advance: number, characters: string])[] = [\n${rows.join('\n')}\n];\n`;
});
const text = `// Written by server/glyph-advances.ts from the sheet's font. Thousandths of an em, rounded up.\n\n${tables.join('\n')}`;
writeFileSync(join(fileURLToPath(new URL('..', import.meta.url)), 'language/drawing/advances.ts'), text);
