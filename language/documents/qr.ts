import { create } from 'qrcode/lib/core/qrcode.js';
import type { QrCode } from './model.ts';

/** White squares around the code (ISO/IEC 18004). */
const quiet = 4;

/**
 * A QR code as one path, a run of dark squares at a time. Error correction M: a smeared quarter of a sheet from the
 * bench still scans. Text that is too long for any code is cut: the figures that matter stand first.
 */
export function qrOf(text: string, alt: string): QrCode {
  const { modules } = create([{ data: new TextEncoder().encode(fitting(text)), mode: 'byte' }], {
    errorCorrectionLevel: 'M',
  });
  const { size } = modules;
  const runs: string[] = [];
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      if (!modules.get(row, column)) continue;
      let length = 1;
      while (column + length < size && modules.get(row, column + length)) length++;
      runs.push(`M${column + quiet} ${row + quiet}h${length}v1h-${length}z`);
      column += length;
    }
  }
  return { text, alt, size: size + 2 * quiet, path: runs.join('') };
}

/** A code finer than this does not scan from a photocopy. */
const most = 400;

function fitting(text: string): string {
  let cut = text;
  while (new TextEncoder().encode(cut).length > most) cut = [...cut].slice(0, -8).join('');
  return cut;
}
