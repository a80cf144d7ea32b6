import type { Block, Step } from '../model/procedure.ts';
import { namedIn } from '../model/steps.ts';
import { oncePer } from '../quantities/memo.ts';
import type { FlowAnalysis } from './flow-analysis.ts';
import { place } from './locations.ts';
import { type Relations, restsOn } from './relations.ts';
import type { AbstractState } from './state.ts';

/**
 * The cause of a part's being in place where it should be off: the outermost part that shuts it in and is on too, and
 * since which step. One forgotten `remove` is one finding, whatever is then tried on what lies under it.
 */
export function inPlaceCause(relations: Relations, state: AbstractState, part: string): string {
  const over =
    relations.closedBy(part).find((joint) => state.may(state.part(joint.part).place, place.in))?.part ?? part;
  return `in-place:${over}:${state.since(state.part(over).place)}`;
}

/**
 * The part whose joint shuts a part in, where it may be shut in: both in place, and the joint made to the unit's body.
 * What the joint's own part holds shows at its end, as a nozzle does under its nut; and what a nut clamps onto a
 * shaft is not shut in.
 */
export function shutInBy({ relations }: FlowAnalysis, state: AbstractState, part: string): string | null {
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

/**
 * Whether a fit belongs to a stack that is built from its other end: a run of fits in which every part comes before
 * the part that it rests on. One pair alone is a slip of order, not a way of building.
 */
export function builtUpsideDown(block: Block, step: Step, relations: Relations): boolean {
  const { places, known } = stacksIn(block);
  const upsideDown = known.get(step) ?? isUpsideDown(block, places.get(step) ?? -1, relations);
  known.set(step, upsideDown);
  return upsideDown;
}

/** Where the steps of a block are in it, and what is known of those that fit. */
const stacksIn = oncePer((block: Block) => ({
  places: new Map(block.steps.map((step, index) => [step, index])),
  known: new Map<Step, boolean>(),
}));

function isUpsideDown(block: Block, at: number, relations: Relations): boolean {
  if (at < 0) return false;
  let first = at;
  while (block.steps[first - 1]?.verb === 'fit') first--;
  let last = at;
  while (block.steps[last + 1]?.verb === 'fit') last++;
  const order = new Map<string, number>();
  block.steps.slice(first, last + 1).forEach((fit, index) => {
    for (const object of namedIn(fit)) order.set(object.name, index);
  });
  const pairs = [...order].flatMap(([part, place]) => [
    ...restsOn(relations.part(part)).flatMap((under) =>
      order.has(under) && order.get(under) !== place ? [place < order.get(under)!] : [],
    ),
    // What a stack rests on comes after it; where the stack is turned over, before.
    ...relations
      .part(part)
      .bearsOn.flatMap((loaded) =>
        order.has(loaded) && order.get(loaded) !== place ? [order.get(loaded)! < place] : [],
      ),
  ]);
  return pairs.length > 1 && pairs.every((inverted) => inverted);
}

/** Whether a part belongs to the numbers that a flow analysis is of. */
export function variantParts({ graph }: FlowAnalysis): (part: string) => boolean {
  return (part) => !graph.absent.has(part);
}
