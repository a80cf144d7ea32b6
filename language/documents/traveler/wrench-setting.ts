import type { Words } from '../../i18n/index.ts';
import { betweenWords } from '../../i18n/limit-words.ts';
import { byNumber } from '../figures/by-number.ts';
import type { StepFigures } from '../figures/step-figures.ts';
import type { WrenchSetting } from '../figures/wrenches.ts';
import type { Fact } from '../model.ts';
import type { PrintContext } from '../print-context.ts';

/** What to set on a wrench that turns the nut through an adapter, for each part number that differs. */
export function wrenchSettings(setting: PrintContext, { wrenches }: StepFigures): Fact[] {
  const { words } = setting;
  return wrenches.flatMap(({ wrench, settings }) => {
    const texts = byNumber(setting, (number) => {
      const set = (settings.find((one) => one.number === number) ?? settings.find((one) => one.number === null))?.set;
      return set == null ? null : settingText(words, set);
    });
    return texts.map(({ told, whose }) => ({
      label: words.facts.setOn({ wrench: wrench.name }),
      text: texts.length === 1 ? told : `${whose}: ${told}`,
    }));
  });
}

/** Torques that a group goes through on the way, as the author wrote them, and as each is set on the wrench where it differs. */
export function passFacts({ words }: PrintContext, { step, wrenches }: StepFigures): Fact[] {
  if (step.verb !== 'torque' || step.passes.length === 0) return [];
  const set = wrenches.flatMap(({ wrench, passes: settings }) =>
    settings === null
      ? []
      : [
          {
            label: words.facts.passesOn({ wrench: wrench.name }),
            text: settings.map((one) => settingText(words, one)).join(', '),
          },
        ],
  );
  return [{ label: words.facts.passes, text: step.passes.map(words.quantity).join(', ') }, ...set];
}

/** `53.3 N·m`; `48.9 N·m to 57.8 N·m` where there is no one value to aim at. */
function settingText(words: Words, set: WrenchSetting): string {
  return 'aim' in set ? words.quantity(set.aim) : betweenWords(words, set.low, set.high);
}
