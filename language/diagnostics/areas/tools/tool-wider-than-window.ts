import { limitWords, takeOr, toolCalled } from '../../../analysis/tool-words.ts';
import { workAt } from '../../../analysis/tool-work.ts';
import {
  buildFit,
  type Exchange,
  exchange,
  exchanged,
  type Passes,
  toolCause,
  unfitTools,
} from '../../../analysis/tools.ts';
import { formatQuantity } from '../../../quantities/index.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** The error of the tool may be greater than the whole width of the limit. */
export const toolWiderThanWindow: Rule<Exchange> = {
  code: 'tool-wider-than-window',
  severity: 'error',
  since: '0.2.0',
  title: 'The error of a tool may be greater than the width of the limit that it reads.',
  eachStep(step, setting, report) {
    for (const unfit of unfitTools(setting, workAt(setting, step), isNarrower)) {
      const { work, judged, asset, better, use } = unfit;
      const { error, width } = buildFit(asset, judged.limit)!;
      report({
        at: work.step,
        source: use?.source,
        rootCause: toolCause('coarse', unfit),
        message: say`${asset.name} is accurate to ±${formatQuantity(error)}, but ${limitWords(judged)} is only ${formatQuantity(width)} wide.`,
        why: say`a bad part reads good as often as not.`,
        help: takeOr(better, say`Use a finer ${toolCalled(work.kind)}.`),
        data: exchange(work.step, use, better),
      });
    }
  },
  fix: exchanged,
};

const isNarrower: Passes = (asset, work, { limit }) => {
  if (work.does === 'set') return true;
  const ratio = buildFit(asset, limit)?.ratio ?? null;
  return ratio === null || ratio.compare(1) >= 0;
};
