import type Fraction from 'fraction.js';
import { changesSetting, settingThroughAdapter } from '../../engineering/adapter.ts';
import type { Step } from '../../model/procedure.ts';
import type { Asset } from '../../model/shop.ts';
import { specFor } from '../../model/spec-for.ts';
import { own } from '../../model/steps.ts';
import {
  decimalsOf,
  decimalValue,
  exactText,
  powerBelow,
  type Rounding,
  rounded,
  tenTo,
  toStep,
} from '../../quantities/decimal.ts';
import { convert, type Difference, type Limit, type Quantity, type UnitName, window } from '../../quantities/index.ts';
import type { Words } from '../../i18n/index.ts';
import { byNumber } from './by-number.ts';
import { betweenWords, withStanding } from './figures.ts';
import { standingOf } from './limits.ts';
import type { Fact } from './model.ts';
import type { Setting } from './print-context.ts';

/** Places tried beyond the marks of the wrench, or beyond three figures, until the setting lies inside the limit. */
const finerPlaces = 3;

/**
 * What to set on a wrench that turns the nut through an adapter, for each part number that differs: nobody works it out
 * at the bench. On the marks of the wrench where one lies inside the limit; the ends of a range round inwards.
 */
export function wrenchSettings(setting: Setting, step: Step): Fact[] {
  return wrenchesOf(setting, step).flatMap(({ wrench, unit, through }) => {
    if (through === null) return [];
    const texts = byNumber(setting, (number) => {
      const limit = limitOf(setting, step, number);
      return limit === null ? null : settingText(setting.words, limit, wrench.graduated, unit, through);
    });
    return texts.map(({ told, whose }) => ({
      label: setting.words.facts.setOn({ wrench: wrench.name }),
      text: texts.length === 1 ? told : `${whose}: ${told}`,
    }));
  });
}

/** Torques that a group goes through on the way, as the author wrote them, and as each is set on the wrench where it differs. */
export function passFacts(setting: Setting, step: Step): Fact[] {
  if (step.verb !== 'torque' || step.passes.length === 0) return [];
  const written = { label: setting.words.facts.passes, text: step.passes.map(setting.words.quantity).join(', ') };
  const set = wrenchesOf(setting, step).flatMap(({ wrench, unit, through }) => {
    if (through === null && step.passes.every((pass) => unit === null || pass.unit === unit)) return [];
    const texts = step.passes.map((pass) =>
      settingText(
        setting.words,
        { form: 'nominal', nominal: pass, plus: null, minus: null },
        wrench.graduated,
        unit,
        through ?? ((torque) => torque),
      ),
    );
    const text = texts.every((one) => one !== null) ? texts.join(', ') : null;
    return text === null ? [] : [{ label: setting.words.facts.passesOn({ wrench: wrench.name }), text }];
  });
  return [written, ...set];
}

interface WrenchUse {
  readonly wrench: Asset;
  readonly unit: UnitName | null;
  /** What an adapter makes of a torque; null: there is none, or it changes nothing. */
  readonly through: ((torque: Quantity) => Quantity | null) | null;
}

/** The wrenches of the shop that a step is done with. */
function wrenchesOf({ procedure }: Setting, step: Step): WrenchUse[] {
  if (step.verb !== 'torque' && step.verb !== 'lock') return [];
  return step.tools.flatMap((use): WrenchUse[] => {
    const wrench = use.form === 'asset' ? procedure.shop.assets.find(({ name }) => name === use.name) : undefined;
    if (use.form !== 'asset' || wrench === undefined) return [];
    const { adapter } = use;
    const { length } = wrench;
    const unit = wrench.range?.high.unit ?? null;
    if (adapter === null || !changesSetting(adapter)) return [{ wrench, unit, through: null }];
    // A wrench of no known length is the rule's to find: nothing can be worked out.
    if (length === null) return [];
    return [{ wrench, unit, through: (torque: Quantity) => settingThroughAdapter(torque, length, adapter) }];
  });
}

function limitOf(setting: Setting, step: Step, number: string | null): Limit | null {
  const use = own(step, 'limit');
  if (use == null) return null;
  const limit = use.form === 'limit' ? use.limit : specFor(setting.procedure, use.spec, number)?.rebuilt;
  return limit == null ? null : withStanding(limit, { standing: standingOf(setting) }).limit;
}

/** `53.3 N·m`; `48.9 N·m to 57.8 N·m` where the limit names no value to aim at. Null: there is nothing to set. */
function settingText(
  words: Words,
  limit: Limit,
  mark: Difference | null,
  wrenchUnit: UnitName | null,
  through: (torque: Quantity) => Quantity | null,
): string | null {
  const { low, high, nominal } = window(limit);
  const first = nominal ?? low ?? high;
  if (first === null) return null;
  const unit = wrenchUnit ?? first.unit;
  const onWrench = (torque: Quantity | null): Fraction | null => {
    const setting = torque === null ? null : through(torque);
    return setting === null ? null : convert(setting, unit);
  };
  const [from, to, aim] = [onWrench(low), onWrench(high), onWrench(nominal)];
  const about = aim ?? from ?? to;
  if (about === null || about.compare(0) <= 0) return null;
  for (let finer = 0; finer <= finerPlaces; finer++) {
    const step = (mark !== null && mark.unit === unit ? decimalValue(mark.number) : tenTo(powerBelow(about) - 2)).div(
      tenTo(finer),
    );
    const decimals = decimalsOf(exactText(step));
    const onMark = (value: Fraction | null) =>
      value === null ? null : { number: rounded(value, decimals, 'nearest'), unit };
    const onStep = (value: Fraction, rounding: Rounding) => toStep(value, step, rounding);
    if (aim !== null) {
      const set = onStep(aim, 'nearest');
      if ((from === null || set.compare(from) >= 0) && (to === null || set.compare(to) <= 0))
        return words.quantity(onMark(set)!);
      continue;
    }
    const [least, most] = [from === null ? null : onStep(from, 'up'), to === null ? null : onStep(to, 'down')];
    if (least !== null && most !== null && least.compare(most) > 0) continue;
    return betweenWords(words, onMark(least), onMark(most));
  }
  return null;
}
