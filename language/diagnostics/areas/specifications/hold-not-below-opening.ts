import { allSteps } from '../../../analysis/locations.ts';
import { listed } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Procedure, Step, StepOf } from '../../../model/procedure.ts';
import { own } from '../../../model/steps.ts';
import { compare, formatLimit, formatQuantity, window } from '../../../quantities/index.ts';
import type { Limit, Quantity } from '../../../quantities/types.ts';
import { type Said, say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A seat is held at a pressure at which the needle opens. */
export const holdNotBelowOpening: Rule = {
  code: 'hold-not-below-opening',
  severity: 'error',
  since: '0.2.0',
  title: 'A seat is tested at a pressure that is not below the opening pressure.',
  procedure(procedure, report) {
    for (const step of allSteps(procedure)) {
      if (step.verb !== 'test' || step.test.hold === null) continue;
      const { hold } = step.test;
      const tell = (why: Said) =>
        report({
          at: step,
          rootCause: `hold-below:${writtenAt(step)}`,
          message: say`Test ${step.gate.test} ${why}.`,
          why: say`the needle lifts, and a good seat is taken for a leaking one.`,
          help: say`Write “hold … below” and the test that reads the opening.`,
        });
      if (hold.relation === 'above') {
        if (hold.of !== null) tell(say`holds ${formatLimit(hold.amount)} above ${hold.of}`);
        continue;
      }
      // A housing or a union may be tested at any pressure, with the nozzle blanked off.
      if (hold.relation === 'below' || !/seat|drip|dribble/u.test(step.gate.test)) continue;
      const held = highest(hold.amount);
      const over = openings(procedure).filter(({ low }) => held !== null && (compare(held, low) ?? -1) >= 0);
      const [first] = over;
      if (first === undefined) continue;
      const numbers = [...new Set(over.flatMap(({ number }) => number ?? []))];
      tell(
        say`holds ${formatLimit(hold.amount)}, and ${first.test} is from ${formatQuantity(first.low)}${numbers.length === 0 ? '' : say` (${listed(numbers)})`}`,
      );
    }
  },
};

/** The lowest pressure at which a unit of each part number may open. */
function openings(procedure: Procedure): { test: string; number: string | null; low: Quantity }[] {
  const steps = allSteps(procedure);
  const set = new Set(steps.flatMap((step) => (step.verb === 'set' ? step.reading : own(step, 'choose')?.test) ?? []));
  const opens = (step: Step): step is StepOf<'test'> =>
    step.verb === 'test' &&
    step.test.reads === 'pressure' &&
    (set.has(step.gate.test) || step.gate.test.includes('opening'));
  return steps.filter(opens).flatMap((step) => {
    const within = step.limit;
    const spec = within?.form === 'spec' ? procedure.specs.find((other) => other.name === within.spec) : undefined;
    const numbers = procedure.numbers.length === 0 ? [null] : procedure.numbers;
    return numbers.flatMap((number) => {
      const own = number?.values.find((value) => value.spec === spec?.name);
      const limit = within?.form === 'limit' ? within.limit : (own?.rebuilt ?? spec?.rebuilt ?? null);
      if (limit === null || own?.notRequired === true) return [];
      const low = window(limit).low ?? window(limit).nominal;
      return low === null ? [] : { test: step.gate.test, number: number?.name ?? null, low };
    });
  });
}

function highest(limit: Limit): Quantity | null {
  const { high, nominal, low } = window(limit);
  return high ?? nominal ?? low;
}
