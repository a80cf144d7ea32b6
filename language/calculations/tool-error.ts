import type { Asset } from '../model/shop.ts';
import { decimalValue, exactText } from '../quantities/decimal.ts';
import { convertDifference, readNumber, toleranceOf } from '../quantities/index.ts';
import type { Quantity, RangeLimit } from '../quantities/types.ts';

/**
 * Permissible error of a gauge by its class: `class / 100 · (high − low)`, in the unit of the high end.
 * The class is per cent of *span*, wherever on the dial it is read (EN 837-1). Null: the ends are no span, or the class
 * is no number.
 */
export function errorOfClass(accuracyClass: string, { low, high }: RangeLimit): Quantity | null {
  const read = readNumber(accuracyClass);
  const from = convertDifference(low, high.unit);
  if ('problem' in read || from === null) return null;
  const span = decimalValue(high.number).sub(from);
  if (span.compare(0) <= 0) return null;
  return { number: exactText(decimalValue(read.number).mul(span).div(100)), unit: high.unit };
}

/**
 * Permissible error of a tool at a reading: what it is good for (`within 0.003 mm`), or per cent of the reading
 * (`within 4 %`, as ISO 6789 gives that of a torque tool); of a gauge with a class that of the class. Null: the shop
 * does not say, or says it in another kind of unit than the reading.
 */
export function permissibleError(
  { within, accuracyClass, range }: Pick<Asset, 'within' | 'accuracyClass' | 'range'>,
  reading: Quantity,
): Quantity | null {
  if (within !== null) {
    const error = toleranceOf(reading, within);
    return error === null ? null : { number: exactText(error.abs()), unit: reading.unit };
  }
  return accuracyClass === null || range === null ? null : errorOfClass(accuracyClass, range);
}
