import type { JudgedLimit } from '../../../analysis/limits.ts';
import { limitWords, takeOr, toolCalled } from '../../../analysis/tool-words.ts';
import { type ToolWork, workAt } from '../../../analysis/tool-work.ts';
import {
  buildFit,
  type Exchange,
  exchange,
  exchanged,
  type Passes,
  settingFits,
  toolCause,
  unfitTools,
} from '../../../analysis/tools.ts';
import type { Statement } from '../../../model/diagnostic.ts';
import type { Asset } from '../../../model/shop.ts';
import { formatQuantity } from '../../../quantities/index.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** The trade's rule for a suitable tool: half the width of the limit is at least four times the tool's error. */
const leastRatio = 4;

/** The tool's error takes up too much of the limit. */
export const toolTooCoarse: Rule<Exchange> = {
  code: 'tool-too-coarse',
  severity: 'warning',
  since: '0.2.0',
  references: ['EN 837-1'],
  title: 'The error of a tool takes up too much of the limit that it reads or sets.',
  eachStep(step, setting, report) {
    for (const unfit of unfitTools(setting, workAt(setting, step), isFine)) {
      const { work, asset, better, use } = unfit;
      report({
        at: work.step,
        source: use?.source,
        rootCause: toolCause('coarse', unfit),
        ...tooCoarse(work, unfit.judged, asset),
        help: takeOr(better, say`Use a finer ${toolCalled(work.kind)}.`),
        data: exchange(work.step, use, better),
      });
    }
  },
  fix: exchanged,
};

const isFine: Passes = (asset, work, { limit }) => {
  if (work.does === 'set') return settingFits(asset, limit);
  const fit = buildFit(asset, limit);
  return fit === null || !fit.twoEnds || fit.ratio === null || fit.ratio.compare(leastRatio) >= 0;
};

function tooCoarse(work: ToolWork, judged: JudgedLimit, asset: Asset): Statement {
  if (work.does === 'set')
    return {
      message: say`${asset.name} is accurate to ±${formatQuantity(asset.within!)}, and ${limitWords(judged)} leaves less room than that.`,
      why: say`however it is set, the joint may end up outside its torque.`,
    };
  const { error, width } = buildFit(asset, judged.limit)!;
  return {
    message: say`${asset.name} is accurate to ±${formatQuantity(error)}, but ${limitWords(judged)} is only ${formatQuantity(width)} wide.`,
    why: say`half the width should be at least four times the error, or parts near either end pass or fail by chance.`,
  };
}
