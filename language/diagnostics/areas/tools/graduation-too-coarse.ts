import { limitWords, takeOr, toolCalled } from '../../../analysis/tool-words.ts';
import { workAt } from '../../../analysis/tool-work.ts';
import {
  type Exchange,
  exactWidth,
  exchange,
  exchanged,
  type Passes,
  readable,
  toolCause,
  unfitTools,
  widthOf,
} from '../../../analysis/tools.ts';
import { formatQuantity } from '../../../quantities/index.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** The marks of a tool are farther apart than the limit that has to be read on it. */
export const graduationTooCoarse: Rule<Exchange> = {
  code: 'graduation-too-coarse',
  severity: 'warning',
  since: '0.2.0',
  title: 'The marks of a tool are too far apart to read the limit on it.',
  eachStep(step, setting, report) {
    for (const unfit of unfitTools(setting, workAt(setting, step), isReadable)) {
      const { work, judged, asset, better, use } = unfit;
      const { width } = widthOf(judged.limit)!;
      report({
        at: work.step,
        source: use?.source,
        rootCause: toolCause('coarse', unfit),
        message: say`${asset.name} is graduated in steps of ${formatQuantity(asset.graduated!)}, but ${limitWords(judged)} is only ${formatQuantity(width)} wide.`,
        why: say`${asset.digital ? say`its last digit steps over the limit` : say`the eye cannot read finer than half a mark`}, so nobody can see whether the reading is inside.`,
        help: takeOr(
          better,
          say`Use a ${toolCalled(work.kind)} with finer ${asset.digital ? say`digits` : say`marks`}.`,
        ),
        data: exchange(work.step, use, better),
      });
    }
  },
  fix: exchanged,
};

const isReadable: Passes = (asset, work, { limit }) => {
  const least = readable(asset);
  if (work.does === 'set' || asset.graduated === null || least === null) return true;
  const width = exactWidth(limit, asset.graduated.unit);
  return width === null || width.compare(least) >= 0;
};
