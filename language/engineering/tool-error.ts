import type { Asset } from '../model/shop.ts';
import { decimalValue, exactText } from '../quantities/decimal.ts';
import { between, kindOfUnit, readNumber, roundTo, toleranceOf, unitOf } from '../quantities/index.ts';
import type { Difference, Quantity, RangeLimit, UnitName } from '../quantities/types.ts';

/**
 * Permissible error of a gauge by its class: `class / 100 · (high − low)`, in the unit of the high end.
 * The class is percent of *span*, wherever on the dial it is read (EN 837-1). Null: the ends are no span, or the class
 * is no number.
 */
export function errorOfClass(accuracyClass: string, { low, high }: RangeLimit): Difference | null {
  const read = readNumber(accuracyClass);
  const span = between(high, low);
  if ('problem' in read || span === null) return null;
  const width = decimalValue(span.number);
  if (width.compare(0) <= 0) return null;
  return { number: exactText(decimalValue(read.number).mul(width).div(100)), unit: high.unit };
}

/**
 * Permissible error of a tool at a reading: what it is good for (`within 0.003 mm`), or percent of the reading
 * (`within 4 %`, as ISO 6789 gives that of a torque tool); of a gauge with a class that of the class. Null: the shop
 * does not say, or says it in another kind of unit than the reading. In the unit that it is said in, so that nothing is
 * lost on the way: where a limit decides, what is a quarter of its half in psi is just that on a gauge in bar.
 */
export function permissibleError(
  { within, accuracyClass, range }: Pick<Asset, 'within' | 'accuracyClass' | 'range'>,
  reading: Quantity,
): Difference | null {
  if (within !== null) {
    if (within.unit !== '%' || reading.unit === '%')
      return kindOfUnit(within.unit) === kindOfUnit(reading.unit) ? within : null;
    const shown = onItsScale(reading, range?.high.unit ?? reading.unit);
    const error = toleranceOf(shown, within);
    return error === null ? null : { number: exactText(error.abs()), unit: shown.unit };
  }
  return accuracyClass === null || range === null ? null : errorOfClass(accuracyClass, range);
}

/** Percent of the reading are of the number that the tool shows: at 20 °C a thermometer in °F shows 68. */
function onItsScale(reading: Quantity, unit: UnitName): Quantity {
  if (unitOf(reading.unit).offset.equals(unitOf(unit).offset)) return reading;
  return roundTo(reading, unit, 6, 'nearest') ?? reading;
}
