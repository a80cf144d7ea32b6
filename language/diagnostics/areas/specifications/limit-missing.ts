import { allSteps } from '../../../analysis/locations.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Statement } from '../../../model/diagnostic.ts';
import type { Procedure, Step } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import { failEntries, limitUses } from '../../../model/steps.ts';
import { say, term } from '../../../say/say.ts';
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
      const statement = missing(step, procedure);
      if (statement !== null) report({ at: step, rootCause: `limit:${writtenAt(step)}`, ...statement });
    }
  },
};

const withinLimit = say`Write “within” and a spec or a limit.`;

function missing(step: Step, procedure: Procedure): (Statement & { readonly source?: Source }) | null {
  switch (step.verb) {
    case 'test': {
      const { test, gate } = step;
      const bare = step.limit === null ? step.plan?.points.find(({ limit }) => limit === null) : undefined;
      if (bare !== undefined && test.reads !== null && limitUses(step).length > 0)
        return {
          message: say`Point ${bare.name} of test ${gate.test} has no limit, and the other points have one.`,
          why: say`one person passes what the next one opens again.`,
          help: say`Write “within” and a spec or a limit behind it.`,
        };
      if (limitUses(step).length > 0 || step.accept !== null || step.reject !== null || test.inTime !== null)
        return null;
      if (test.reads !== null)
        return {
          message: say`Test ${gate.test} reads ${term(test.reads)}, but no limit says what is good.`,
          why: say`one person passes what the next one opens again.`,
          help: withinLimit,
        };
      return test.from === null || test.forTime !== null
        ? null
        : {
            message: say`Test ${gate.test} says where the pressure fall starts, but not how long it may take.`,
            why: say`too fast and too slow both pass.`,
            help: say`Write “in” and a time, such as in 6..20 s.`,
          };
    }
    case 'measure': {
      const [entry] = failEntries(step);
      return step.limit !== null || entry === undefined
        ? null
        : {
            source: entry.source,
            message: say`This measurement says what to do on a fail, but not when it fails.`,
            why: say`the figure is written down, and the part goes in whatever it is.`,
            help: withinLimit,
          };
    }
    case 'set':
      // A setting is held to the spec of its name, where there is one.
      return step.limit !== null || procedure.specs.some((spec) => spec.name === step.reading)
        ? null
        : {
            message: say`Nothing says what ${step.reading} is set to.`,
            why: say`each person stops turning somewhere else.`,
            help: withinLimit,
          };
    case 'across':
      return step.spread !== null
        ? null
        : {
            message: say`Nothing says how far apart the units of the set may be.`,
            why: say`every set passes.`,
            help: say`Write “spread at most” and a limit.`,
          };
    default:
      return null;
  }
}
