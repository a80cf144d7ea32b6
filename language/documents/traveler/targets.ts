import type { Block, FailStop } from '../model.ts';

/** Numbers of repairs lead to them where they are on the sheet. */
export function withTargets(blocks: readonly Block[]): Block[] {
  const ids = new Set(
    blocks.flatMap((block) => (block.kind === 'repairs' ? block.repairs.map(({ id }) => id) : standing(block))),
  );
  const stop = (one: FailStop): FailStop => (ids.has(one.target) ? one : { ...one, target: '' });
  return blocks.map((block) => {
    if (block.kind !== 'step' || block.fail === null) return block;
    const ways = block.fail.ways.map((way) => ({ ...way, stops: way.stops.map(stop) }));
    return { ...block, fail: { ...block.fail, ways } };
  });
}

/** Ids of the repairs that are in a check. */
function standing(block: Block): string[] {
  const ways = block.kind === 'step' ? (block.fail?.ways ?? []) : [];
  return ways.flatMap(({ stops }) => stops.flatMap(({ target, steps }) => (steps.length > 0 ? [target] : [])));
}
