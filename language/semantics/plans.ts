import type { AstNode } from 'langium';
import type { Family } from '../model/family.ts';
import type { Condition, Place, Places, Plan, Point, Wording, WorkedOut } from '../model/plan.ts';
import type { LimitUse } from '../model/procedure.ts';
import type { Source } from '../model/source.ts';
import { say } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import type { Context } from './context.ts';
import { lowerCount, lowerLimit, lowerSpread } from './limits.ts';
import { named } from './shop.ts';

/** Most places of one kind. */
const mostPlaces = 32;

/** `places cylinder 1..6 in order 1, 5, 3, 6, 2, 4`. Null where nothing can be read of it (reported). */
function lowerPlaces(context: Context, node: ast.Places): Places | null {
  const places = node.low === undefined ? namedPlaces(context, node) : countedPlaces(context, node);
  if (places === null) return null;
  return { ...named(context, node), places, order: orderOf(context, node, places) };
}

function namedPlaces(context: Context, { places }: ast.Places): Place[] {
  return context
    .unique(
      places.map((place) => ({ name: place.name, title: place.title ?? place.name, source: context.source(place) })),
      'place',
    )
    .map(({ name, title }) => ({ name, title }));
}

function countedPlaces(context: Context, node: ast.Places): Place[] | null {
  const count = { least: 1, like: `places ${node.name} 1..6` };
  const low = lowerCount(context, node, 'low', node.low!, count);
  const high = lowerCount(context, node, 'high', node.high!, count);
  if (low === null || high === null) return null;
  if (high < low || high - low >= mostPlaces) {
    context.syntax(
      'impossible-figure',
      say`Places are counted up, at most ${mostPlaces} of them: write, for example, places ${node.name} 1..6.`,
      context.source(node),
    );
    return null;
  }
  return Array.from({ length: high - low + 1 }, (_, index) => ({
    name: String(low + index),
    title: String(low + index),
  }));
}

/** Each place once, or the order is as they are listed (reported). */
function orderOf(context: Context, node: ast.Places, places: readonly Place[]): string[] {
  const names = places.map(({ name }) => name);
  // `1,5,3` without blanks is one number to the scanner.
  const order = node.order.flatMap((label) => label.split(','));
  if (order.length === 0) return names;
  const twice = order.find((name, index) => order.indexOf(name) !== index);
  const missing = names.filter((name) => !order.includes(name));
  const other = order.find((name) => !names.includes(name));
  const wrong =
    other !== undefined
      ? say`there is no ${node.name} ${other}`
      : twice !== undefined
        ? say`${node.name} ${twice} is in it twice`
        : missing.length > 0
          ? say`${node.name} ${missing.join(', ')} is not in it`
          : null;
  if (wrong === null) return order;
  context.syntax(
    'impossible-figure',
    say`This order does not go through every ${node.name} once: ${wrong}. Write each of ${names.join(', ')} in the order in which they follow each other.`,
    context.source(node, 'order'),
  );
  return names;
}

export function placesOf(context: Context, nodes: readonly ast.Places[]): Places[] {
  return context.unique(
    nodes.flatMap((node) => lowerPlaces(context, node) ?? []),
    'kind of places',
  );
}

/** What a step says about points and places, before it is whole. */
export type PlanDraft = { -readonly [key in keyof Plan]: Plan[key] };

export function noPlan(): PlanDraft {
  return { places: null, from: null, perPlace: false, points: [], spread: null, workedOut: null };
}

/** Null: it is read once, of the unit. */
export function planOf(draft: PlanDraft): Plan | null {
  const { places, points, workedOut } = draft;
  return places === null && points.length === 0 && workedOut === null ? null : { ...draft };
}

/** `at each cylinder`: places that the family lists, linked or reported. */
export function lowerEach(context: Context, family: Family, ref: ast.NameRef): string | null {
  if (family.places.length === 0) {
    context.syntax(
      'wrong-use-of-name',
      say`The family lists no places, so nobody knows where each ${ref.name} is. Write in the family, for example, places ${ref.name} 1..6.`,
      context.source(ref),
    );
    return null;
  }
  return context.find(ref.name, 'kind of places', family.places, context.source(ref))?.name ?? null;
}

