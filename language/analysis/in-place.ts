import { place } from './locations.ts';
import type { Relations } from './relations.ts';
import type { State } from './state.ts';

/**
 * The cause of a part being in place where it should be off: the outermost part that shuts it in and is on too, and the
 * step since which it is on. One forgotten `remove` is one finding, whatever is then done to the parts under it.
 */
export function inPlaceCause(relations: Relations, state: State, part: string): string {
  const over =
    relations.closedBy(part).find((joint) => state.may(state.part(joint.part).place, place.in))?.part ?? part;
  return `in-place:${over}:${state.since[state.part(over).place]}`;
}
