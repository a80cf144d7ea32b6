import type { JudgedLimit } from '../../../analysis/limits.ts';
import { capital } from '../../../analysis/prose.ts';
import { limitWords, takeOr, toolWords, workedOut } from '../../../analysis/tool-words.ts';
import { type ToolWork, workAt } from '../../../analysis/tool-work.ts';
import {
  aimOf,
  type Exchange,
  exchange,
  exchanged,
  settingOn,
  toolCause,
  unfitTools,
} from '../../../analysis/tools.ts';
import type { Statement } from '../../../model/diagnostic.ts';
import type { Asset } from '../../../model/shop.ts';
import { own } from '../../../model/steps.ts';
import { amount, formatQuantity, kindOfUnit, window } from '../../../quantities/index.ts';
import type { Quantity } from '../../../quantities/types.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** ISO 6789 (2003): a setting torque tool keeps its stated error from a fifth of its maximum up. */
const leastOfWrench = 20;
/** EN 837-2: percent of full scale, for steady and for cyclic pressure. */
const mostOfGauge = { steady: 75, cyclic: 65 };

/** On the scale, but outside the part of it where the tool is accurate. */
export const toolOutOfRange: Rule<Exchange> = {
  code: 'tool-out-of-range',
  severity: 'warning',
  since: '0.2.0',
  references: ['ISO 6789', 'EN 837-2'],
  title: 'A tool is used at the end of its range, where it is not accurate.',
  eachStep(step, setting, report) {
    for (const unfit of unfitTools(setting, workAt(setting, step), (...at) => strain(...at) === null)) {
      const { work, judged, asset, better, use } = unfit;
      report({
        at: work.step,
        source: use?.source,
        // A gauge that is too small is one mistake, whatever is read on it.
        rootCause: work.does === 'set' ? toolCause('range', unfit) : `range:${asset.name}`,
        ...strain(asset, work, judged)!,
        help: takeOr(better, work.does === 'set' ? say`Use a smaller wrench.` : say`Use a gauge with a longer scale.`),
        data: exchange(work.step, use, better),
      });
    }
  },
  fix: exchanged,
};

/** What is wrong with the place on the scale; null if nothing is. */
function strain(asset: Asset, work: ToolWork, judged: JudgedLimit): Statement | null {
  const full = asset.range?.high;
  // A digital tool is accurate to its maker's figure over its whole range.
  if (full === undefined || asset.digital || kindOfUnit(full.unit) !== work.kind || amount(full).compare(0) <= 0)
    return null;
  if (work.does === 'set' && asset.kind === 'wrench') {
    const torque = aimOf(judged.limit);
    if (torque === null) return null;
    const setting = settingOn(work.step, asset, torque);
    if (against(setting, full, leastOfWrench) >= 0) return null;
    const through = setting === torque ? '' : say` (${workedOut(setting)} on the wrench with this adapter)`;
    return {
      message: say`${capital(limitWords(judged))}${through} is below ${leastOfWrench} % of the maximum of ${toolWords(asset)}.`,
      why: say`that low, a torque wrench is not held to its stated error (ISO 6789), and the click is hardly felt.`,
    };
  }
  if (work.kind !== 'pressure' || asset.kind !== 'gauge') return null;
  const { low, high, nominal } = window(judged.limit);
  const top = high ?? nominal ?? low;
  const cyclic = pulses(work);
  const most = cyclic ? mostOfGauge.cyclic : mostOfGauge.steady;
  if (top === null || against(top, full, most) <= 0) return null;
  return {
    message: say`${formatQuantity(top)} is above ${most} % of the scale of ${toolWords(asset)}.`,
    why: say`a dial gauge that is ${cyclic ? say`pulsed` : say`used`} that high does not stay accurate (EN 837-2).`,
  };
}

/** A pressure that comes and goes with the strokes of the lever. */
function pulses({ step }: ToolWork): boolean {
  const at = own(step, 'at');
  if (at == null) return false;
  const { low, high, nominal } = window(at);
  const rate = nominal ?? low ?? high;
  return rate !== null && kindOfUnit(rate.unit) === 'stroke rate';
}

/** Where a figure is on a scale: -1, 0 or 1 if it is below, at or above that percentage of full scale. */
function against(figure: Quantity, full: Quantity, percent: number): number {
  return amount(figure).compare(amount(full).mul(percent).div(100));
}
