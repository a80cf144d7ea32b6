import { type StepCautions, type UsualCautions, usualCautions } from '../../analysis/cautions/index.ts';
import type { LimitUse, Procedure, Step } from '../../model/procedure.ts';
import { own } from '../../model/steps.ts';
import {
  kindOfLimit,
  kindOfUnit,
  type Limit,
  type Quantity,
  type UnitName,
  unitOfLimit,
} from '../../quantities/index.ts';
import { type PrintContext, shownSteps } from '../print-context.ts';
import type { ForNumbers } from './by-number.ts';
import { type HeldFigure, heldFigures } from './held.ts';
import { conditionFigure, type LimitFigure, limitFigure, spreadFigure } from './limit-figure.ts';
import { conditionWords, type PlanFigures, planFigures, planOf } from './plan-figures.ts';
import { scaleFor, unitOfScale, type Where } from './scales.ts';
import { type SettlingFigure, settlingFigures } from './settling.ts';
import { type WrenchFigure, wrenchFigures } from './wrenches.ts';

/** Where a step is written: a stage or a repair. */
export interface Place extends Where {
  readonly steps: readonly Step[];
}

/**
 * What is derived from a step and all that it refers to, once for each document: every document prints it from here. Plain
 * data; what is printed of it is in the words of the document.
 */
export interface StepFigures {
  readonly step: Step;
  readonly place: Place;
  /** What its figure is held to: a limit that is written in it, or its spec; null: nothing. */
  readonly use: LimitUse | null;
  /** The limits of that, for each part number: rebuilt, in service, with new parts; and what the tool may show. */
  readonly held: readonly HeldFigure[];
  /** What a part is chosen to, where that is a spec. */
  readonly aim: readonly HeldFigure[];
  /** How much a new spring settles that was fitted before its shim is chosen. */
  readonly settling: readonly ForNumbers<SettlingFigure>[];
  readonly stretch: LimitFigure | null;
  readonly inTime: LimitFigure | null;
  readonly spread: LimitFigure | null;
  /** What a test is done at; null: it does not say, or the step is none. */
  readonly conditions: Readonly<Record<'hold' | 'from' | 'to' | 'forTime' | 'at', LimitFigure | null>>;
  /** The other figures that it is done at: `rack 9.0 mm ±0.05`. */
  readonly figuresAt: readonly string[];
  /** What is read at points and places. */
  readonly plan: PlanFigures | null;
  /** What must never be passed, and the unit of the tool that shows it. */
  readonly ceiling: { readonly most: Quantity; readonly unit: UnitName | null } | null;
  /** The unit that a reading is written down in; null: none is known. */
  readonly unitRead: UnitName | null;
  /** What is set on the wrenches. */
  readonly wrenches: readonly WrenchFigure[];
  readonly cautions: StepCautions | null;
}

/** The figures of all steps that a document shows. */
export function deriveFigures(
  setting: PrintContext,
  cautions: UsualCautions = usualCautions(setting.procedure),
): ReadonlyMap<Step, StepFigures> {
  const { procedure } = setting;
  const places = [...procedure.stages, ...procedure.repairs];
  return new Map(
    places.flatMap((place) =>
      shownSteps(setting, place).map(
        (step) => [step, stepFigures(setting, step, place, cautions.steps.get(step))] as const,
      ),
    ),
  );
}

