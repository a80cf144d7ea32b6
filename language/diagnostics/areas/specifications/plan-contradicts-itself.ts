import { judgedLimit } from '../../../analysis/limits.ts';
import { widthOf } from '../../../analysis/tools.ts';
import type { Plan, Point } from '../../../model/plan.ts';
import type { StepFacts, StepOf } from '../../../model/procedure.ts';
import { asDifference, compare, compareDifferences, formatLimit, window } from '../../../quantities/index.ts';
import type { Limit } from '../../../quantities/types.ts';
import { say, term } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** Limits of one plan that no unit, or every unit, meets together. */
export const planContradictsItself: Rule = {
  code: 'plan-contradicts-itself',
  severity: 'error',
  since: '0.2.0',
  title: 'A spread is wider than the limit that it goes with, or a point cannot lie beyond an earlier one.',
  eachStep(step, setting, report) {
    if (step.verb !== 'test' || step.plan === null) return;
    const { plan } = step;
    for (const point of plan.points.length === 0 ? [null] : plan.points) {
      const source = point?.source;
      const name = point === null ? say`test ${step.gate.test}` : say`point ${point.name} of test ${step.gate.test}`;
      for (const number of numbersAt(setting, step)) {
        const limit = limitAt(setting, step, point, number);
        if (limit === null) continue;
        const spread = point?.spread ?? plan.spread;
        if (spread !== null && !plan.perPlace && isWider(spread, limit)) {
          report({
            at: step,
            source,
            rootCause: `spread:${step.number}:${point?.name}`,
            message: say`The spread of ${name}, ${formatLimit(spread)}, is as wide as its limit, ${formatLimit(limit)}.`,
            why: say`two places that pass can lie no further apart, so the spread never decides.`,
            help: say`Check both figures. Write the smaller spread that the maker gives, or delete it.`,
          });
          break;
        }
        const earlier = earlierOf(plan, point);
        const other = earlier === null ? null : limitAt(setting, step, earlier, number);
        if (other === null || !isOnOtherSide(other, limit, point!.beyond!.way)) continue;
        report({
          at: step,
          source,
          rootCause: `beyond:${step.number}:${point!.name}`,
          message: say`What is read at ${name} has to be ${term(point!.beyond!.way)} ${earlier!.name}, and its limit, ${formatLimit(limit)}, lies on the other side of ${formatLimit(other)}.`,
          why: say`no unit can pass both points.`,
          help: say`Correct one of the limits, or write ${point!.beyond!.way === 'above' ? say`below` : say`above`}.`,
        });
        break;
      }
    }
  },
};

/** The part numbers that a step is for: two limits contradict each other only where they hold for the same one. */
function numbersAt({ numbers }: StepFacts, { only }: StepOf<'test'>): readonly (string | null)[] {
  const held = numbers.map(({ name }) => name).filter((name) => only === null || only.includes(name));
  return held.length === 0 ? [null] : held;
}

function limitAt(facts: StepFacts, step: StepOf<'test'>, point: Point | null, number: string | null): Limit | null {
  const use = point?.limit ?? step.limit;
  return use === null ? null : (judgedLimit(facts, use, number, 'rebuilt')?.limit ?? null);
}

function earlierOf({ points }: Plan, point: Point | null): Point | null {
  return points.find(({ name }) => name === point?.beyond?.point) ?? null;
}

function isWider(spread: Limit, limit: Limit): boolean {
  const { high } = window(spread);
  const room = widthOf(limit);
  if (high === null || room === null || !room.twoEnds) return false;
  const side = compareDifferences(asDifference(high), room.width);
  return side === 0 || side === 1;
}

/** The whole limit lies where the reading must not. */
function isOnOtherSide(before: Limit, after: Limit, way: 'above' | 'below'): boolean {
  const [a, b] = [window(before), window(after)];
  const [end, start] = way === 'above' ? [b.high, a.low] : [b.low, a.high];
  if (end === null || start === null) return false;
  const side = compare(end, start);
  return side === 0 || side === (way === 'above' ? -1 : 1);
}
