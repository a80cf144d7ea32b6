import { judgedLimits } from '../../../analysis/limits.ts';
import { limitOfReading } from '../../../analysis/readings.ts';
import { limitWords } from '../../../analysis/tool-words.ts';
import { findGauge, widthOf } from '../../../analysis/tools.ts';
import type { Asset } from '../../../model/shop.ts';
import { asDifference, compareDifferences, formatQuantity, sizeOf, window } from '../../../quantities/index.ts';
import type { Difference } from '../../../quantities/types.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A spread across the set that units inside their window always keep, or that no gauge can show. */
export const spreadNeverFails: Rule = {
  code: 'spread-never-fails',
  severity: 'warning',
  since: '0.2.0',
  title: 'A spread across the set is as wide as the window of each unit, or finer than the gauge can be read.',
  procedure(procedure, report) {
    for (const step of procedure.stages.flatMap(({ steps }) => steps)) {
      if (step.verb !== 'across' || step.spread === null) continue;
      const { test } = step.gate;
      const { high } = window(step.spread);
      const use = limitOfReading(procedure, test);
      if (high === null || use === null) continue;
      const spread = asDifference(high);
      for (const judged of judgedLimits(procedure, step, use)) {
        const room = widthOf(judged.limit);
        const gauge = findGauge(procedure, test, judged.limit);
        const isWide = room?.twoEnds === true && (compareDifferences(spread, room.width) ?? -1) >= 0;
        if (!isWide && (gauge === null || !isFinerThan(spread, gauge))) continue;
        report({
          at: step,
          rootCause: `spread:${test}`,
          ...(isWide
            ? {
                message: say`Across the set ${test} may differ by ${formatQuantity(high)}, and ${limitWords(judged)} is only ${formatQuantity(room.width)} wide.`,
                why: say`units that have each passed never differ by more, so this compares nothing.`,
                help: say`Write a spread that is narrower than the window.`,
              }
            : {
                message: say`Across the set ${test} may differ by ${formatQuantity(high)}, and ${gauge!.name} cannot be read that finely.`,
                why: say`two units that read alike may differ by more.`,
                help: say`Write a spread that the gauge can show, or read it on a finer one.`,
              }),
        });
        break;
      }
    }
  },
};

/** A scale is read to half a mark, a display to a digit. */
function isFinerThan(spread: Difference, { graduated, digital }: Asset): boolean {
  if (graduated === null || compareDifferences(spread, graduated) === null) return false;
  return sizeOf(spread).compare(sizeOf(graduated).div(digital ? 1 : 2)) < 0;
}
