import { gates } from './areas/gates/index.ts';
import { hazards } from './areas/hazards/index.ts';
import { hygiene } from './areas/hygiene/index.ts';
import { order } from './areas/order/index.ts';
import { protection } from './areas/protection/index.ts';
import { specifications } from './areas/specifications/index.ts';
import { tools } from './areas/tools/index.ts';
import { record } from './areas/traceability/index.ts';
import type { AnyRule, Area } from './rule.ts';

/**
 * All rules, by area. The order is that of causes: where two rules speak of one cause, the earlier one is heard.
 * rules.test.ts holds these lists against the files and the pages.
 */
export const rulesByArea: Readonly<Record<Area, readonly AnyRule[]>> = {
  hygiene,
  specifications,
  tools,
  hazards,
  order,
  protection,
  gates,
  record,
};

export const rules: readonly AnyRule[] = Object.values(rulesByArea).flat();

/** Area of a rule; null for a name that is no rule. */
export function areaOf(code: string): Area | null {
  const found = Object.entries(rulesByArea).find(([, list]) => list.some((rule) => rule.code === code));
  return found === undefined ? null : (found[0] as Area);
}

export type { AnyRule, Area } from './rule.ts';