/** `from cylinder 1`: the place that the others are read from. */
export function lowerFrom(context: Context, family: Family, clause: ast.FromClause, plan: PlanDraft) {
  const { places: ref, place } = clause;
  if (ref === undefined || place === undefined) return;
  const places = lowerEach(context, family, ref);
  const known = family.places.find(({ name }) => name === places)?.places.map(({ name }) => name) ?? [];
  if (places === null) return;
  if (known.includes(place)) {
    plan.from = place;
    plan.places ??= places;
    return;
  }
  context.syntax(
    'wrong-use-of-name',
    say`There is no ${ref.name} ${place}: the family has ${ref.name} ${known.join(', ')}.`,
    context.source(clause, 'place'),
  );
}

/** A plan must make sense as a whole: `per place in order` counts from a place, and `from` is one of those that are read. */
export function checkPlan(context: Context, node: AstNode, plan: PlanDraft) {
  if (plan.perPlace && plan.from === null)
    context.syntax(
      'clause-without-meaning',
      say`Nobody knows from which place “per place in order” is counted. Write, for example, at each cylinder from cylinder 1.`,
      context.source(node),
    );
  if (plan.spread !== null && plan.places === null)
    context.syntax(
      'clause-without-meaning',
      say`A spread lies between several places of one unit, and this is read at one. Write at each and the places, or across the set to compare the units.`,
      context.source(node),
    );
}

export function lowerConditions(
  context: Context,
  nodes: readonly ast.Condition[],
  source: (node: AstNode) => Source,
): Condition[] {
  return nodes.flatMap((node) => {
    const limit = lowerLimit(context, node.limit);
    return limit === null ? [] : [{ name: node.name?.name ?? null, limit, source: source(node) }];
  });
}

/** A line of a plan. */
export function lowerPoint(
  context: Context,
  node: ast.PointClause,
  before: readonly Point[],
  use: (limit: ast.Limit | undefined, name: ast.NameRef | undefined, at: AstNode) => LimitUse | null,
  source: (node: AstNode) => Source,
): Point {
  const point: { -readonly [key in keyof Point]: Point[key] } = {
    ...named(context, node),
    conditions: [],
    amount: null,
    limit: null,
    spread: null,
    beyond: null,
  };
  const seen = new Set<string>();
  for (const fact of node.facts) {
    if (seen.has(fact.$type) && fact.$type !== 'PointAt') {
      context.syntax('written-twice', say`Point ${node.name} says this twice. Delete one.`, context.source(fact));
      continue;
    }
    seen.add(fact.$type);
    switch (fact.$type) {
      case 'PointAt':
        point.conditions = [...point.conditions, ...lowerConditions(context, fact.conditions, source)];
        break;
      case 'PointFor':
        point.amount = lowerLimit(context, fact.limit);
        break;
      case 'PointWithin':
        point.limit = use(fact.limit, fact.name, fact);
        break;
      case 'PointSpread':
        point.spread = lowerSpread(context, fact.limit);
        break;
      case 'PointBeyond': {
        const earlier = context.find(fact.point.name, 'earlier point', before, context.source(fact.point));
        if (earlier !== null) point.beyond = { way: fact.way, point: earlier.name };
        break;
      }
    }
  }
  return point;
}

export function lowerWorkedOut(context: Context, node: ast.WorkedClause): WorkedOut {
  return { first: named(context, node.first), second: named(context, node.second), how: node.how };
}

/** `as 6 letters or digits`, `as "good", "worn"`. */
export function lowerWording(context: Context, node: ast.RecordForm | undefined): Wording {
  if (node === undefined) return { form: 'any' };
  if (node.count === undefined || node.signs === undefined) return { form: 'one of', words: node.words };
  const count = lowerCount(context, node, 'count', node.count, { least: 1, like: 'as 6 letters or digits' });
  const signs = node.signs.includes('or') ? 'letters or digits' : (node.signs as 'letters' | 'digits');
  return count === null ? { form: 'any' } : { form: 'code', count, signs };
}
