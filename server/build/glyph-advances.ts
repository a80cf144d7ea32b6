/**
 * `node server/build/glyph-advances.ts`: writes the widths of the sheet's font again, language/documents/drawing/advances.ts. A core that
 * reads no files cannot ask the font; a test holds the table to it. `npx biome check --write` lays it out.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { create, type Font } from 'fontkit';

const require = createRequire(import.meta.url);
const text = '@expo-google-fonts/atkinson-hyperlegible-next';
const font = (file: string): Font => create(readFileSync(require.resolve(file))) as Font;
const fonts = {
  regular: font(`${text}/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf`),
  bold: font(`${text}/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf`),
  signs: font('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'),
  boldSigns: font('dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf'),
};
/** The second font lends what the first lacks; of it only what authors of this trade may write: Greek, Cyrillic, arrows, and the sign for a missing one. */
const isLent = (point: number) =>
  (point >= 0x386 && point <= 0x491) || (point >= 0x2190 && point <= 0x2199) || point === 0xfffd;
const isOwn = (point: number) => point >= 0x20 && point !== 0xffff;

/** Characters by their advance in thousandths of an em, rounded up. */
function advancesOf(name: keyof typeof fonts): Map<number, string> {
  const face = fonts[name];
  const takes =
    name === 'regular' || name === 'bold'
      ? isOwn
      : (point: number) => isLent(point) && !fonts.regular.hasGlyphForCodePoint(point);
  const byAdvance = new Map<number, string>();
  for (const point of [...face.characterSet].filter(takes).sort((a, b) => a - b)) {
    const advance = Math.ceil((face.glyphForCodePoint(point).advanceWidth * 1000) / face.unitsPerEm);
    byAdvance.set(advance, (byAdvance.get(advance) ?? '') + String.fromCodePoint(point));
  }
  return new Map([...byAdvance].sort(([a], [b]) => a - b));
}

/** First and last of each run of characters that both weights of the second font have and the first font has not. */
function lentRuns(): [number, number][] {
  const bold = new Set(fonts.boldSigns.characterSet);
  const own = new Set(fonts.regular.characterSet);
  const runs: [number, number][] = [];
  for (const point of [...fonts.signs.characterSet].sort((a, b) => a - b)) {
    if (point < 0x20 || point > 0xffff || !bold.has(point) || own.has(point)) continue;
    const last = runs.at(-1);
    if (last?.[1] === point - 1) last[1] = point;
    else runs.push([point, point]);
  }
  return runs;
}

/** Letters as they are; what an editor would not show, or would join to its neighbor, as an escape. */
function literal(text: string): string {
  const shown = [...text].map((character) => {
    if (character === "'" || character === '\\') return `\\${character}`;
    if (/[\p{L}\p{N}\p{P}\p{S} ]/u.test(character) && !/[\p{M}\p{Co}]/u.test(character)) return character;
    return `\\u{${character.codePointAt(0)!.toString(16)}}`;
  });
  return `'${shown.join('')}'`;
}

const tables = (Object.keys(fonts) as (keyof typeof fonts)[]).map((name) => {
  const rows = [...advancesOf(name)].map(([advance, characters]) => `  [${advance}, ${literal(characters)}],`);
  return `export const ${name}: readonly (readonly [advance: number, characters: string])[] = [\n${rows.join('\n')}\n];\n`;
});
const hex = (point: number) => `0x${point.toString(16)}`;
const lent = `/** Signs that the second font lends, from first to last. */\nexport const lentRuns: readonly (readonly [first: number, last: number])[] = [\n${lentRuns()
  .map(([first, last]) => `  [${hex(first)}, ${hex(last)}],`)
  .join('\n')}\n];\n`;
const written = `// Written by server/build/glyph-advances.ts from the sheet's fonts. Thousandths of an em, rounded up.\n\n${[...tables, lent].join('\n')}`;
writeFileSync(
  join(fileURLToPath(new URL('../..', import.meta.url)), 'language/documents/drawing/advances.ts'),
  written,
);
