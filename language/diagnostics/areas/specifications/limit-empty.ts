import { limitsIn, specLimits, type WrittenLimit } from '../../../analysis/limits.ts';
import { capital } from '../../../analysis/prose.ts';
import { compare, formatLimit, isEmpty, kindOfLimit, window } from '../../../quantities/index.ts';
import type { Kind, Limit } from '../../../quantities/types.ts';
import { say } from '../../../say/say.ts';
import type { Report, Rule } from '../../rule.ts';

/** A count can be met exactly. */
const counted: readonly Kind[] = ['drops', 'strokes', 'turns'];

/** No value fits a limit: its low end is above its high end, or it is a single point. */
export const limitEmpty: Rule = {
  code: 'limit-empty',
  severity: 'error',
  since: '0.2.0',
  title: 'No value fits a limit.',
  procedure(procedure, report) {
    for (const one of specLimits(procedure)) judge(one, report);
  },
  eachStep(step, _, report) {
    for (const one of limitsIn(step)) judge(one, report);
  },
};

function judge({ limit, words, source, step, spec }: WrittenLimit, report: (one: Report<never>) => void) {
  const why = isEmpty(limit)
    ? say`the low end is above the high end, so no unit can pass`
    : isPoint(limit)
      ? say`it leaves no room at all, and no gauge shows exactly that value`
      : null;
  if (why === null) return;
  report({
    at: step ?? source,
    source,
    allow: spec?.allow,
    message: say`${capital(words)} is ${formatLimit(limit)}.`,
    why: say`${why}.`,
    help: say`Correct the figures from the maker's data.`,
  });
}

function isPoint(limit: Limit): boolean {
  if (limit.form === 'then') return isPoint(limit.first) || isPoint(limit.angle);
  const { low, high } = window(limit);
  return low !== null && high !== null && compare(low, high) === 0 && !counted.includes(kindOfLimit(limit));
}
