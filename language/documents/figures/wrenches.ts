import type Fraction from 'fraction.js';
import { changesSetting, settingThroughAdapter } from '../../engineering/adapter.ts';
import type { Procedure, Step } from '../../model/procedure.ts';
import type { Asset } from '../../model/shop.ts';
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
import type { HeldFigure } from './held.ts';

/** A wrench of the shop that a step is done with, and what is set on it. */
export interface WrenchFigure {
  readonly wrench: Asset;
  /** An adapter makes the setting another than the torque. */
  readonly adapted: boolean;
  /** What is set, for each part number that a torque is given for. */
  readonly settings: readonly { readonly number: string | null; readonly set: WrenchSetting | null }[];
  /** What is set for each pass of a group; null: as the author wrote them, or one cannot be set. */
  readonly passes: readonly WrenchSetting[] | null;
}

/** One value to set, or what the limit leaves where it names no value to aim at. */
export type WrenchSetting =
  | { readonly aim: Quantity }
  | { readonly low: Quantity | null; readonly high: Quantity | null };

/**
 * What to set on the wrenches of a step: nobody works it out at the bench. On the marks of the wrench where one lies
 * inside the limit; the ends of a range round inwards.
 */
export function wrenchFigures(procedure: Procedure, step: Step, held: readonly HeldFigure[]): WrenchFigure[] {
  if (step.verb !== 'torque' && step.verb !== 'lock') return [];
  const written = step.verb === 'torque' ? step.passes : [];
  return step.tools.flatMap((use): WrenchFigure[] => {
    const wrench = use.form === 'asset' ? procedure.shop.assets.find(({ name }) => name === use.name) : undefined;
    if (use.form !== 'asset' || wrench === undefined) return [];
    const { adapter } = use;
    const { length, graduated } = wrench;
    const unit = wrench.range?.high.unit ?? null;
    const adapted = adapter !== null && changesSetting(adapter);
    // A wrench of no known length is the rule's to find: nothing can be worked out.
    if (adapted && length === null) return [];
    const through = (torque: Quantity) => (adapted ? settingThroughAdapter(torque, length!, adapter) : torque);
    const settingFor = (limit: Limit) => settingOn(limit, graduated, unit, through);
    const settings = held.flatMap(({ which, number, figure }) =>
      !adapted || which !== 'rebuilt' || figure === null ? [] : [{ number, set: settingFor(figure.whole) }],
    );
    const asWritten = !adapted && written.every((pass) => unit === null || pass.unit === unit);
    const passes = asWritten
      ? []
      : written.map((nominal) => settingFor({ form: 'nominal', nominal, plus: null, minus: null }));
    const each = passes.filter((one) => one !== null);
    return [{ wrench, adapted, settings, passes: each.length === 0 || each.length < passes.length ? null : each }];
  });
}

/** Places tried beyond the marks of the wrench, or beyond three figures, until the setting lies inside the limit. */
const finerPlaces = 3;

/** `53.3 N·m`; `48.9 N·m to 57.8 N·m` where the limit names no value to aim at. Null: there is nothing to set. */
function settingOn(
  limit: Limit,
  mark: Difference | null,
  wrenchUnit: UnitName | null,
  through: (torque: Quantity) => Quantity | null,
): WrenchSetting | null {
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
    const onMark = (value: Fraction): Quantity => ({ number: rounded(value, decimals, 'nearest'), unit });
    const onStep = (value: Fraction, rounding: Rounding) => toStep(value, step, rounding);
    if (aim !== null) {
      const set = onStep(aim, 'nearest');
      if ((from === null || set.compare(from) >= 0) && (to === null || set.compare(to) <= 0))
        return { aim: onMark(set) };
      continue;
    }
    const [least, most] = [from === null ? null : onStep(from, 'up'), to === null ? null : onStep(to, 'down')];
    if (least !== null && most !== null && least.compare(most) > 0) continue;
    return { low: least === null ? null : onMark(least), high: most === null ? null : onMark(most) };
  }
  return null;
}
