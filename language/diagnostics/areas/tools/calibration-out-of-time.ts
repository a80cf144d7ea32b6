import { allSteps } from '../../../analysis/locations.ts';
import { listed } from '../../../analysis/prose.ts';
import { toolWork } from '../../../analysis/tool-work.ts';
import { namedTools } from '../../../analysis/tools.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** Longest interval that is believed, in years. Common practice, no source: gauges and wrenches are seen to every year or two. */
const longest = 10;

/** A calibration that ran out before the procedure was approved, or that is said to last for decades. */
export const calibrationOutOfTime: Rule = {
  code: 'calibration-out-of-time',
  severity: 'warning',
  since: '0.2.0',
  title: 'A calibration had run out when the procedure was approved, or is said to last for decades.',
  shop(shop, report) {
    for (const { name, calibrated, due, source } of shop.assets) {
      if (calibrated === null || due === null || yearOf(due) - yearOf(calibrated) <= longest) continue;
      report({
        at: source,
        allow: shop.allow,
        message: say`${name} was calibrated on ${calibrated} and is due on ${due}, ${yearOf(due) - yearOf(calibrated)} years later.`,
        why: say`no tool stays true for so long, and every reading on it would be certified.`,
        help: say`Correct one of the two dates.`,
      });
    }
  },
  procedure(procedure, report) {
    const { approvedOn, shop } = procedure;
    if (approvedOn === null) return;
    const work = toolWork(procedure);
    for (const asset of shop.assets) {
      if (asset.due === null || asset.due >= approvedOn) continue;
      const own = allSteps(procedure).find((step) =>
        step.tools.some((tool) => tool.form === 'asset' && tool.name === asset.name),
      );
      const fixed = work.find(
        (one) => one.station !== null && one.station === asset.at && namedTools(procedure, one).length === 0,
      );
      const step = own ?? fixed?.step;
      if (step === undefined) continue;
      report({
        at: step,
        source: step.tools.find((tool) => tool.form === 'asset' && tool.name === asset.name)?.source,
        rootCause: `overdue:${asset.name}`,
        message: say`${asset.name} was due on ${asset.due}, before this procedure was approved on ${approvedOn}.`,
        why: say`nothing that is read on it can be certified.`,
        help: say`Write the dates of its present calibration in ${listed([shop.name])}, or name another tool.`,
        related: [{ message: say`The tool is declared here.`, source: asset.source }],
      });
    }
  },
};

function yearOf(date: string): number {
  return Number(date.slice(0, 4));
}
