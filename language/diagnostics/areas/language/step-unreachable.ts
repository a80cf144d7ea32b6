import { allSteps } from '../../../analysis/locations.ts';
import { within } from '../../../analysis/within.ts';
import type { FailEntry, Procedure, Repair } from '../../../model/procedure.ts';
import { failEntries } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A repair that nothing sends a unit to, or an entry of an `on fail` that follows one with no limit. */
export const stepUnreachable: Rule = {
  code: 'step-unreachable',
  severity: 'warning',
  since: '0.2.0',
  title: 'A repair is never done: nothing sends a unit to it, or a repair before it has no limit.',
  procedure(procedure, report) {
    const reached = reachedRepairs(procedure);
    for (const repair of procedure.repairs) {
      // One taken over by `like` is used by the other procedure; one written inside an `on fail` has its sender.
      if (reached.has(repair.name) || repair.inline || !within(repair.source, procedure.extent)) continue;
      report({
        at: repair.source,
        allow: repair.allow,
        message: say`Nothing sends a unit to ${repair.name}, so it is never done.`,
        why: say`the test that it was written for cannot use it.`,
        help: say`Name it after “on fail”, or delete the repair.`,
      });
    }
    for (const step of allSteps(procedure)) {
      const entries = failEntries(step);
      const endless = entries.findIndex((entry) => isEndless(entry, procedure));
      const [next] = endless < 0 ? [] : entries.slice(endless + 1);
      if (next === undefined) continue;
      report({
        at: step,
        source: next.source,
        message: say`A unit never gets to ${next.repair}.`,
        why: say`${entries[endless]!.repair} comes first and may be tried any number of times.`,
        help: say`Limit the tries, such as ${entries[endless]!.repair} (3 times).`,
      });
    }
  },
};

/** Repairs that a gate of a stage may send to, or a gate of a repair that is reached. */
function reachedRepairs(procedure: Procedure): Set<string> {
  const reached = new Set<string>();
  const follow = (steps: Repair['steps']) => {
    for (const { repair } of steps.flatMap((step) => failEntries(step))) {
      if (reached.has(repair)) continue;
      reached.add(repair);
      follow(procedure.repairs.find((other) => other.name === repair)?.steps ?? []);
    }
  };
  for (const stage of procedure.stages) follow(stage.steps);
  return reached;
}

/** Turning an adjuster and lapping may go on as long as it takes; repair-unbounded reports the others. */
function isEndless(entry: FailEntry, procedure: Procedure): boolean {
  const repair = procedure.repairs.find((other) => other.name === entry.repair);
  if (repair === undefined || repair.tries !== null || entry.as === 'verdict') return false;
  return repair.steps.some((step) => step.verb === 'set') || (repair.inline && repair.steps[0]?.verb === 'lap');
}
