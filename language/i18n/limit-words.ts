import {
  type Difference,
  inUnit,
  kindOfLimit,
  kindOfUnit,
  type Limit,
  type Quantity,
  shownLimit,
  type UnitName,
} from '../quantities/index.ts';
import type { Words } from './words.ts';

/** A limit as a reader holds a figure against it: its ends, in the unit of the figure. */
export function limitWords({ wording }: Words, limit: Limit, figure: Quantity | Difference | null): string {
  const unit = figure !== null && kindOfUnit(figure.unit) === kindOfLimit(limit) ? figure.unit : null;
  return shownLimit(limit, { unit, setToNominal: false, wording }).value;
}

/** `252 bar to 256 bar`; with one end `at least 252 bar`. */
export function betweenWords({ figures, quantity }: Words, low: Quantity | null, high: Quantity | null): string {
  if (low === null) return high === null ? '' : `${figures.atMost} ${quantity(high)}`;
  return high === null
    ? `${figures.atLeast} ${quantity(low)}`
    : figures.range({ from: quantity(low), to: quantity(high) });
}

/** What must never be exceeded, in the unit of the tool: rounded down. */
export function ceilingText({ quantity }: Words, most: Quantity, unit: UnitName | null): string {
  const converted = unit === null || unit === most.unit ? null : inUnit({ form: 'at most', most }, unit);
  return converted?.form === 'at most' ? `${quantity(converted.most)} (${quantity(most)})` : quantity(most);
}
