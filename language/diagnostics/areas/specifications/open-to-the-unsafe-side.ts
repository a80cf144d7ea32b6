import { limitsIn, specLimits, type WrittenLimit } from '../../../analysis/limits.ts';
import { capital } from '../../../analysis/prose.ts';
import type { Procedure } from '../../../model/procedure.ts';
import { formatLimit, kindOfLimit } from '../../../quantities/index.ts';
import type { Kind, Limit } from '../../../quantities/types.ts';
import { type Said, say } from '../../../say/say.ts';
import type { Report, Rule } from '../../rule.ts';

/** Of these, less is better and nothing is best: only the upper end protects. */
const lessIsBetter: ReadonlySet<Kind> = new Set(['unbalance', 'drops']);

/** A limit that is open at the end where it matters. */
export const openToTheUnsafeSide: Rule = {
  code: 'open-to-the-unsafe-side',
  severity: 'error',
  since: '0.2.0',
  title: 'A limit is open at the end where going too far does the damage.',
  procedure(procedure, report) {
    const torques = torqueSpecs(procedure);
    for (const one of specLimits(procedure)) {
      const why = whyUnsafe(one.limit, torques.has(one.spec?.name ?? ''));
      if (why !== null) tell(one, why, report);
    }
  },
  eachStep(step, _, report) {
    for (const one of limitsIn(step)) {
      const isTorque = (step.verb === 'torque' || step.verb === 'lock') && kindOfLimit(one.limit) === 'torque';
      const why = whyUnsafe(one.limit, isTorque);
      if (why !== null) tell(one, why, report);
    }
  },
};

/** Specs that a joint is tightened to. */
function torqueSpecs(procedure: Procedure): ReadonlySet<string> {
  return new Set(
    [...procedure.stages, ...procedure.repairs].flatMap(({ steps }) =>
      steps.flatMap((step) =>
        (step.verb === 'torque' || step.verb === 'lock') && step.limit?.form === 'spec' ? step.limit.spec : [],
      ),
    ),
  );
}

function whyUnsafe(limit: Limit, isTorque: boolean): Said | null {
  if (limit.form !== 'at least' && limit.form !== 'at most') return null;
  if (isTorque)
    return limit.form === 'at least'
      ? say`nothing says where to stop, and a thread strips or a bolt yields.`
      : say`hand-tight is within it.`;
  return limit.form === 'at least' && lessIsBetter.has(kindOfLimit(limit))
    ? say`the best unit would be rejected, and the worst would pass.`
    : null;
}

function tell({ limit, words, source, step, spec }: WrittenLimit, why: Said, report: (one: Report<never>) => void) {
  report({
    at: step ?? source,
    source,
    allow: spec?.allow,
    message: say`${capital(words)} is ${formatLimit(limit)}, open at the other end.`,
    why,
    help:
      limit.form === 'at most' || kindOfLimit(limit) === 'torque'
        ? say`Write both ends from the maker’s data.`
        : say`Write “at most”.`,
  });
}
