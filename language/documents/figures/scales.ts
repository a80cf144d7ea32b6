import type { Procedure, Step } from '../../model/procedure.ts';
import type { Asset } from '../../model/shop.ts';
import { compare, type Kind, kindOfUnit, type Limit, type UnitName, window } from '../../quantities/index.ts';

/** Where a step is done. */
export interface Where {
  readonly station: string | null;
}

/** Assets fixed at a station, in the shop's order. */
export function assetsAt(procedure: Procedure, station: string | null): Asset[] {
  return station === null ? [] : procedure.shop.assets.filter((asset) => asset.at === station);
}

/** What a tool reads: its range, its marks, and how far it may be off, as far as the shop says. */
export type Scale = Pick<Asset, 'range' | 'graduated'> &
  Partial<Pick<Asset, 'name' | 'within' | 'accuracyClass' | 'digital'>>;

/**
 * The scale that a limit is read on: of the step's own tool, else of a gauge at the station. It measures the limit's
 * kind; of several it is the first whose range holds the limit.
 */
export function scaleFor(
  procedure: Procedure,
  step: Step,
  where: Where,
  kind: Kind,
  limit: Limit | null = null,
): Scale | null {
  const own = step.tools.flatMap((tool): Scale[] => {
    if (tool.form === 'kind') return [{ range: tool.range, graduated: null }];
    const known = tool.form === 'asset' ? procedure.shop.assets.find(({ name }) => name === tool.name) : undefined;
    return known === undefined ? [] : [known];
  });
  for (const scales of [own, assetsAt(procedure, where.station)]) {
    const fitting = scales.filter((scale) => {
      const unit = unitOfScale(scale);
      return unit !== null && kindOfUnit(unit) === kind;
    });
    const found = fitting.find((scale) => limit !== null && holds(scale, limit)) ?? fitting[0];
    if (found !== undefined) return found;
  }
  return null;
}

/** The unit on a tool; null: the shop does not say, or there is no tool. */
export function unitOfScale(scale: Scale | null): UnitName | null {
  return scale?.range?.high.unit ?? scale?.graduated?.unit ?? null;
}

/** All of a limit lies on the dial. */
function holds({ range }: Scale, limit: Limit): boolean {
  if (range === null) return false;
  const { low, high, nominal } = window(limit);
  return [low, high, nominal].every(
    (one) => one === null || ((compare(one, range.low) ?? -1) >= 0 && (compare(one, range.high) ?? 1) <= 0),
  );
}
