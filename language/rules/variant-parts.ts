import type { Replay } from '../replay/replay.ts';
import { allSteps } from '../replay/cells.ts';

/**
 * Whether a part belongs to the numbers that a replay is of: one that only steps for other numbers fit or renew
 * is not on this number.
 */
export function variantParts(replay: Replay): (part: string) => boolean {
  const { numbers, procedure } = replay.program;
  if (numbers === null) return () => true;
  const builds = allSteps(procedure).filter((step) => ['fit', 'run-down', 'renew'].includes(step.verb));
  const names = (steps: typeof builds) => new Set(steps.flatMap((step) => [...step.objects, ...step.withObjects].map((object) => object.name)));
  const all = names(builds);
  const own = names(builds.filter((step) => step.only === null || step.only.some((number) => numbers.includes(number))));
  return (part) => !all.has(part) || own.has(part);
}
