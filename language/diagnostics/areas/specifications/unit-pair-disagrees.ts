import { limitsIn, specLimits, type WrittenLimit } from '../../../analysis/limits.ts';
import { capital } from '../../../analysis/prose.ts';
import { kindOfLimit, pairAgrees } from '../../../quantities/index.ts';
import type { Limit } from '../../../quantities/types.ts';
import { say } from '../../../say/say.ts';
import type { Report, Rule } from '../../rule.ts';

/** Two figures side by side, in two units, that do not agree. */
export const unitPairDisagrees: Rule = {
  code: 'unit-pair-disagrees',
  severity: 'error',
  since: '0.1.0',
  title: 'Two figures side by side, in two units, do not agree.',
  shop(shop, report) {
    for (const { name, range, source } of shop.assets) {
      const disagreement = range === null ? null : pairAgrees(range);
      if (disagreement !== null)
        report({
          at: source,
          message: say`The range of ${name}: ${disagreement.message}`,
          why: say`everything that is set or read on it is judged by only one of the two.`,
          help: say`Correct the one that is not marked on the tool.`,
        });
    }
  },
  procedure(procedure, report) {
    for (const one of specLimits(procedure)) judge(one, report);
  },
  eachStep(step, _, report) {
    for (const one of limitsIn(step)) judge(one, report);
  },
};

function judge({ limit, words, source, step, spec }: WrittenLimit, report: (one: Report<never>) => void) {
  const disagreement = pairAgrees(
    withOwnPair(limit),
    step?.verb === 'across' && limit === step.spread ? 'differences' : 'values',
  );
  if (disagreement === null) return;
  report({
    at: step ?? source,
    source,
    allow: spec?.allow,
    message: say`${capital(words)}: ${disagreement.message}`,
    why: say`one person sets one figure, and the next sets the other.`,
    help: say`Correct the one that is not in the source.`,
  });
}

/** `40 N·m then 90° (30 lbf·ft)`: the parentheses follow the angle but belong to the torque. */
function withOwnPair(limit: Limit): Limit {
  if (limit.form !== 'then') return limit;
  const { pair, ...angle } = limit.angle;
  if (pair === undefined || kindOfLimit(pair) !== kindOfLimit(limit.first)) return limit;
  return { ...limit, first: { ...limit.first, pair }, angle };
}
