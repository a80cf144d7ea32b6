import { limitsOfUse } from '../../../analysis/limits.ts';
import type { Procedure, Step } from '../../../model/procedure.ts';
import { kindOfLimit } from '../../../quantities/index.ts';
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
        if (step.test?.gauge !== 'shut' || !goesByGauge(step, procedure)) continue;
        const name = step.verb === 'test' ? step.gate!.name : step.reading;
        report({
          at: step,
          message: `${step.verb === 'set' ? `The pressure is set for ${name}` : `The pressure of ${name} is read or held`} with the gauge shut.`,
          why: 'the gauge shows the pressure from before, or nothing.',
          help: 'Delete “with gauge shut” from this step.',
        });
      }
    }
  },
};

function goesByGauge({ test, verb }: Step, procedure: Procedure): boolean {
  if (test === null) return false;
  if (test.reads !== null) return test.reads === 'pressure';
  if (verb === 'set' || verb === 'read' || test.hold !== null) return true;
  const limits = [test.from, test.to, ...(test.within === null ? [] : limitsOfUse(procedure, test.within))];
  return limits.some((one) => {
    const limit = one !== null && 'spec' in one ? one.limit : one;
    return limit !== null && kindOfLimit(limit) === 'pressure';
  });
}
