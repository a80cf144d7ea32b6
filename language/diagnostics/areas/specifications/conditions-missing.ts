import { limitsOfUse } from '../../../analysis/limits.ts';
import type { Point } from '../../../model/plan.ts';
import type { StepFacts, StepOf } from '../../../model/procedure.ts';
import { kindOfLimit } from '../../../quantities/index.ts';
import type { Kind, Limit } from '../../../quantities/types.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A volume is judged, and nothing says over how many strokes or how long it is collected; a delivery, and not at what speed. */
export const conditionsMissing: Rule = {
  code: 'conditions-missing',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A volume is judged without what it is collected over, or a delivery without its speed.',
  eachStep(step, setting, report) {
    if (step.verb !== 'test') return;
    const points: readonly (Point | null)[] =
      step.plan === null || step.plan.points.length === 0 ? [null] : step.plan.points;
    for (const point of points) {
      const missing = missingAt(setting, step, point);
      if (missing === null) continue;
      const whose = point === null ? say`Test ${step.gate.test}` : say`Point ${point.name} of test ${step.gate.test}`;
      report({
        at: step,
        source: point?.source,
        rootCause: `conditions:${step.number}:${missing}`,
        message: say`${whose} ${missing === 'amount' ? say`does not say over how many strokes or how long the volume is collected` : say`does not say at what speed it delivers`}.`,
        why:
          missing === 'amount'
            ? say`twice the strokes are twice the volume, and a good unit fails.`
            : say`what is delivered depends on the speed, so each person would judge differently.`,
        help:
          missing === 'amount'
            ? say`Write, for example, for 1000 strokes, or for 30 s.`
            : say`Write, for example, at 1000 rpm.`,
      });
      return;
    }
  },
};

/** What the volume means nothing without; words of the author are taken to say it. */
function missingAt(facts: StepFacts, step: StepOf<'test'>, point: Point | null): 'amount' | 'speed' | null {
  const use = point?.limit ?? step.limit;
  const kinds = use === null ? [] : limitsOfUse(facts, use).map(({ limit }) => kindOfLimit(limit));
  const words = [step.text, step.note, step.accept, ...step.conditions].some((text) => text !== null);
  if (words) return null;
  const { forTime, inTime } = step.test;
  const over = [point?.amount ?? null, forTime, inTime];
  const at = [
    step.at,
    ...step.figures.map(({ limit }) => limit),
    ...(point?.conditions ?? []).map(({ limit }) => limit),
  ];
  const has = (limits: readonly (Limit | null)[], ...wanted: readonly Kind[]) =>
    limits.some((limit) => limit !== null && wanted.includes(kindOfLimit(limit)));
  if (kinds.includes('volume') && !has(over, 'time', 'strokes', 'turns')) return 'amount';
  const counted = has(over, 'strokes', 'turns') || kinds.includes('volume per strokes');
  // A rail gives its pressure, whatever turns the pump.
  return counted && !has(at, 'speed', 'stroke rate', 'frequency', 'pressure') ? 'speed' : null;
}
