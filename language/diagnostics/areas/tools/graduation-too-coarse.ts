import { limitWords, takeOr, toolCalled } from '../../../analysis/tool-words.ts';
import { toolWork } from '../../../analysis/tool-work.ts';
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
import type { Rule } from '../../rule.ts';

/** The marks of a tool stand wider apart than what must be read on it. */
export const graduationTooCoarse: Rule<Exchange> = {
  code: 'graduation-too-coarse',
  severity: 'warning',
  since: '0.2.0',
  title: 'The marks of a tool are too far apart to read the limit on it.',
  procedure(procedure, report) {
    for (const unfit of unfitTools(procedure, toolWork(procedure), isReadable)) {
      const { work, judged, asset, better, use } = unfit;
      const { width } = widthOf(judged.limit)!;
      report({
        at: work.step,
        source: use?.source,
        cause: toolCause('coarse', unfit),
        message: `${asset.name} is graduated in ${formatQuantity(asset.graduated!)}, and ${limitWords(judged)} is ${formatQuantity(width)} wide.`,
        why: `${asset.digital ? 'its last digit steps over it' : 'half a mark is the least that the eye can read'}, so the hand could not see whether it is in.`,
        help: `${takeOr(better, `Take a ${toolCalled(work.kind)} with finer ${asset.digital ? 'digits' : 'marks'}.`)}`,
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
