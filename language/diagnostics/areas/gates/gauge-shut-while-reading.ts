import { limitsOfUse } from '../../../analysis/limits.ts';
import type { Procedure, Step } from '../../../model/procedure.ts';
import { own, readingOf } from '../../../model/steps.ts';
import { kindOfLimit } from '../../../quantities/index.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A pressure is read, held or set with the gauge shut off. */
export const gaugeShutWhileReading: Rule = {
  code: 'gauge-shut-while-reading',
  severity: 'error',
  since: '0.2.0',
  title: 'A pressure is read, held or set with the gauge shut.',
  procedure(procedure, report) {
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      for (const step of block.steps) {
        if (step.verb === 'prime' || own(step, 'gauge') !== 'shut' || !goesByGauge(step, procedure)) continue;
        const name = readingOf(step);
        report({
          at: step,
          message: say`${step.verb === 'set' ? say`The pressure is set for ${name!}` : say`The pressure of ${name!} is read or held`} with the gauge shut.`,
          why: say`the gauge shows the pressure from before, or nothing.`,
          help: say`Delete “with gauge shut” from this step.`,
        });
      }
    }
  },
};

function goesByGauge(step: Step, procedure: Procedure): boolean {
  if (step.verb === 'set' || step.verb === 'read') return true;
  const test = own(step, 'test');
  if (test != null && test.reads !== null) return test.reads === 'pressure';
  if (test?.hold != null) return true;
  const use = own(step, 'limit');
  const limits = [test?.from ?? null, test?.to ?? null, ...(use == null ? [] : limitsOfUse(procedure, use))];
  return limits.some((one) => {
    const limit = one !== null && 'spec' in one ? one.limit : one;
    return limit !== null && kindOfLimit(limit) === 'pressure';
  });
}
