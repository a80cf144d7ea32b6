import { judgedLimits } from '../../../analysis/limits.ts';
import { partsWords } from '../../../analysis/prose.ts';
import { suits } from '../../../analysis/tools.ts';
import { formatLimit } from '../../../quantities/index.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A joint is turned by an angle, and nothing is named that shows one. */
export const angleNotMeasured: Rule = {
  code: 'angle-not-measured',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A joint is turned by an angle with nothing to measure it.',
  eachStep(step, setting, report) {
    if ((step.verb !== 'torque' && step.verb !== 'lock') || step.limit === null) return;
    const turned = judgedLimits(setting, step, step.limit).find(({ limit }) => limit.form === 'then');
    if (turned?.limit.form !== 'then') return;
    // A wrench that shows the angle itself cannot be distinguished from others: its own words, or a second tool, say so.
    const shows = step.tools.some(
      (tool) =>
        tool.form === 'words' ||
        (tool.form === 'kind'
          ? tool.kind !== 'wrench'
          : setting.shop.assets.some((asset) => asset.name === tool.name && suits(asset, 'angle'))),
    );
    const inReach = setting.shop.assets.some(
      (asset) => asset.kind !== 'wrench' && asset.range !== null && suits(asset, 'angle'),
    );
    if (shows || inReach) return;
    report({
      at: step,
      message: say`The ${partsWords(
        setting,
        step.objects.map(({ name }) => name),
      )} is turned by ${formatLimit(turned.limit.angle)} after its torque, and nothing is named that shows an angle.`,
      why: say`by eye it is off by ten degrees or more, and there is no torque at the end that would tell.`,
      help: say`Name the angle gauge: in the shop as a tool with a range in °, or here in quotes, with "angle disc".`,
    });
  },
};
