import { timesPlace } from '../../analysis/place-limits.ts';
import type { Condition, Place, Plan, Point } from '../../model/plan.ts';
import { placesRead } from '../../model/plan.ts';
import type { LimitUse, Procedure, Step } from '../../model/procedure.ts';
import { own, readingOf } from '../../model/steps.ts';
import { unitOfLimit } from '../../quantities/index.ts';
import type { PrintContext } from '../print-context.ts';
import { type HeldFigure, heldFigures } from './held.ts';
import { conditionFigure, type LimitFigure, limitFigure, lineOf, spreadFigure } from './limit-figure.ts';
import { unitOfScale, type Where } from './scales.ts';

/** A line of a plan as it is printed. */
export interface PointFigures {
  /** Null: it has no points. */
  readonly point: Point | null;
  /** `1000 rpm`, `rack 9.0 mm ±0.05`, `1000 strokes`. */
  readonly at: readonly string[];
  readonly held: readonly HeldFigure[];
  readonly spread: LimitFigure | null;
}

/** What a step reads at points and places. */
export interface PlanFigures {
  readonly plan: Plan;
  readonly places: readonly Place[];
  readonly points: readonly PointFigures[];
  /** The limit at each place, where it differs from place to place. */
  readonly byPlace: readonly LimitFigure[] | null;
}

/** The plan of a step; what is only read is read as its test reads it. */
export function planOf({ stages }: Pick<Procedure, 'stages'>, step: Step): Plan | null {
  const plan = own(step, 'plan') ?? null;
  if (plan !== null || step.verb !== 'read') return plan;
  const tests = stages.flatMap(({ steps }) => steps.filter((one) => one.verb === 'test'));
  return tests.findLast(({ gate }) => gate.test === readingOf(step))?.plan ?? null;
}

export function planFigures(setting: PrintContext, step: Step, where: Where, use: LimitUse | null): PlanFigures | null {
  const { procedure } = setting;
  const plan = planOf(procedure, step);
  if (plan === null) return null;
  const points = plan.points.length === 0 ? [null] : plan.points;
  const places = placesRead(procedure.family.places, plan);
  return {
    plan,
    places,
    points: points.map((point) => {
      const spread = point?.spread ?? plan.spread;
      return {
        point,
        at: [
          ...(point?.conditions ?? []).map((one) => conditionWords(setting, step, where, one)),
          ...(point?.amount == null
            ? []
            : [conditionWords(setting, step, where, { name: null, limit: point.amount, source: point.source })]),
        ],
        held: heldFigures(setting, step, where, point?.limit ?? use),
        spread: spread === null ? null : spreadFigure(setting, step, where, spread),
      };
    }),
    byPlace:
      plan.perPlace && use?.form === 'limit'
        ? places.map(({ name }) =>
            limitFigure(setting, step, where, timesPlace(procedure.family.places, plan, name, use.limit)),
          )
        : null,
  };
}

/** `rack 9.0 mm ±0.05`, as it is written, since it is set to its figure; on a tool of another unit as that shows it. */
export function conditionWords(setting: PrintContext, step: Step, where: Where, { name, limit }: Condition): string {
  const figure = conditionFigure(setting, step, where, limit);
  const shown = unitOfScale(figure.scale);
  const text = shown === null || shown === unitOfLimit(limit) ? setting.words.limit(limit) : lineOf(figure);
  return name === null ? text : `${name.replaceAll('-', ' ')} ${text}`;
}
