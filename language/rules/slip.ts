import type { Way } from '../replay/replay.ts';
import { writtenAt } from './written-at.ts';

/**
 * What a condition that is missing at a point goes back to: the step since which it is missing; where that comes after
 * the point, so that a repair brought the unit back to it, the end of that repair, which several may share by a
 * sequence.
 */
export function slipOf(way: Way, since: number, at = -1): string {
  const last = way.repair?.steps.at(-1);
  return since < at || last === undefined ? `${since}` : writtenAt(last);
}
