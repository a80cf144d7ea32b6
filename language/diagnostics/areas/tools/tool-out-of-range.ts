import type { Judged } from '../../../analysis/judged-limits.ts';
import { capital } from '../../../analysis/prose.ts';
import {
  aimOf,
  type Exchange,
  exchange,
  exchanged,
  settingOn,
  toolCause,
  unfitTools,
} from '../../../analysis/tool-choice.ts';
import { limitWords, takeOr, toolWords, workedOut } from '../../../analysis/tool-words.ts';
import { type ToolWork, toolWork } from '../../../analysis/tool-work.ts';
import type { Asset } from '../../../model/shop.ts';
import { own } from '../../../model/steps.ts';
import { amount, formatQuantity, kindOfUnit, window } from '../../../quantities/index.ts';
import type { Quantity } from '../../../quantities/types.ts';
import type { Rule } from '../../rule.ts';

/** ISO 6789 (2003): a setting torque tool is good for its error from a fifth of its maximum up. */
const leastOfWrench = 20;
/** EN 837-2: of full scale, where the pressure stands, and where it comes and goes. */
const mostOfGauge = { steady: 75, cyclic: 65 };

/** On its scale, and outside the part of it where the tool is good for what it says. */
export const toolOutOfRange: Rule<Exchange> = {
  code: 'tool-out-of-range',
  severity: 'warning',
  since: '0.2.0',
  references: ['ISO 6789', 'EN 837-2'],
  title: 'A tool is used at the end of its range, where it is not good for what it says.',
  procedure(procedure, report) {
    for (const unfit of unfitTools(procedure, toolWork(procedure), (...at) => strain(...at) === null)) {
      const { work, judged, asset, better, use } = unfit;
      report({
        at: work.step,
        source: use?.source,
        // A gauge that is too small is one slip, whatever is read on it.
        cause: work.does === 'set' ? toolCause('range', unfit) : `range:${asset.name}`,
        message: `${capital(strain(asset, work, judged)!)} ${takeOr(better, work.does === 'set' ? 'Take a smaller wrench.' : 'Take a gauge with a longer scale.')}`,
        data: exchange(work.step, use, better),
      });
    }
  },
  fix: exchanged,
};

/** What is wrong with the place on the scale; null: nothing. */
function strain(asset: Asset, work: ToolWork, judged: Judged): string | null {
  const full = asset.range?.high;
  // A digital tool is good for what its maker says over the whole of its range.
  if (full === undefined || asset.digital || kindOfUnit(full.unit) !== work.kind || amount(full).compare(0) <= 0)
    return null;
  if (work.does === 'set' && asset.kind === 'wrench') {
    const torque = aimOf(judged.limit);
    if (torque === null) return null;
    const setting = settingOn(work.step, asset, torque);
    if (against(setting, full, leastOfWrench) >= 0) return null;
    const through = setting === torque ? '' : ` (${workedOut(setting)} on the wrench with this adapter)`;
    return `${limitWords(judged)}${through} is under ${leastOfWrench} % of what ${toolWords(asset)} goes to: so low a torque wrench is not good for its error (ISO 6789), and the click is hardly felt.`;
  }
  if (work.kind !== 'pressure' || asset.kind !== 'gauge') return null;
  const { low, high, nominal } = window(judged.limit);
  const top = high ?? nominal ?? low;
  const cyclic = pulses(work);
  const most = cyclic ? mostOfGauge.cyclic : mostOfGauge.steady;
  if (top === null || against(top, full, most) <= 0) return null;
  return `${formatQuantity(top)} is over ${most} % of the scale of ${toolWords(asset)}: a dial gauge that is ${cyclic ? 'pulsed' : 'worked'} so high does not stay true (EN 837-2).`;
}

/** A pressure that comes and goes with the strokes of the lever. */
function pulses({ step }: ToolWork): boolean {
  const at = own(step, 'at');
  if (at == null) return false;
  const { low, high, nominal } = window(at);
  const rate = nominal ?? low ?? high;
  return rate !== null && kindOfUnit(rate.unit) === 'stroke rate';
}

/** Where on a scale a figure stands: -1, 0 or 1 as it is under, at or over so many per cent of the whole. */
function against(figure: Quantity, full: Quantity, percent: number): number {
  return amount(figure).compare(amount(full).mul(percent).div(100));
}
