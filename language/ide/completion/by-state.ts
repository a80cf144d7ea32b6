/** Which names fit at a place, by what is known of the unit there. */
import {
  port as opening,
  place,
  gate as proof,
  adjuster as setting,
  joint as tightness,
} from '../../analysis/locations.ts';
import { blockersOf, missingFor, orderOff, orderOn } from '../../analysis/order.ts';
import type { AbstractState } from '../../analysis/state.ts';
import { usualTorques } from '../../analysis/usual-torques.ts';
import type { Procedure } from '../../model/procedure.ts';
import { isTest } from '../../model/steps.ts';
import type { Kind } from '../../quantities/types.ts';
import { type Filling, say, stateTerm } from '../../say/say.ts';
import type { StateAt } from '../state-at.ts';
import type { Slot } from './wanted.ts';

/** How a name fits: those that fit best come first, and what certainly has no meaning is left out where others fit. */
export type Fit = { readonly rank: number; readonly note: Filling | null } | 'left out';

/** How a name fits at a place; null: nothing is known about it. */
export type FitOf = (name: string) => Fit | null;

const first = (order: number, note: Filling | null = null): Fit => ({ rank: order, note });
/** Behind all that fit now. */
const later = (note: Filling, order = 0): Fit => ({ rank: 100 + order, note });
const leftOut = 'left out';

/** How names fit that follow in a step; null: as they come. */
export function fitAt(slot: Slot, at: StateAt): FitOf | null {
  return slot.clause === 'object' ? fitOfObject(slot, at) : fitOfClause(slot, at.procedure);
}

function fitOfObject({ verb, named }: Slot, at: StateAt): FitOf | null {
  const { state, states, procedure } = at;
  const { layout, relations } = states;
  const parts = procedure.family.parts.map(({ name }) => name);
  const left = parts.filter((name) => !named.includes(name));
  const titles = (names: readonly string[]) => names.join(', ');
  /** Those with a location in one of the states, then the others. */
  const inState = (locations: ReadonlyMap<string, number>, now: number): FitOf => {
    const all = [...locations.keys()];
    return (name) => {
      const location = locations.get(name);
      if (location === undefined) return null;
      if (named.includes(name)) return leftOut;
      // A unit may have come in, or back from somebody else, otherwise than it is taken to.
      return state.may(location, now) ? first(all.indexOf(name)) : later(wordsOf(at, location), all.indexOf(name));
    };
  };
  /** All ports of an assembly are capped by its name. */
  const orAssembly =
    (ports: FitOf): FitOf =>
    (name) =>
      procedure.family.assemblies.some((assembly) => assembly.name === name) ? null : ports(name);
  switch (verb) {
    case 'remove':
    case 'discard': {
      const there = verb === 'discard' ? ~place.gone : place.in | place.trial | place.guard | place.sub;
      const on = left.filter((name) => state.may(layout.parts.get(name)!.place, there));
      const order = orderOff(relations, without(state, named), on);
      return (name) => {
        if (!parts.includes(name)) return null;
        if (!on.includes(name)) return leftOut;
        const blockers = blockersOf(relations, state, name, named);
        if (blockers.length === 0) return first(order.indexOf(name));
        return later(say`under ${titles(blockers)}`, order.indexOf(name));
      };
    }
    case 'fit': {
      const off = left.filter((name) => !state.must(layout.parts.get(name)!.place, place.in));
      const order = orderOn(relations, within(state, named), off);
      return (name) => {
        if (!parts.includes(name)) return null;
        if (!off.includes(name)) return leftOut;
        const missing = missingFor(relations, state, name, named);
        if (isForGood(at, name)) return later(say`discarded: renew it first`, order.length);
        return missing.length === 0
          ? first(order.indexOf(name))
          : later(say`goes on ${titles(missing)}`, order.indexOf(name));
      };
    }
    case 'renew':
      return null;
    case 'keep':
    case 'send': {
      const off = left.filter((name) => state.may(layout.parts.get(name)!.place, place.off | place.sub));
      return (name) =>
        !parts.includes(name) ? null : off.includes(name) ? first(parts.indexOf(name)) : later(stateTerm('in place'));
    }
    case 'slacken':
      return onlyJoints(parts, inState(layout.joints, tightness.found | tightness.torqued | tightness.locked));
    case 'run-down':
      return onlyJoints(parts, inState(layout.joints, tightness.apart | tightness.slack));
    case 'torque':
      return onlyJoints(parts, (name) => {
        const location = layout.joints.get(name);
        if (location === undefined || named.includes(name)) return location === undefined ? null : leftOut;
        if (state.may(location, tightness.run)) return first(0, say`run down`);
        return state.must(location, tightness.apart) ? leftOut : later(wordsOf(at, location));
      });
    case 'lock':
      return null;
    case 'back-off':
      return inState(layout.adjusters, ~setting.backed);
    case 'cap':
      return orAssembly(inState(layout.ports, opening.open));
    case 'uncap':
      return orAssembly(inState(layout.ports, opening.capped));
    case 'connect':
      return inState(layout.ports, opening.open);
    case 'disconnect':
      return inState(layout.ports, opening.connected);
    case 'choose': {
      const chosen = procedure.family.parts.filter(({ chosenFrom }) => chosenFrom !== null).map(({ name }) => name);
      return chosen.length === 0 ? null : (name) => (chosen.includes(name) ? first(0) : leftOut);
    }
    case 'test':
      return (name) => testFit(name, at);
    default:
      return null;
  }
}

