import { type Places, type Plan, stepsInOrder } from '../model/plan.ts';
import { decimalsOf, decimalValue, exactText } from '../quantities/decimal.ts';
import type { Limit, NominalLimit, Quantity } from '../quantities/types.ts';

/**
 * The limit at a place, where it counts once for each place in the order: the figure so many times, with the tolerance that
 * it has once. A range or a limit with one end is moved by its own ends, since it has no figure besides them.
 */
export function timesPlace(places: readonly Places[], plan: Plan, place: string, limit: Limit): Limit {
  const times = plan.perPlace ? stepsInOrder(places, plan, place) : null;
  return times === null ? limit : multiplied(limit, times);
}

function multiplied(limit: Limit, times: number): Limit {
  const of = (quantity: Quantity): Quantity => ({
    ...quantity,
    number: exactText(decimalValue(quantity.number).mul(times), decimalsOf(quantity.number)),
  });
  switch (limit.form) {
    case 'nominal': {
      const { pair: _, ...own } = limit;
      return { ...own, nominal: of(limit.nominal) } satisfies NominalLimit;
    }
    case 'range':
      return { form: 'range', low: of(limit.low), high: of(limit.high) };
    case 'at least':
      return { form: 'at least', least: of(limit.least) };
    case 'at most':
      return { form: 'at most', most: of(limit.most) };
    case 'tolerance':
    case 'then':
      return limit;
  }
}
