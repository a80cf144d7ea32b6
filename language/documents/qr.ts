import { encode } from 'uqr';
import type { QrCode } from './model.ts';

/** White squares around the code (ISO/IEC 18004). */
const quiet = 4;

/**
 * A QR code as one path, a run of dark squares at a time. Error correction M: a smeared quarter of a sheet from the
 * bench still scans. Text that is too long for any code is cut: the figures that matter come first.
 */
export function buildQr(text: string, alt: string): QrCode {
  const { data, size } = encode([...new TextEncoder().encode(fitting(text))], { ecc: 'M', border: quiet });
  const runs: string[] = [];
  for (const [y, row] of data.entries()) {
    for (let x = 0; x < size; x++) {
      let length = 0;
      while (row[x + length]) length++;
      if (length > 0) runs.push(`M${x} ${y}h${length}v1h-${length}z`);
      x += length;
    }
  }
  return { text, alt, size, path: runs.join('') };
}

/** A code finer than this does not scan from a photocopy. */
const most = 400;

function fitting(text: string): string {
  let cut = text;
  while (new TextEncoder().encode(cut).length > most) cut = [...cut].slice(0, -8).join('');
  return cut;
}
