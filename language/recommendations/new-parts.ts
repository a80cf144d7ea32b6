import { judgedLimits } from '../analysis/judged-limits.ts';
import { settlingOf } from '../analysis/settling-allowance.ts';
import { limitOfReading } from '../analysis/shim-choices.ts';
import type { Part } from '../model/family.ts';
import type { Result, Unit } from '../model/job.ts';
import type { Choice, LimitUse, Procedure } from '../model/procedure.ts';
import type { DecisionRule } from '../model/shop.ts';
import { specFor } from '../model/spec-for.ts';
import type { Difference, Limit } from '../quantities/types.ts';

/** Parts that went in new, as far as the results say so. */
export function renewedIn(results: readonly Result[]): ReadonlySet<string> {
  return new Set(results.flatMap((result) => (result.form === 'renewed' ? [result.part] : [])));
}

/** What a reading of a unit is held to, and whether that is the limit for a new part that went into it. */
export interface LimitNow {
  readonly limit: Limit | null;
  readonly forNew: boolean;
  /** How a reading near it is judged. */
  readonly acceptance: DecisionRule;
}

/** The limit of a reading for a unit: that with a new part where such a one went in, else as rebuilt. */
export function limitNow(procedure: Procedure, reading: string, unit: Unit): LimitNow {
  const use = limitOfReading(procedure, reading);
  return use === null ? { limit: null, forNew: false, acceptance: 'simple' } : limitOfUse(procedure, use, unit);
}

/** The same of a limit that is asked for at a step. */
export function limitOfUse(procedure: Procedure, use: LimitUse, { number, results }: Unit): LimitNow {
  const newPart = use.form === 'spec' ? specFor(procedure, use.spec, number)?.whenNewPart : null;
  const forNew = newPart != null && renewedIn(results).has(newPart);
  const limits = judgedLimits(procedure, { only: null }, use, [forNew ? 'whenNew' : 'rebuilt']);
  const own = limits.find((one) => one.number === number) ?? limits.find((one) => one.number === null);
  return { limit: own?.limit ?? null, forNew, acceptance: own?.acceptance ?? 'simple' };
}

/** What a reading of a unit will still lose, if one of these springs went in new. Null: nothing, or nobody says. */
export function settlingIn(
  procedure: Procedure,
  { number, results }: Unit,
  springs: readonly Part[],
  of: Choice,
): Difference | null {
  const renewed = renewedIn(results);
  return springs.some(({ name }) => renewed.has(name)) ? settlingOf(procedure, of, number) : null;
}
