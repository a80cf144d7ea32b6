import { base, quantityOf } from '../engineering/measured.ts';
import { formatQuantity } from '../quantities/index.ts';
import type { Difference, Quantity } from '../quantities/types.ts';

/** Significant digits that are shown of what comes out: enough to check by hand, none that look like knowledge. */
const shown = 5;

/** A result, to five digits. */
export function figure({ number, unit }: Quantity | Difference): string {
  return formatQuantity(quantityOf(base({ number, unit }), unit, shown) ?? { number, unit });
}

/** A smaller figure is shown as less than this: no figure at a bench has a power of ten. */
const smallest = 1e-6;

/** A plain number, to five digits. */
export function plain(value: number): string {
  const rounded = Number(value.toPrecision(shown));
  return rounded !== 0 && Math.abs(rounded) < smallest ? '< 0.000001' : String(rounded);
}

/** A length in millimeters, without its unit, for the lines of a way. */
export function millimetres(quantity: Quantity): string {
  return plain(base(quantity) * 1000);
}
