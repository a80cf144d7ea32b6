import type { Judged } from '../../../analysis/limits.ts';
import { limitWords, takeOr, toolCalled } from '../../../analysis/tool-words.ts';
import { type ToolWork, toolWork } from '../../../analysis/tool-work.ts';
import {
  type Exchange,
  exchange,
  exchanged,
  fitOf,
  type Passes,
  settingFits,
  toolCause,
  unfitTools,
} from '../../../analysis/tools.ts';
import type { Asset } from '../../../model/shop.ts';
import { formatQuantity } from '../../../quantities/index.ts';
import type { Rule } from '../../rule.ts';

/** The trade's measure of a tool that will do: its error goes four times into half the limit's width. */
const leastRatio = 4;

/** The tool's error takes too much of the limit. */
export const toolTooCoarse: Rule<Exchange> = {
  code: 'tool-too-coarse',
  severity: 'warning',
  since: '0.2.0',
  references: ['EN 837-1'],
  title: 'The error of a tool takes too much of the limit that it reads or sets.',
  procedure(procedure, report) {
    for (const unfit of unfitTools(procedure, toolWork(procedure), isFine)) {
      const { work, asset, better, use } = unfit;
      report({
        at: work.step,
        source: use?.source,
        cause: toolCause('coarse', unfit),
        message: `${slip(work, unfit.judged, asset)} ${takeOr(better, `Take a finer ${toolCalled(work.kind)}.`)}`,
        data: exchange(work.step, use, better),
      });
    }
  },
  fix: exchanged,
};

const isFine: Passes = (asset, work, { limit }) => {
  if (work.does === 'set') return settingFits(asset, limit);
  const fit = fitOf(asset, limit);
  return fit === null || !fit.twoEnds || fit.ratio === null || fit.ratio.compare(leastRatio) >= 0;
};

function slip(work: ToolWork, judged: Judged, asset: Asset): string {
  if (work.does === 'set')
    return `${asset.name} is good for ±${formatQuantity(asset.within!)}, and ${limitWords(judged)} leaves less: however it is set, the joint may end outside its torque.`;
  const { error, width } = fitOf(asset, judged.limit)!;
  return `${asset.name} is good for ±${formatQuantity(error)}, and ${limitWords(judged)} is ${formatQuantity(width)} wide: half of that should be four times the error at least, or parts near an end are passed and rejected by chance.`;
}
