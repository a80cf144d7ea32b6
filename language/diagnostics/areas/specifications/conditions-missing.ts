import { limitsOfUse } from '../../../analysis/limits.ts';
import type { Point } from '../../../model/plan.ts';
import type { StepFacts, StepOf } from '../../../model/procedure.ts';
import { kindOfLimit } from '../../../quantities/index.ts';
import type { Kind, Limit } from '../../../quantities/types.ts';
import { type Said, say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/**
 * A volume is judged, and nothing says over how many strokes or how long it is collected; a delivery, and not at what speed; what
 * air moves, and not at what pressure.
 */
export const conditionsMissing: Rule = {
  code: 'conditions-missing',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title:
    'A volume is judged without what it is collected over, a delivery without its speed, or a movement by air without its pressure.',
  eachStep(step, setting, report) {
    if (step.verb !== 'test' && step.verb !== 'set') return;
    const points: readonly (Point | null)[] =
      step.plan === null || step.plan.points.length === 0 ? [null] : step.plan.points;
    for (const point of points) {
      const missing = missingAt(setting, step, point);
      if (missing === null) continue;
      const { name, why, help } = told[missing];
      const { test } = step.gate;
      const own = step.verb === 'set' ? say`The setting of ${test}` : say`Test ${test}`;
      const whose = point === null ? own : say`Point ${point.name} of test ${test}`;
      report({
        at: step,
        source: point?.source,
        rootCause: `conditions:${step.number}:${missing}`,
        message: say`${whose} ${name}.`,
        why,
        help,
      });
      return;
    }
  },
};

type Missing = 'amount' | 'speed' | 'pressure';

const told: Readonly<Record<Missing, { readonly name: Said; readonly why: Said; readonly help: Said }>> = {
  amount: {
    name: say`does not say over how many strokes or how long the volume is collected`,
    why: say`twice the strokes are twice the volume, and a good unit fails.`,
    help: say`Write, for example, for 1000 strokes, or for 30 s.`,
  },
  speed: {
    name: say`does not say at what speed it delivers`,
    why: say`what is delivered depends on the speed, so each person would judge differently.`,
    help: say`Write, for example, at 1000 rpm.`,
  },
  pressure: {
    name: say`does not say at what pressure it is read`,
    why: say`how far the air moves it depends on the pressure, so each person would judge differently.`,
    help: say`Write, for example, at 0.80 bar.`,
  },
};

/** What the figure means nothing without; words of the author are taken to say it. */
function missingAt(facts: StepFacts, step: StepOf<'test' | 'set'>, point: Point | null): Missing | null {
  const use = point?.limit ?? step.limit;
  const kinds = use === null ? [] : limitsOfUse(facts, use).map(({ limit }) => kindOfLimit(limit));
  // The words of a setting say what is turned.
  const own = step.verb === 'test' ? [step.text, step.note, step.accept] : [];
  const words = [...own, ...step.conditions].some((text) => text !== null);
  if (words) return null;
  const at = [
    step.at,
    ...step.figures.map(({ limit }) => limit),
    ...(point?.conditions ?? []).map(({ limit }) => limit),
  ];
  const has = (limits: readonly (Limit | null)[], ...wanted: readonly Kind[]) =>
    limits.some((limit) => limit !== null && wanted.includes(kindOfLimit(limit)));
  // What air or vacuum moves: a diaphragm and its rod.
  if (step.gas !== null && kinds.some((kind) => kind === 'length' || kind === 'angle') && !has(at, 'pressure'))
    return 'pressure';
  if (step.verb === 'set') return null;
  const { forTime, inTime } = step.test;
  const over = [point?.amount ?? null, forTime, inTime];
  if (kinds.includes('volume') && !has(over, 'time', 'strokes', 'turns')) return 'amount';
  const counted = has(over, 'strokes', 'turns') || kinds.includes('volume per strokes');
  // A rail gives its pressure, whatever turns the pump.
  return counted && !has(at, 'speed', 'stroke rate', 'frequency', 'pressure') ? 'speed' : null;
}
