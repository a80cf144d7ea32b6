import type { Difference, Kind, Limit, Quantity } from './types.ts';
import { kindOfUnit } from './unit-table.ts';

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
