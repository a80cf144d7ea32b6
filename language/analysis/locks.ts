import type { Adjuster } from '../model/family.ts';
import type { Replay } from './flow-analysis.ts';
import { adjuster as setting } from './locations.ts';
import { loose } from './loose-joints.ts';
import type { State } from './state.ts';

/** States of an adjuster that was turned and not locked since. */
export const turned = setting.set | setting.backed | setting.disturbed;

/** An adjuster whose lock may not be tight, the step since which, and the cause under which it is reported once. */
export interface OpenLock {
  readonly adjuster: Adjuster;
  readonly lock: string;
  readonly since: number;
  readonly cause: string;
}

/** Adjusters in place with a lock, which may be in one of the states and whose lock may not be tight. */
export function openLocks({ program, layout }: Replay, state: State, states: number): OpenLock[] {
  return program.procedure.family.adjusters.flatMap((adjuster) => {
    const { lockedBy: lock } = adjuster;
    const cell = layout.adjusters.get(adjuster.part)!;
    if (lock === null || program.absent.has(lock)) return [];
    if (!state.may(cell, states) || !state.mayBeIn(adjuster.part)) return [];
    const since = state.since[cell]!;
    if (!state.mayBeIn(lock))
      return [{ adjuster, lock, since, cause: `missing:${lock}:${state.since[state.part(lock).place]}` }];
    const joint = layout.joints.get(lock);
    // A lock that was torqued holds as well as one that was locked.
    if (joint !== undefined && !state.may(joint, loose)) return [];
    return [{ adjuster, lock, since, cause: `unlocked:${adjuster.part}:${since}` }];
  });
}

/** Whether a joint is the lock of an adjuster that was turned: a loose one is reported for the adjuster. */
export function isOpenLock(replay: Replay, state: State, part: string): boolean {
  return openLocks(replay, state, turned).some(({ lock }) => lock === part);
}