/** The figures of one step. */
export function stepFigures(
  setting: PrintContext,
  step: Step,
  place: Place,
  cautions: StepCautions | null = null,
): StepFigures {
  const { procedure } = setting;
  const test = own(step, 'test');
  const target = own(step, 'choose')?.target;
  const use = useOf(procedure, step);
  const held = heldFigures(setting, step, place, use);
  const judged = (limit: Limit | null | undefined) => (limit == null ? null : limitFigure(setting, step, place, limit));
  const condition = (limit: Limit | null | undefined) =>
    limit == null ? null : conditionFigure(setting, step, place, limit);
  const [stretch, inTime] = [judged(own(step, 'stretch')), judged(test?.inTime)];
  const spread =
    step.verb === 'across' && step.spread !== null ? spreadFigure(setting, step, place, step.spread) : null;
  const most = test?.neverAbove ?? null;
  return {
    step,
    place,
    use,
    held,
    aim: heldFigures(setting, step, place, target?.form === 'spec' ? target : null),
    settling: settlingFigures(setting, step, place),
    stretch,
    inTime,
    spread,
    conditions: {
      hold: condition(test?.hold?.amount),
      from: condition(test?.from),
      to: condition(test?.to),
      forTime: condition(test?.forTime),
      at: condition(own(step, 'at')),
    },
    figuresAt: (own(step, 'figures') ?? []).map((one) => conditionWords(setting, step, place, one)),
    plan: planFigures(setting, step, place, use),
    ceiling:
      most === null
        ? null
        : {
            most,
            unit: unitOfScale(scaleFor(procedure, step, place, kindOfUnit(most.unit), { form: 'at most', most })),
          },
    unitRead: unitRead(
      procedure,
      step,
      place,
      stretch ?? spread ?? (own(step, 'limit') == null ? inTime : null) ?? figureIn(held),
    ),
    wrenches: wrenchFigures(procedure, step, held),
    cautions,
  };
}

/** What the figure of a step is held to: written in it, or its spec; a `read` or `set` names its spec, if there is one. */
function useOf({ specs }: Procedure, step: Step): LimitUse | null {
  const spec = specs.find(({ name }) => name === own(step, 'reading'));
  return own(step, 'limit') ?? (spec === undefined ? null : { form: 'spec', spec: spec.name, source: step.source });
}

/** The first of the limits as rebuilt, or else in service. */
function figureIn(held: readonly HeldFigure[]): LimitFigure | null {
  const given = held.filter(({ figure, which }) => figure !== null && which !== 'whenNew');
  const [first] = given;
  return (given.find(({ number, which }) => number === first?.number && which === 'rebuilt') ?? first)?.figure ?? null;
}

function unitRead(procedure: Procedure, step: Step, where: Where, figure: LimitFigure | null): UnitName | null {
  if (step.verb === 'choose')
    return stockUnit(procedure, step) ?? unitOfScale(scaleFor(procedure, step, where, 'length'));
  const written = figure === null ? null : unitOfLimit(figure.limit);
  if (figure !== null && written !== null) return unitOfScale(figure.scale) ?? written;
  const point = (planOf(procedure, step)?.points ?? []).find(({ limit }) => limit?.form === 'limit')?.limit;
  const unit = point?.form === 'limit' ? unitOfLimit(point.limit) : null;
  if (unit !== null) return unitOfScale(scaleFor(procedure, step, where, kindOfUnit(unit))) ?? unit;
  const kind = own(step, 'test')?.reads ?? (step.verb === 'measure' ? 'length' : null);
  return kind === null ? null : unitOfScale(scaleFor(procedure, step, where, kind));
}

function stockUnit({ family, shop }: Procedure, step: Step): UnitName | null {
  const part = family.parts.find(({ name }) => step.objects.some((object) => object.name === name));
  const stock = shop.stocks.find(({ name }) => name === part?.chosenFrom);
  return stock?.sizes[0]?.unit ?? null;
}

/** Whether a step reads a pressure off the gauge. What is read is said outright, or by what it is held to. */
export function readsGauge({ specs }: Procedure, { step, use }: StepFigures): boolean {
  if (step.verb === 'relieve') return true;
  if (step.verb !== 'read' && step.verb !== 'set' && step.verb !== 'test') return false;
  const test = own(step, 'test');
  if (test?.hold != null || test?.from != null) return true;
  const spec = use?.form === 'spec' ? specs.find(({ name }) => name === use.spec) : undefined;
  const judged = use?.form === 'limit' ? kindOfLimit(use.limit) : (spec?.kind ?? null);
  return (test?.reads ?? judged) === 'pressure';
}
