import { kindOfLimit, kindOfUnit, type Limit, type Quantity } from '../quantities/index.ts';
import { shownLimit } from '../sheet/figures.ts';
import type { Words } from '../words/index.ts';

/** A limit as a reader holds a figure against it: its ends, in the unit of the figure. */
export function limitWords({ wording }: Words, limit: Limit, figure: Quantity | null): string {
  const unit = figure !== null && kindOfUnit(figure.unit) === kindOfLimit(limit) ? figure.unit : null;
  return shownLimit(limit, { unit, standing: () => null, setToNominal: false, wording }).value;
}
