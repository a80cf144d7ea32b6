import { partsWords } from '../../../analysis/prose.ts';
import { assetOf } from '../../../analysis/tools.ts';
import { changesSetting, settingThroughAdapter } from '../../../engineering/adapter.ts';
import { formatQuantity, type Quantity } from '../../../quantities/index.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A torque goes through an adapter, and the setting of the wrench cannot be worked out. */
export const adapterNotAccounted: Rule = {
  code: 'adapter-not-accounted',
  severity: 'error',
  since: '0.2.0',
  title: 'A torque goes through an adapter, but the setting of the wrench cannot be worked out.',
  procedure(procedure, report) {
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      for (const step of block.steps) {
        if (step.verb !== 'torque' && step.verb !== 'lock') continue;
        const nut = partsWords(
          procedure,
          step.objects.map(({ name }) => name),
        );
        const wrong = say`the ${nut} does not get the torque that the wrench shows`;
        const through = step.tools.some((use) => use.form === 'asset' && use.adapter !== null);
        for (const use of step.tools) {
          if (use.form === 'asset') {
            const wrench = assetOf(procedure.shop, use);
            if (use.adapter !== null && wrench?.length != null && !canBeSet(wrench.length, use.adapter))
              report({
                at: step,
                source: use.source,
                rootCause: `adapter:${wrench.name}`,
                message: say`The adapter puts the ${nut} at the grip of ${wrench.name}, or behind it.`,
                why: say`there is no lever left to tighten it with, and no setting for the wrench.`,
                help: say`Turn the adapter the other way, or use a shorter one.`,
              });
            if (use.adapter === null || !changesSetting(use.adapter) || wrench === undefined || wrench.length !== null)
              continue;
            report({
              at: step,
              source: use.source,
              rootCause: `adapter:${wrench.name}`,
              message: say`The adapter makes ${wrench.name} ${formatQuantity(use.adapter.length)} longer, but the shop does not say how long the wrench is.`,
              why: say`${wrong}, and nobody can work out what to set.`,
              help: say`Write “length” at ${wrench.name} in the shop, measured from the mark on its grip to the square drive. Or set the adapter “at 90°”, where it changes nothing.`,
            });
          } else if (use.form === 'words' && !through && isAdapter(use.text)) {
            report({
              at: step,
              source: use.source,
              rootCause: `adapter:${use.text}`,
              message: say`“${use.text}” extends beyond the square drive.`,
              why: say`unless it is turned to 90°, ${wrong}.`,
              help: say`Write its length after the wrench, such as “and adapter 50 mm at 0°”, so that the sheet gives the setting.`,
            });
          }
        }
      }
    }
  },
};

/** Whether any torque reaches the nut. */
function canBeSet(wrench: Quantity, adapter: Parameters<typeof settingThroughAdapter>[2]): boolean {
  return settingThroughAdapter({ number: '1', unit: 'N·m' }, wrench, adapter) !== null;
}

/**
 * Words for what moves the nut away from the drive. What is in line with the axis of the drive (a socket, an extension
 * bar, a reducer) turns with it and changes nothing.
 */
function isAdapter(words: string): boolean {
  if (/crow(['’]?s)?[- ]?f(oo|ee)t/iu.test(words)) return true;
  return /\b(adapt[eo]r|extension)\b/iu.test(words) && !/\b(bar|socket|drive|reduc\w+|square|bit)\b/iu.test(words);
}