/** Words for what a location may be. */
function wordsOf({ state, states }: StateAt, location: number): Filling {
  return states.layout.saidOf(location, state.get(location));
}

/** Only joints are turned: of other parts nothing is offered where the family declares any. */
function onlyJoints(parts: readonly string[], ofJoint: FitOf): FitOf {
  return (name) => ofJoint(name) ?? (parts.includes(name) ? leftOut : null);
}

/** Discarded, and nothing brings a new one. */
function isForGood({ state, states, procedure }: StateAt, name: string): boolean {
  const part = procedure.family.parts.find((one) => one.name === name);
  return part?.renewed === false && state.must(states.layout.parts.get(name)!.place, place.gone);
}

/** Tests still owed come first: what the family is proven by, and is not passed on this build. */
function testFit(name: string, { procedure, state, states }: StateAt): Fit | null {
  const { provenBy } = procedure.family;
  const order = provenBy.findIndex((one) => one.name === name);
  const isWritten = [...procedure.stages].some(({ steps }) =>
    steps.some((step) => isTest(step) && step.verb === 'test' && step.gate.test === name),
  );
  if (order < 0) return isWritten ? later(say`already tested`) : null;
  const location = states.layout.gates.get(name);
  const isOwed = location === undefined || state.may(location, ~proof.passed);
  if (!isWritten) return first(order, say`still owed: proves the family`);
  return isOwed ? first(20 + order, say`not passed yet`) : later(stateTerm('passed'));
}

/** The state as if parts were off already, which the step names first. */
function without(state: AbstractState, parts: readonly string[]): AbstractState {
  return placed(state, parts, place.off);
}

function within(state: AbstractState, parts: readonly string[]): AbstractState {
  return placed(state, parts, place.in);
}

function placed(state: AbstractState, parts: readonly string[], where: number): AbstractState {
  const copy = state.copy();
  for (const name of parts) {
    const part = copy.layout.parts.get(name);
    if (part !== undefined) copy.set(part.place, where, -1);
  }
  return copy;
}

/** Specs and readings of the kind that a clause takes. */
function fitOfClause({ verb, clause, named }: Slot, procedure: Procedure): FitOf | null {
  const kindOf = (name: string): Kind | null => procedure.specs.find((spec) => spec.name === name)?.kind ?? null;
  const isSpec = (name: string) => procedure.specs.some((spec) => spec.name === name);
  const ofKind =
    (...kinds: readonly Kind[]): FitOf =>
    (name) =>
      isSpec(name) ? (kinds.includes(kindOf(name)!) ? first(0) : leftOut) : null;
  switch (clause) {
    case 'to spec':
    case 'to limit':
      if (verb === 'torque' || verb === 'lock') {
        const usual = usualTorques(procedure, named);
        return (name) => (usual.includes(name) ? first(0) : ofKind('torque')(name) === leftOut ? leftOut : first(1));
      }
      return null;
    case 'by spec':
      return ofKind('setting rate', 'screw rate');
    case 'to bring': {
      const readable = procedure.stages.flatMap(({ steps }) =>
        steps.flatMap((step) => (step.verb === 'test' && step.test.reads !== null ? [step.gate.test] : [])),
      );
      return (name) =>
        readable.includes(name) ? first(0) : ['pressure', 'force'].includes(kindOf(name) ?? '') ? first(1) : leftOut;
    }
    default:
      return null;
  }
}

/** The spec that a joint is torqued to, where one is usual. */
export function torqueOf(procedure: Procedure, joint: string): string | null {
  return usualTorques(procedure, [joint])[0] ?? null;
}
