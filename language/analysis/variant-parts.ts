import type { Replay } from './flow-analysis.ts';

/** Whether a part belongs to the numbers that a replay is of. */
export function variantParts({ program }: Replay): (part: string) => boolean {
  return (part) => !program.absent.has(part);
}
