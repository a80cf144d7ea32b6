import type { Joint } from '../model/family.ts';
import type { Step } from '../model/procedure.ts';
import type { Replay } from './flow-analysis.ts';
import { isHydraulic } from './hydraulic.ts';
import { joint } from './locations.ts';
import type { State } from './state.ts';

/** States of a joint that is on but not tight. One that was put on and never turned still counts as apart. */
export const loose = joint.run | joint.slack | joint.apart;

/** A joint that may be on but not tight, the step since which, and the cause under which it is reported once. */
export interface LooseJoint {
  readonly joint: Joint;
  readonly since: number;
  readonly cause: string;
}

/** Joints that may be on in one of the states. An adjuster turns in its own thread: its lock holds it. */
export function loosened({ program, layout }: Replay, state: State, states: number): LooseJoint[] {
  const { joints, adjusters } = program.procedure.family;
  return joints.flatMap((one) => {
    const cell = layout.joints.get(one.part)!;
    if (adjusters.some((adjuster) => adjuster.part === one.part)) return [];
    if (!state.may(cell, states) || !state.mayBeIn(one.part)) return [];
    const since = state.since[cell]!;
    return [{ joint: one, since, cause: `loose:${one.part}:${since}` }];
  });
}

/** Whether a joint is the lock of an adjuster. It is loose while the adjuster is being set. */
export function isLock({ program }: Replay, part: string): boolean {
  return program.procedure.family.adjusters.some((adjuster) => adjuster.lockedBy === part);
}

/** Whether a step reads the unit under pressure. While priming, a joint may be cracked open to let the air out. */
export function readsUnderPressure(step: Step, { program }: Replay): boolean {
  return step.verb !== 'prime' && isHydraulic(step, program.procedure);
}
