import type { PathContext } from '../analysis/flow-analysis.ts';
import { writtenAt } from '../analysis/written-at.ts';
import type { Step } from '../model/procedure.ts';

/**
 * The root cause of a missing condition: on the first path, the step since which it is missing; on the path of a repair,
 * the end of that repair, which several repairs may share through a sequence.
 */
export function rootCauseKey(path: PathContext, since: number): string {
  const last = path.repair?.steps.at(-1);
  return last === undefined ? `${since}` : writtenAt(last);
}

/** Causes of one rule: the same for one mistake wherever it shows, and for one step on whatever path it shows there. */
export function rootCauses(what: string): (slip: string, step: Step) => string {
  const known = new Map<string, string>();
  return (slip, step) => {
    const place = `at ${writtenAt(step)}`;
    const cause = known.get(slip) ?? known.get(place) ?? `${what}:${slip}`;
    known.set(slip, cause);
    known.set(place, cause);
    return cause;
  };
}
