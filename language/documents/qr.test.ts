import { BinaryBitmap, HybridBinarizer, QRCodeReader, RGBLuminanceSource } from '@zxing/library';
import { describe, expect, test } from 'vitest';
import type { QrCode } from './model.ts';
import { buildQr } from './qr.ts';

/** Draws the path as a scanner would see it, and reads it with a decoder that is not ours. */
function scanned({ path, size }: QrCode, scale = 4): string {
  const wide = size * scale;
  const pixels = new Uint8ClampedArray(wide * wide).fill(255);
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/gu)) {
    for (let row = Number(y) * scale; row < (Number(y) + 1) * scale; row++) {
      pixels.fill(0, row * wide + Number(x) * scale, row * wide + (Number(x) + Number(length)) * scale);
    }
  }
  return new QRCodeReader()
    .decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(pixels, wide, wide))))
    .getText();
}

/** Level of error correction that the code itself states, beside its upper left corner (ISO/IEC 18004, 7.9): bits 14 and 13. */
function stated({ path }: QrCode): string {
  const isDark = (x: number, y: number) =>
    [...path.matchAll(/M(\d+) (\d+)h(\d+)/gu)].some(
      ([, from, row, length]) => Number(row) === y && Number(from) <= x && x < Number(from) + Number(length),
    );
  // Four white squares in; the mask 10101 10101 begins with 1 and 0.
  const bits = `${Number(isDark(4, 12)) ^ 1}${Number(isDark(5, 12)) ^ 0}`;
  return { '01': 'L', '00': 'M', '11': 'Q', '10': 'H' }[bits]!;
}

describe('the code', () => {
  test('corrects errors at level M, with four white squares around', () => {
    for (const text of ['a', 'procedure=rebuild-injector-17 revision=B', 'x'.repeat(399)]) {
      const code = buildQr(text, '');
      expect(stated(code)).toBe('M');
      const starts = [...code.path.matchAll(/M(\d+) (\d+)h(\d+)/gu)].map(([, ...numbers]) => numbers.map(Number));
      expect(Math.min(...starts.flatMap(([x, y]) => [x!, y!]))).toBe(4);
      expect(Math.max(...starts.flatMap(([x, y, length]) => [x! + length!, y! + 1]))).toBe(code.size - 4);
    }
  });
  test('scans to its own text', () => {
    const text = `handtight procedure=rebuild-injector-17 revision=B hash=${'a3'.repeat(32)} job=2207`;
    expect(scanned(buildQr(text, ''))).toBe(text);
  });
  test('carries letters beyond ASCII', () => {
    expect(scanned(buildQr('procedure=Düse-17', ''))).toBe('procedure=Düse-17');
  });
  test('a text that is too long for a code that still scans is cut at its end', () => {
    const code = buildQr(`procedure=a ${'x'.repeat(5000)}`, '');
    expect(code.size).toBeLessThan(100);
    expect(scanned(code)).toMatch(/^procedure=a x+$/u);
  });
});
