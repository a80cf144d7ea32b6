import type { Visitor } from '../language/analysis/flow-analysis.ts';
import type { PathChecks } from '../language/diagnostics/rule.ts';

/** The checks of one rule as a visitor, which is shown everything that they listen to. */
export function visitorOf({ step, ...rest }: PathChecks): Visitor {
  return {
    ...rest,
    step(visit) {
      if (step?.verbs.includes(visit.step.verb)) step.check(visit);
    },
  };
}
