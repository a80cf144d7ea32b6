import { type Relations, restsOn } from '../../analysis/relations.ts';
import type { Joint, Part } from '../../model/family.ts';
import type { ShapeName } from './shapes/index.ts';

/**
 * What each part is drawn as: what the family says (`drawn as spring`), or else what follows from its relations, its joints and its
 * faces. Never from its title: that is the author's own words, in any language.
 */
export function findShapes(relations: Relations): Map<string, ShapeName> {
  return new Map(relations.family.parts.map((part) => [part.name, part.drawnAs ?? known(relations, part)]));
}

function known(relations: Relations, part: Part): ShapeName {
  const { family } = relations;
  if (part.bindsOver !== null) return 'spring';
  if (part.chosenFrom !== null) return 'shim';
  const pair = pairOf(relations, part);
  if (pair !== null) return pair;
  if (family.adjusters.some(({ lockedBy }) => lockedBy === part.name)) return 'nut';
  if (family.adjusters.some((adjuster) => adjuster.part === part.name)) return 'setting-screw';
  const joint = relations.joint(part.name);
  if (joint !== undefined) return turnedShape(relations, part, joint);
  if (part.through.length > 0) return 'shaft';
  if (part.bearsOn.length > 0) return part.on.length > 0 ? 'seat' : 'rod';
  if (relations.faces(part.name).length > 1) return 'disc';
  if (part.renewed && part.on.length === 1 && isSealed(relations, part)) return 'washer';
  return 'block';
}

/** A needle in its nozzle: the two are matched, and the force of a spring acts on the inner one from outside. */
function pairOf(relations: Relations, part: Part): ShapeName | null {
  const isLoaded = (name: string) => relations.family.parts.some(({ bearsOn }) => bearsOn.includes(name));
  const isPair = (outer: string, inner: Part) =>
    inner.in.includes(outer) &&
    relations.matches(inner.name).includes(outer) &&
    isLoaded(inner.name) &&
    relations.onIt(outer).every(({ name }) => name === inner.name);
  if (part.in.some((outer) => isPair(outer, part))) return 'needle';
  return relations.onIt(part.name).some((inner) => isPair(part.name, inner)) ? 'nozzle' : null;
}

/**
 * A part that is always renewed and is pressed between two: something that is turned or held lies on it, or it lies on what is
 * turned, for whatever the unit is put into.
 */
function isSealed(relations: Relations, part: Part): boolean {
  const over = relations.onIt(part.name);
  if (over.length === 0) return relations.joint(part.on[0]!) !== undefined;
  return over.some(
    ({ name, holds }) => relations.joint(name) !== undefined || holds.length > 0 || relations.holders(name).length > 0,
  );
}

function turnedShape(relations: Relations, part: Part, joint: Joint): ShapeName {
  if (part.through.length > 0) return 'screw';
  const to = relations.part(joint.to);
  const isCarrier = restsOn(to).length === 0;
  if (part.holds.length > 0) {
    if (reachesInto(relations, part, joint.to)) return relations.ports(part.name).length > 0 ? 'union' : 'plug';
    return isCarrier ? 'retaining-nut' : 'nut';
  }
  if (!isCarrier) return 'nut';
  return coversLock(relations, part) ? 'cap-nut' : 'plug';
}

/** Whether what a part holds lies in the part that it is screwed to: then its thread is outside, and it goes into the bore too. */
function reachesInto(relations: Relations, part: Part, to: string): boolean {
  const seen = new Set<string>();
  const reaches = (name: string): boolean => {
    if (seen.has(name) || name === to) return false;
    seen.add(name);
    const { on, in: within, through } = relations.part(name);
    return within.includes(to) || [...on, ...within, ...through].some(reaches);
  };
  return part.holds.some(reaches);
}

/** Whether it lies over a screw that is set, or over what locks that. */
function coversLock(relations: Relations, part: Part): boolean {
  const set = new Set(relations.family.adjusters.flatMap(({ part: own, lockedBy }) => [own, lockedBy]));
  const seen = new Set<string>();
  const covers = (name: string): boolean => {
    if (seen.has(name)) return false;
    seen.add(name);
    return restsOn(relations.part(name)).some((under) => set.has(under) || covers(under));
  };
  return covers(part.name);
}

/** Shapes whose thread is outside. */
export const isMale = (shape: ShapeName) =>
  shape === 'screw' || shape === 'plug' || shape === 'union' || shape === 'setting-screw';
/** Shapes whose thread is inside. */
export const isFemale = (shape: ShapeName) => shape === 'nut' || shape === 'cap-nut' || shape === 'retaining-nut';
/** Shapes that are drawn round the part that they are on. */
export const isWorn = (shape: ShapeName) => shape === 'o-ring' || shape === 'ring' || shape === 'circlip';
