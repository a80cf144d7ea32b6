import { stressArea } from '../engineering/proof-load.ts';
import type { Quantity } from '../quantities/types.ts';

export interface MetricThread {
  readonly diameter: Quantity;
  readonly pitch: Quantity;
}

/** Coarse pitches by nominal diameter, both mm (ISO 261, from memory). */
const coarsePitch: Readonly<Record<string, string>> = {
  3: '0.5',
  3.5: '0.6',
  4: '0.7',
  4.5: '0.75',
  5: '0.8',
  6: '1',
  7: '1',
  8: '1.25',
  9: '1.25',
  10: '1.5',
  11: '1.5',
  12: '1.75',
  14: '2',
  16: '2',
  18: '2.5',
  20: '2.5',
  22: '2.5',
  24: '3',
  27: '3',
  30: '3.5',
  33: '3.5',
  36: '4',
};

/** `M8x1.25`, `M 8 × 1,25 mm`, `M10`; then a tolerance class, then the hand. What else follows may change the size. */
const written =
  /^\s*M\s*(?<diameter>\d+(?:[.,]\d+)?)(?:\s*[x×]\s*(?<pitch>\d+(?:[.,]\d+)?)(?:\s*mm)?)?(?:\s*-\s*\d[eghm](?:\d[eghm])?)?(?:[\s,;-]+(?:left|right)(?:[\s-]+hand)?|[\s,;-]+[LR]H)?\s*$/iu;

/**
 * An ISO metric thread as the trade writes it. Null: it is none, or it leaves out a pitch that is not the coarse one of
 * a known size, or its pitch leaves nothing of the bolt (`M8x125`).
 */
export function readMetricThread(text: string): MetricThread | null {
  const { diameter, pitch } = written.exec(text)?.groups ?? {};
  if (diameter === undefined) return null;
  const size = mm(diameter);
  const own = pitch ?? coarsePitch[Number(size.number)];
  if (own === undefined || stressArea(size, mm(own)) === null) return null;
  return { diameter: size, pitch: mm(own) };
}

function mm(digits: string): Quantity {
  return { number: digits.replace(',', '.'), unit: 'mm' };
}
