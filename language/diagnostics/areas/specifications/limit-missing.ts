import { allSteps } from '../../../analysis/locations.ts';
import { within } from '../../../analysis/within.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Procedure, Step } from '../../../model/procedure.ts';
import { failEntries, isGate } from '../../../model/steps.ts';
import type { Rule } from '../../rule.ts';

/** Something is read, set, compared or measured, and no limit says what is good. A `read` needs none. */
export const limitMissing: Rule = {
  code: 'limit-missing',
  severity: 'error',
  since: '0.2.0',
  ofAbsence: true,
  title: 'Something is read or set as a gate, and no limit says what is good.',
  procedure(procedure, report) {
    for (const step of allSteps(procedure)) {
      const message = missing(step, procedure);
      if (message !== null) report({ at: step, cause: `limit:${writtenAt(step)}`, message });
    }
    // A measurement with no limit passes nothing, so that its `on fail` is never asked for.
    const asked = new Set(allSteps(procedure).flatMap((step) => failEntries(step).map(({ repair }) => repair)));
    for (const repair of procedure.repairs) {
      if (!repair.inline || asked.has(repair.name)) continue;
      const step = allSteps(procedure).find((other) => !isGate(other) && within(repair.source, other.source));
      report({
        at: step ?? repair.source,
        source: repair.source,
        message:
          'This measurement says what is done on fail, and not when it fails: it is written down and the part goes in whatever it is. Write “within” and a spec or a limit.',
      });
    }
  },
};

function missing(step: Step, procedure: Procedure): string | null {
  switch (step.verb) {
    case 'test': {
      const { test, gate } = step;
      if (step.limit !== null || step.accept !== null || step.reject !== null || test.inTime !== null) return null;
      if (test.reads !== null)
        return `Test ${gate.test} reads ${test.reads}, and no limit says what is good: one hand passes what the next one opens again. Write “within” and a spec or a limit.`;
      return test.from === null || test.forTime !== null
        ? null
        : `Test ${gate.test} says from where the pressure falls, and not in what time: too fast and too slow both pass. Write “in” and a time, such as in 6..20 s.`;
    }
    case 'set':
      // A setting is held to the spec of its name, where there is one.
      return step.limit !== null || procedure.specs.some((spec) => spec.name === step.reading)
        ? null
        : `Nothing says what ${step.reading} is set to: each hand stops turning where he likes. Write “within” and a spec or a limit.`;
    case 'across':
      return step.spread !== null || step.text !== null
        ? null
        : 'Nothing says how far the units of the set may be apart, so every set passes. Write “spread at most” and a limit.';
    default:
      return null;
  }
}
