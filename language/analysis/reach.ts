import type { Gate, Procedure, Step, StepOf } from '../model/procedure.ts';
import { failEntries, isGate } from '../model/steps.ts';
import { kindOfLimit } from '../quantities/index.ts';
import { oncePer } from '../quantities/memo.ts';
import type { Kind } from '../quantities/types.ts';
import { isHydraulic, isPneumatic } from './hydraulic.ts';
import { limitsOfUse } from './limits.ts';
import { allSteps } from './locations.ts';

const electrical: ReadonlySet<Kind> = new Set(['resistance', 'voltage', 'current']);

/**
 * What a gate proves through that does not say so: joints and adjusters by name; null is all of them. A test under
 * pressure proves all that holds pressure or carries the spring. An electrical one proves no joint. A figure that is
 * read on a unit at rest, as an end play or a balance, depends on the joints that its repairs open, and on the adjusters
 * that set it: what is closed over them later leaves it as it is.
 */
export const reachOf = oncePer((procedure: Procedure): ReadonlyMap<string, readonly string[] | null> => {
  const reach = new Map<string, readonly string[] | null>();
  for (const step of allSteps(procedure)) {
    if (!isGate(step) || (step.verb !== 'test' && step.verb !== 'set')) continue;
    const own = reachOfStep(procedure, step);
    const known = reach.get(step.gate.id);
    // Of those with one name, each opens what its own repairs open.
    if (known === null || own === null) reach.set(step.gate.id, null);
    else reach.set(step.gate.id, [...new Set([...(known ?? []), ...own])]);
  }
  return reach;
});

function reachOfStep(procedure: Procedure, step: StepOf<'test' | 'set'>): readonly string[] | null {
  if (isHydraulic(step, procedure) || isPneumatic(step)) return null;
  const kind = kindRead(procedure, step);
  if (kind !== null && electrical.has(kind)) return [];
  if (kind === null) return null;
  // Taken apart and put together by its marks, a rotor keeps its balance: what loses it is in the effects.
  if (kind === 'unbalance' && balancedParts(procedure).size > 0) return [];
  const opened = openedIn(procedure, step);
  const { adjusters } = procedure.family;
  const setting = adjusters.filter(({ part, sets }) => sets === step.gate.test || opened.has(part));
  return opened.size === 0 && setting.length === 0
    ? null
    : [...opened, ...setting.flatMap(({ part, lockedBy }) => (lockedBy === null ? part : [part, lockedBy]))];
}

/** Parts that are balanced with each other, said at either. */
export const balancedParts = oncePer(
  ({ family }: Procedure): ReadonlySet<string> =>
    new Set(
      family.parts.flatMap(({ name, balancedWith }) => (balancedWith.length === 0 ? [] : [name, ...balancedWith])),
    ),
);

/** What is read: said outright, or by what it is held to; null: nothing says. */
export function kindRead(procedure: Procedure, step: StepOf<'test' | 'set'>): Kind | null {
  if (step.verb === 'test' && step.test.reads !== null) return step.test.reads;
  const limit = step.limit === null ? undefined : limitsOfUse(procedure, step.limit)[0]?.limit;
  return limit === undefined ? null : kindOfLimit(limit);
}

/** Joints and adjusters that the repairs of a gate open. */
function openedIn({ family, repairs }: Procedure, gate: Step): ReadonlySet<string> {
  const turned = new Set([...family.joints, ...family.adjusters].map(({ part }) => part));
  const opened = new Set<string>();
  const known = new Set<string>();
  const look = (step: Step) => {
    for (const { repair: name } of failEntries(step)) {
      const repair = repairs.find((one) => one.name === name);
      if (repair === undefined || known.has(name)) continue;
      known.add(name);
      for (const one of repair.steps) {
        if (one.verb === 'slacken' || one.verb === 'remove' || one.verb === 'discard' || one.verb === 'back-off')
          for (const { name: part } of one.objects) if (turned.has(part)) opened.add(part);
        look(one);
      }
    }
  };
  look(gate);
  return opened;
}

/**
 * A test proves through every joint that holds pressure or carries the spring, and every adjuster, unless it says
 * through what, or reads what does not depend on them. A check or a measurement is of parts in the hand: it holds
 * unless it says through what it proves.
 */
export function provesThrough(procedure: Procedure, gate: Gate, what: string): boolean {
  if (gate.provesThrough !== null) return gate.provesThrough.includes(what);
  if (gate.kind === 'check' || gate.kind === 'measure') return false;
  return reachOf(procedure).get(gate.id)?.includes(what) ?? true;
}
