import { family } from './areas/family/index.ts';
import { gates } from './areas/gates/index.ts';
import { hazards } from './areas/hazards/index.ts';
import { language } from './areas/language/index.ts';
import { order } from './areas/order/index.ts';
import { protection } from './areas/protection/index.ts';
import { specifications } from './areas/specifications/index.ts';
import { tools } from './areas/tools/index.ts';
import { traceability } from './areas/traceability/index.ts';
import type { AnyRule, Area } from './rule.ts';

/**
 * All rules, by area, in order of precedence: if two rules report the same cause, the earlier one wins.
 * rules.test.ts compares these lists with the files and the pages.
 */
export const rulesByArea: Readonly<Record<Area, readonly AnyRule[]>> = {
  language,
  family,
  specifications,
  tools,
  hazards,
  order,
  protection,
  gates,
  traceability,
};

export const rules: readonly AnyRule[] = Object.values(rulesByArea).flat();

/** Area of a rule; null for a name that is no rule. */
export function areaOf(code: string): Area | null {
  const found = Object.entries(rulesByArea).find(([, list]) => list.some((rule) => rule.code === code));
  return found === undefined ? null : (found[0] as Area);
}

export type { AnyRule, Area } from './rule.ts';
