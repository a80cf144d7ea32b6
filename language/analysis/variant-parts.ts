import type { Replay } from './flow-analysis.ts';

/** Whether a part belongs to the part numbers of a replay. */
export function variantParts({ program }: Replay): (part: string) => boolean {
  return (part) => !program.absent.has(part);
}
