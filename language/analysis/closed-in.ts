import type { Replay } from './flow-analysis.ts';
import { place } from './locations.ts';
import { restsOn } from './relations.ts';
import type { State } from './state.ts';

/**
 * The part whose joint shuts a part in, where it may be shut in: both in place, and the joint made to the unit's body.
 * A part that the joint's own part holds is visible at its end, as a nozzle is under its nut; and a part that a nut
 * clamps onto a shaft is not shut in.
 */
export function shutInBy({ relations }: Replay, state: State, part: string): string | null {
  if (!state.may(state.part(part).place, place.in)) return null;
  const over = relations
    .closedBy(part)
    .find(
      (joint) =>
        !relations.part(joint.part).holds.includes(part) &&
        isBody(joint.to) &&
        state.may(state.part(joint.part).place, place.in),
    );
  return over?.part ?? null;

  function isBody(name: string): boolean {
    return relations.family.parts.some((other) => other.name === name && restsOn(other).length === 0);
  }
}
