import type { Adjuster, Joint, Part } from '../model/family.ts';
import type { Step } from '../model/procedure.ts';
import type { FlowAnalysis } from './flow-analysis.ts';
import { isHydraulic } from './hydraulic.ts';
import { joint, kept, place, adjuster as setting } from './locations.ts';
import { bareFaces, type Laid } from './openings.ts';
import type { AbstractState } from './state.ts';

/** States of a joint that is on and not tight. One that was put on and never turned still counts as apart. */
export const loose = joint.run | joint.slack | joint.apart;

/** A joint that may be on and not tight, since which step, and the cause by which it is reported once. */
export interface LooseJoint {
  readonly joint: Joint;
  readonly since: number;
  readonly cause: string;
}

/** Joints that may be on in one of the states. An adjuster turns in its own thread: what holds it is its lock. */
export function loosened({ graph, layout }: Laid, state: AbstractState, states: number): LooseJoint[] {
  const { joints, adjusters } = graph.procedure.family;
  return joints.flatMap((one) => {
    const cell = layout.joints.get(one.part)!;
    if (adjusters.some((adjuster) => adjuster.part === one.part)) return [];
    if (!state.may(cell, states) || !state.mayBeIn(one.part)) return [];
    const since = state.since(cell);
    return [{ joint: one, since, cause: `loose:${one.part}:${since}` }];
  });
}

/** Whether a joint is the lock of an adjuster. It is loose while the adjuster is being set. */
export function isLock({ graph }: FlowAnalysis, part: string): boolean {
  return graph.procedure.family.adjusters.some((adjuster) => adjuster.lockedBy === part);
}

/** Whether a step reads something of the unit under pressure. At a prime a joint may be cracked to let the air out. */
export function readsUnderPressure(step: Step, { graph }: FlowAnalysis): boolean {
  return step.verb !== 'prime' && isHydraulic(step, graph.procedure);
}

/** States of an adjuster that was turned, and not locked since. */
export const turned = setting.set | setting.backed | setting.disturbed;

/** An adjuster whose lock may not be tight, since which step, and the cause by which that is reported once. */
export interface OpenLock {
  readonly adjuster: Adjuster;
  readonly lock: string;
  readonly since: number;
  readonly cause: string;
}

/** Adjusters in place with a lock, which may be in one of the states and whose lock may not be tight. */
export function openLocks({ graph, layout }: FlowAnalysis, state: AbstractState, states: number): OpenLock[] {
  return graph.procedure.family.adjusters.flatMap((adjuster) => {
    const { lockedBy: lock } = adjuster;
    const cell = layout.adjusters.get(adjuster.part)!;
    if (lock === null || graph.absent.has(lock)) return [];
    if (!state.may(cell, states) || !state.mayBeIn(adjuster.part)) return [];
    const since = state.since(cell);
    if (!state.mayBeIn(lock))
      return [{ adjuster, lock, since, cause: `missing:${lock}:${state.since(state.part(lock).place)}` }];
    const joint = layout.joints.get(lock);
    // A lock that was torqued holds as well as one that was locked.
    if (joint !== undefined && !state.may(joint, loose)) return [];
    return [{ adjuster, lock, since, cause: `unlocked:${adjuster.part}:${since}` }];
  });
}

/** Whether a joint is the lock of an adjuster that was turned: that it is loose is reported at the adjuster. */
export function isOpenLock(flow: FlowAnalysis, state: AbstractState, part: string): boolean {
  return openLocks(flow, state, turned).some(({ lock }) => lock === part);
}

export interface LooseParts {
  readonly parts: readonly Part[];
  readonly since: number;
  readonly cause: string;
}

/**
 * Parts that may be off and put down nowhere; null where there is none. The guard of a face that is bare is reported
 * there: put on, it is not loose.
 */
export function looseParts(flow: FlowAnalysis, state: AbstractState): LooseParts | null {
  const guards = bareFaces(flow, state).map(({ face }) => face.guardedBy);
  const parts = flow.graph.procedure.family.parts.filter(({ name }) => {
    const cells = state.part(name);
    return !guards.includes(name) && state.may(cells.kept, kept.loose) && state.may(cells.place, place.off | place.sub);
  });
  const [first] = parts;
  if (first === undefined) return null;
  const since = state.since(state.part(first.name).place);
  return { parts, since, cause: `loose:${since}` };
}
