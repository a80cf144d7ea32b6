import { gates } from './gates.ts';
import { hazards } from './hazards.ts';
import { hygiene } from './hygiene.ts';
import { order } from './order.ts';
import { protection } from './protection.ts';
import { record } from './record.ts';
import type { AnyRule, Area } from './rule.ts';
import { specifications } from './specifications.ts';
import { tools } from './tools.ts';

/**
 * All rules, by area, in order of precedence: if two rules report the same cause, the earlier one wins.
 * rules.test.ts compares these lists with the files and the pages.
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
