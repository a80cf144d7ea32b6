import type { Limit } from '../quantities/types.ts';
import type { LimitUse } from './procedure.ts';
import type { ReadingAt } from './reading-id.ts';
import type { Named, Source } from './source.ts';

/** Places of a unit that a test reads one by one: cylinders, planes, ends, sides. */
export interface Places extends Named {
  /** As the family lists them: `1` to `6`, or `turbine`, `compressor`. */
  readonly places: readonly Place[];
  /** Their names in the order in which they follow each other (`in order 1, 5, 3, 6, 2, 4`); as listed, if none is written. */
  readonly order: readonly string[];
}

export interface Place {
  readonly name: string;
  /** The author's words; the name if there are none. */
  readonly title: string;
}

/** A figure that a reading is taken at: `1000 rpm`, `rack 9.0 mm ±0.05`. */
export interface Condition {
  /** What has the figure (`rack`, `oil`); null: the unit says it. */
  readonly name: string | null;
  readonly limit: Limit;
  readonly source: Source;
}

/** One line of a plan. */
export interface Point extends Named {
  readonly conditions: readonly Condition[];
  /** `for 1000 strokes`, `for 30 s`. */
  readonly amount: Limit | null;
  readonly limit: LimitUse | null;
  /** How far the places may lie apart; null: not said. */
  readonly spread: Limit | null;
  /** `above begins`: what is read lies on this side of what was read at an earlier point. */
  readonly beyond: { readonly way: 'above' | 'below'; readonly point: string } | null;
}

/** A reading that is worked out of two others. */
export interface WorkedOut {
  readonly first: Named;
  readonly second: Named;
  readonly how: 'less' | 'plus';
}

/** What a thing that is written down in words may be. */
export type Wording =
  | { readonly form: 'code'; readonly count: number; readonly signs: 'letters' | 'digits' | 'letters or digits' }
  | { readonly form: 'one of'; readonly words: readonly string[] }
  | { readonly form: 'any' };

/** What a test reads more than once: at points, at places, or both. */
export interface Plan {
  /** Name of the places that it is read at; null: of the unit as a whole. */
  readonly places: string | null;
  /** The place that the others are read from (`from cylinder 1`); null: none. It has no reading of its own. */
  readonly from: string | null;
  /** `per place in order`: the nominal counts once for each place after the one that is read from, in their order. */
  readonly perPlace: boolean;
  readonly points: readonly Point[];
  /** How far the places of a unit may lie apart at a point that says nothing itself. */
  readonly spread: Limit | null;
  readonly workedOut: WorkedOut | null;
}

/** Every reading of a test: at each point, and there at each place, but not at the one that the others are read from. */
export function readingsOf(places: readonly Places[], test: string, plan: Plan | null): ReadingAt[] {
  if (plan === null) return [{ test, point: null, place: null }];
  const points = plan.points.length === 0 ? [null] : plan.points.map(({ name }) => name);
  const read = placesRead(places, plan);
  return points.flatMap((point) =>
    (read.length === 0 ? [null] : read.map(({ name }) => name)).map((place) => ({ test, point, place })),
  );
}

/** The places that have a reading of their own, as the family lists them. */
export function placesRead(all: readonly Places[], { places, from }: Plan): Place[] {
  return (all.find(({ name }) => name === places)?.places ?? []).filter(({ name }) => name !== from);
}

/** How many places a place comes after the one that the others are read from, in their order. */
export function stepsInOrder(all: readonly Places[], { places, from }: Plan, place: string): number | null {
  const order = all.find(({ name }) => name === places)?.order ?? [];
  const [start, at] = [order.indexOf(from ?? ''), order.indexOf(place)];
  return start < 0 || at < 0 ? null : (at - start + order.length) % order.length;
}
