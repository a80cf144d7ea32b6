import type { Difference, Kind, Limit, Quantity } from './types.ts';
import { kindOfUnit } from './unit-table.ts';
import type { UnitName } from './units.ts';

/** The quantities that a limit is written with: ends, nominal, tolerances in their own unit; not the pair. */
export function quantitiesOf(limit: Limit): (Quantity | Difference)[] {
  switch (limit.form) {
    case 'nominal':
      return [limit.nominal, ...[limit.plus, limit.minus].filter((side) => side !== null && side.unit !== '%')] as (
        | Quantity
        | Difference
      )[];
    case 'range':
      return [limit.low, limit.high];
    case 'at least':
      return [limit.least];
    case 'at most':
      return [limit.most];
    case 'tolerance':
      return [limit.plus, limit.minus];
    case 'then':
      return quantitiesOf(limit.first);
  }
}

/** What a limit is of, by its first quantity; of `40 N·m then 90°` the torque. */
export function kindOfLimit(limit: Limit): Kind {
  return kindOfUnit(quantitiesOf(limit)[0]!.unit);
}

/** The unit that a limit is written in; null for a tolerance alone. */
export function unitOfLimit(limit: Limit): UnitName | null {
  switch (limit.form) {
    case 'nominal':
      return limit.nominal.unit;
    case 'range':
      return limit.high.unit;
    case 'at least':
      return limit.least.unit;
    case 'at most':
      return limit.most.unit;
    case 'tolerance':
      return null;
    case 'then':
      return limit.first.nominal.unit;
  }
}
