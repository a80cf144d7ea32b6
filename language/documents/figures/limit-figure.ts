import { withStanding } from '../../analysis/limits.ts';
import type { Step } from '../../model/procedure.ts';
import type { StandingTolerance } from '../../model/shop.ts';
import { decimalValue, exactText } from '../../quantities/decimal.ts';
import {
  type Difference,
  type Kind,
  kindOfLimit,
  kindOfUnit,
  type Limit,
  type Shown,
  shownLimit,
  type UnitName,
  unitOfLimit,
} from '../../quantities/index.ts';
import type { PrintContext } from '../print-context.ts';
import { type Scale, scaleFor, unitOfScale, type Where } from './scales.ts';

/** A limit at a step: as it is written, what it lets through, on which tool, and how that is printed. */
export interface LimitFigure extends Shown {
  /** As the author wrote it. */
  readonly limit: Limit;
  /** With the shop's tolerance where the author wrote none. */
  readonly whole: Limit;
  /** The shop's tolerance, if that is what it has. */
  readonly standing: StandingTolerance | null;
  /** Null: a tolerance alone. */
  readonly kind: Kind | null;
  /** What it is set or read on; null: no tool that is known. */
  readonly scale: Scale | null;
}

/** A limit that something is passed or refused by. */
export function limitFigure({ procedure, words }: PrintContext, step: Step, where: Where, limit: Limit): LimitFigure {
  const complete = (one: Limit) => withStanding(procedure.shop, one).limit;
  const { limit: whole, standing } = withStanding(procedure.shop, limit);
  const { kind, scale, showing } = onTool(procedure, step, where, limit);
  const setToNominal = step.verb === 'torque' || step.verb === 'lock';
  const shown = shownLimit(limit, { ...showing, complete, setToNominal, wording: words.wording });
  return { ...shown, limit, whole, standing, kind, scale };
}

/** A figure that the work is done at, as it is written: no reading is passed by it. */
export function conditionFigure(
  { procedure, words }: PrintContext,
  step: Step,
  where: Where,
  limit: Limit,
): LimitFigure {
  const { kind, scale, showing } = onTool(procedure, step, where, limit);
  const shown = shownLimit(limit, { ...showing, setToNominal: true, wording: words.wording });
  return { ...shown, limit, whole: limit, standing: null, kind, scale };
}

/** A spread is a difference: one of temperatures stays in its own unit, since 5 °C apart are no 41 °F. */
export function spreadFigure(setting: PrintContext, step: Step, where: Where, limit: Limit): LimitFigure {
  const figure = limitFigure(setting, step, where, limit);
  if (kindOfLimit(limit) !== 'temperature') return figure;
  const { wording } = setting.words;
  return {
    ...figure,
    ...shownLimit(limit, { unit: null, setToNominal: false, wording }),
    whole: limit,
    standing: null,
  };
}

function onTool(procedure: PrintContext['procedure'], step: Step, where: Where, limit: Limit) {
  const own = unitOfLimit(limit);
  const kind = own === null ? null : kindOfUnit(own);
  const scale = kind === null ? null : scaleFor(procedure, step, where, kind, limit);
  const showing: { unit: UnitName | null; mark: Difference | null; least: Difference | null } = {
    unit: unitOfScale(scale),
    mark: scale?.graduated ?? null,
    least: leastOn(scale),
  };
  return { kind, scale, showing };
}

/** The least that can be read of a tool: half a mark; of a digital one, all of its last digit. */
function leastOn(scale: Scale | null): Difference | null {
  const mark = scale?.graduated ?? null;
  if (mark === null || scale?.digital === true) return mark;
  return { ...mark, number: exactText(decimalValue(mark.number).div(2)) };
}

/** A figure in one line of text: `20 bar (15 to 25 bar)`. */
export function lineOf({ value, also }: Shown): string {
  return also === '' ? value : `${value} (${also})`;
}
