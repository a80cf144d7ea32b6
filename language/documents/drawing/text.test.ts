import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import fc from 'fast-check';
import { create, type Font } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { printable } from '../../i18n/printable.ts';
import { brokenText } from './broken-text.ts';
import { millimetresPerPoint, textSize } from './drawing.ts';
import { fontOf, widthOf } from './text-width.ts';

const require = createRequire(import.meta.url);
const font = (file: string) => create(readFileSync(require.resolve(file))) as Font;
const text = '@expo-google-fonts/atkinson-hyperlegible-next';
const faces = [
  {
    bold: false,
    face: font(`${text}/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf`),
    signs: font('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'),
  },
  {
    bold: true,
    face: font(`${text}/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf`),
    signs: font('dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf'),
  },
] as const;
/** Set by the font's own rules, kerning and ligatures included. */
const trueWidth = (face: Font, line: string) =>
  (face.layout(line).advanceWidth / face.unitsPerEm) * textSize * millimetresPerPoint;

describe('the width of a line', () => {
  it.each(faces)('is never less than the font sets, and not much more (bold: $bold)', ({ bold, face }) => {
    const known = [...face.characterSet]
      .filter((point) => point >= 0x20 && point !== 0xffff)
      .map((point) => String.fromCodePoint(point));
    for (const one of known) expect(widthOf(one, bold), one).toBeGreaterThanOrEqual(trueWidth(face, one));
    const letters = fc.constantFrom(
      ...'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZäöüßéèñçøåÄÖÜ0123456789 .,-()/·×°±μ'.split(''),
    );
    fc.assert(
      fc.property(fc.array(letters, { minLength: 1, maxLength: 40 }), (list) => {
        const line = list.join('');
        const [ours, real] = [widthOf(line, bold), trueWidth(face, line)];
        expect(ours).toBeGreaterThanOrEqual(real);
        expect(ours).toBeLessThan(real * 1.08 + 0.8);
      }),
      { numRuns: 1000, seed: 5 },
    );
  });
  it.each(faces)('of signs from the second font is enough too (bold: $bold)', ({ bold, face, signs }) => {
    for (const point of signs.characterSet) {
      // Long ligatures of the Arabic presentation forms stand for whole words.
      if (point < 0x20 || point > 0xfb00 || face.hasGlyphForCodePoint(point)) continue;
      const one = String.fromCodePoint(point);
      if (/\p{M}/u.test(one)) continue;
      expect(widthOf(one, bold), point.toString(16)).toBeGreaterThanOrEqual(trueWidth(signs, one));
    }
  });
});

describe('the font of a sign', () => {
  it.each(faces)('has it (bold: $bold)', ({ face, signs }) => {
    for (let point = 0x20; point < 0x10000; point++) {
      const of = fontOf(String.fromCharCode(point));
      if (of !== null && point !== 0xffff)
        expect((of === 'own' ? face : signs).hasGlyphForCodePoint(point), point.toString(16)).toBe(true);
    }
    expect(['n', 'Ω', 'ж', '→', '\ufffd', '喷', '😀'].map(fontOf)).toEqual([
      'own',
      'own',
      'lent',
      'lent',
      'lent',
      null,
      null,
    ]);
  });
  it.each(faces)('that stands for others is no wider than they are taken for (bold: $bold)', ({ bold, signs }) => {
    expect(widthOf('喷', bold)).toBeGreaterThanOrEqual(trueWidth(signs, '\ufffd'));
  });
});

describe('a text in lines', () => {
  it('breaks at blanks, then at hyphens, then anywhere', () => {
    expect(brokenText('Nozzle nut', true, 60, 2)).toEqual({ lines: ['Nozzle nut'], cut: false });
    expect(brokenText('Compressor piston ring', true, 30, 2).lines).toEqual(['Compressor', 'piston ring']);
    expect(brokenText('Doppelfeder-Einstellscheibe', false, 30, 2).lines).toEqual(['Doppelfeder-', 'Einstellscheibe']);
    expect(brokenText('length 31.50\u00a0mm\u00a0±0.30', false, 20, 3).lines).toEqual([
      'length',
      '31.50\u00a0mm',
      '±0.30',
    ]);
    expect(brokenText('', false, 30, 2).lines).toEqual(['']);
  });
  it('ends with an ellipsis where the lines do not hold it', () => {
    const { lines, cut } = brokenText('one two three four five six seven eight nine ten', false, 20, 2);
    expect(cut).toBe(true);
    expect(lines).toHaveLength(2);
    expect(lines[1]).toMatch(/…$/u);
  });
  it('keeps to its width and loses nothing unless it says so', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 80 }),
        fc.integer({ min: 8, max: 60 }),
        fc.integer({ min: 1, max: 3 }),
        (words, width, most) => {
          const { lines, cut } = brokenText(printable(words), false, width, most);
          expect(lines.length).toBeLessThanOrEqual(most);
          for (const line of lines)
            expect(widthOf(line, false)).toBeLessThanOrEqual(Math.max(width, widthOf('W…', false) * 2.5));
          const bare = (some: string) => some.replaceAll(/\s/gu, '');
          if (!cut) expect(bare(lines.join(''))).toBe(bare(printable(words)));
        },
      ),
      { numRuns: 500, seed: 6 },
    );
  });
});

describe('authors’ text', () => {
  it('is made fit to be set: no control characters, nothing that turns or hides letters, no halves', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.string({ unit: 'grapheme' })), (words) => {
        expect(printable(words)).not.toMatch(
          /[\u0000-\u001f\u007f-\u009f\u00b5\u200b\u200e\u200f\u2028-\u202f\u2060-\u2069\ufeff\ufff9-\ufffb\ud800-\udfff\ufffe\uffff]/u,
        );
        expect(printable(printable(words))).toBe(printable(words));
      }),
      { numRuns: 1000, seed: 8 },
    );
  });
});
