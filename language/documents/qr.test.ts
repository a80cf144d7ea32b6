import { BinaryBitmap, HybridBinarizer, QRCodeReader, RGBLuminanceSource } from '@zxing/library';
import { describe, expect, test } from 'vitest';
import type { QrCode } from './model.ts';
import { qrOf } from './qr.ts';

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

describe('the code', () => {
  test('scans to its own text', () => {
    const text = `handtight procedure=rebuild-injector-17 revision=B hash=${'a3'.repeat(32)} job=2207`;
    expect(scanned(qrOf(text, ''))).toBe(text);
  });
  test('carries letters beyond ASCII', () => {
    expect(scanned(qrOf('procedure=Düse-17', ''))).toBe('procedure=Düse-17');
  });
  test('a text that is too long for a code that still scans is cut at its end', () => {
    const code = qrOf(`procedure=a ${'x'.repeat(5000)}`, '');
    expect(code.size).toBeLessThan(100);
    expect(scanned(code)).toMatch(/^procedure=a x+$/u);
  });
});
