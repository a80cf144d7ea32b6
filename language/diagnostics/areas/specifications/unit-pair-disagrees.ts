import { specLimits, stepLimits } from '../../../analysis/limits.ts';
import { kindOfLimit, pairAgrees } from '../../../quantities/index.ts';
import type { Limit } from '../../../quantities/types.ts';
import type { Rule } from '../../rule.ts';

/** Two units side by side that do not say the same. */
export const unitPairDisagrees: Rule = {
  code: 'unit-pair-disagrees',
  severity: 'error',
  since: '0.1.0',
  title: 'Two units side by side do not agree.',
  shop(shop, report) {
    for (const { name, range, source } of shop.assets) {
      const disagreement = range === null ? null : pairAgrees(range);
      if (disagreement !== null)
        report({
          at: source,
          message: `The range of ${name}.`,
          why: `${disagreement.message} What is set or read on it is judged by one of them.`,
          help: 'Mend the one that does not stand on the tool.',
        });
    }
  },
  procedure(procedure, report) {
    for (const { limit, words, source, step, spec } of [...specLimits(procedure), ...stepLimits(procedure)]) {
      const disagreement = pairAgrees(
        withOwnPair(limit),
        step?.verb === 'across' && limit === step.spread ? 'differences' : 'values',
      );
      if (disagreement === null) continue;
      report({
        at: step ?? source,
        source,
        allow: spec?.allow,
        message: `${words.charAt(0).toUpperCase()}${words.slice(1)}.`,
        why: `${disagreement.message} One hand sets one number and one the other.`,
        help: 'Mend the one that is not in the source.',
      });
    }
  },
};

/** `40 N·m then 90° (30 lbf·ft)`: the brackets stand behind the angle and are of the torque. */
function withOwnPair(limit: Limit): Limit {
  const pair = limit.form === 'then' ? limit.angle.pair : undefined;
  if (limit.form !== 'then' || pair === undefined || kindOfLimit(pair) !== kindOfLimit(limit.first)) return limit;
  return { ...limit, first: { ...limit.first, pair }, angle: { ...limit.angle, pair: undefined } };
}
