/** What keeps a part from coming off or going on, in a state: what rules report and completion offers. */
import type { Part } from '../model/family.ts';
import { place } from './locations.ts';
import { type Relations, restsOn } from './relations.ts';
import type { AbstractState } from './state.ts';

/** Parts that may be in place over a part, or hold it, and do not come off together with it. */
export function blockersOf(
  relations: Relations,
  state: AbstractState,
  name: string,
  together: readonly string[],
): string[] {
  const inside = relations.inside(name).map((part) => part.name);
  const closing = relations.closedBy(name).map((joint) => joint.part);
  // What its stack presses on lies over it, as a nozzle with its needle over the spring in the bore.
  const over = [...relations.bornBy(name)].filter((loaded) =>
    [loaded, ...restsOn(relations.part(loaded))].every((part) => state.mayBeIn(part) && !together.includes(part)),
  );
  return [
    ...new Set([...relations.holders(name), ...relations.onIt(name)].map((part) => part.name).concat(closing, over)),
  ]
    .filter((other) => other !== name && !together.includes(other) && !inside.includes(other))
    .filter((other) => state.mayBeIn(other));
}

/** Parts that a part goes on or holds, which may not be in place and do not go on together with it. */
export function missingFor(
  relations: Relations,
  state: AbstractState,
  name: string,
  together: readonly string[],
): string[] {
  const part = relations.part(name);
  // A sub-assembly in the hand: the part under it may be off too, if both go in together later.
  return [...new Set([...restsOn(part), ...part.holds])].filter(
    (under) =>
      !together.includes(under) &&
      state.may(state.part(under).place, ~(place.in | place.trial)) &&
      !isAssembledInHand(relations, name, under),
  );
}

/**
 * Put into or onto a part that is itself in the hand, as a needle into its nozzle: a sub-assembly. A part that
 * goes into a bore carries nothing: nothing can be put under what is already in the bore.
 */
function isAssembledInHand(relations: Relations, name: string, under: string): boolean {
  return (
    relations.joint(name) === undefined &&
    restsOn(relations.part(under)).length > 0 &&
    (relations.part(name).in.includes(under) ||
      (relations.part(name).on.includes(under) && !isInBore(relations, under)))
  );
}

/** It lies in a part, or on one that does. */
function isInBore(relations: Relations, name: string): boolean {
  const part = relations.part(name);
  return (
    part.in.length > 0 ||
    part.on.some((lower) => restsOn(relations.part(lower)).length > 0 && isInBore(relations, lower))
  );
}

/** What the family says about two parts that makes one of them block the other, or the other's seat. */
export interface SaidOf {
  /** The part whose line says it. */
  readonly part: Part;
  /** As it is written there: `holds nozzle`. */
  readonly words: string;
}

/** The line by which a part lies over another, holds it, or presses what is in its way; null: no single line says it. */
export function saidBetween(relations: Relations, upper: string, lower: string): SaidOf | null {
  const part = relations.part(upper);
  const base = (name: string) => relations.part(name).base;
  for (const word of ['holds', 'on', 'in', 'through'] as const)
    if (part[word].includes(lower)) return { part, words: `${word} ${base(lower)}` };
  // It holds what lies on the lower one.
  const held = part.holds.find((name) => relations.closure(upper).has(lower) && relations.closure(upper).has(name));
  if (held !== undefined) return { part, words: `holds ${base(held)}` };
  // What presses on the upper one is born before it is there.
  const pressing = relations.family.parts.find(
    ({ name, bearsOn }) => bearsOn.includes(upper) && (name === lower || restsOn(relations.part(name)).includes(lower)),
  );
  return pressing === undefined ? null : { part: pressing, words: ['bears', 'on', base(upper)].join(' ') };
}

/** Parts in the order in which they come off one after the other, from those that can come off first. */
export function orderOff(relations: Relations, state: AbstractState, parts: readonly string[]): string[] {
  // A family is written from the inside out.
  return inOrder(parts.toReversed(), (name, before) => blockersOf(relations, state, name, before).length === 0);
}

/** Parts in the order in which they go on one after the other, from those that can go on first. */
export function orderOn(relations: Relations, state: AbstractState, parts: readonly string[]): string[] {
  return inOrder(parts, (name, before) => missingFor(relations, state, name, before).length === 0);
}

/** Each as soon as it can be, given those before it; what never can is left out. */
function inOrder(parts: readonly string[], can: (name: string, before: readonly string[]) => boolean): string[] {
  const order: string[] = [];
  let left = parts;
  for (;;) {
    const next = left.find((name) => can(name, order));
    if (next === undefined) return order;
    order.push(next);
    left = left.filter((name) => name !== next);
  }
}
