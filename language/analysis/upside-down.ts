import type { Block, Step } from '../model/procedure.ts';
import { namedIn } from '../model/steps.ts';
import { type Relations, restsOn } from './relations.ts';

/**
 * Whether a fit belongs to a stack that is built from its other end: a run of fits in which every part comes before
 * the part that it rests on. One pair alone is a slip of order, not a way of building.
 */
export function builtUpsideDown(block: Block, step: Step, relations: Relations): boolean {
  const at = block.steps.indexOf(step);
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
    // What a stack bears on comes after it; where the stack is turned over, before.
    ...relations
      .part(part)
      .bearsOn.flatMap((loaded) =>
        order.has(loaded) && order.get(loaded) !== place ? [order.get(loaded)! < place] : [],
      ),
  ]);
  return pairs.length > 1 && pairs.every((inverted) => inverted);
}
