import type { Way } from '../analysis/flow-analysis.ts';
import { writtenAt } from '../analysis/written-at.ts';
import type { Step } from '../model/procedure.ts';

/**
 * What a condition that is missing goes back to: on the first way the step since which it is missing, on the way of a
 * repair the end of that repair, which several may share by a sequence.
 */
export function slipOf(way: Way, since: number): string {
  const last = way.repair?.steps.at(-1);
  return last === undefined ? `${since}` : writtenAt(last);
}

/** Causes of one rule: the same for one slip wherever it is met, and for one step on whatever way it is met there. */
export function causesOf(what: string): (slip: string, step: Step) => string {
  const known = new Map<string, string>();
  return (slip, step) => {
    const place = `at ${writtenAt(step)}`;
    const cause = known.get(slip) ?? known.get(place) ?? `${what}:${slip}`;
    known.set(slip, cause);
    known.set(place, cause);
    return cause;
  };
}
