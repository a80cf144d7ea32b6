import { allSteps } from '../../../analysis/locations.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Rule } from '../../rule.ts';

/** A test that holds a pressure or lets it fall says no pressure. */
export const pressureMissing: Rule = {
  code: 'pressure-missing',
  severity: 'error',
  since: '0.1.0',
  ofAbsence: true,
  title: 'A timed pressure test says no pressure.',
  procedure(procedure, report) {
    for (const step of allSteps(procedure)) {
      if (step.verb !== 'test') continue;
      const { test } = step;
      if (test.reads !== null || test.hold !== null) continue;
      if (test.forTime === null && test.inTime === null && test.to === null && test.from === null) continue;
      const start = test.from === null;
      // A fall that is only watched for a time ends where the words say.
      if (!start && (test.to !== null || test.forTime !== null || step.accept !== null)) continue;
      report({
        at: step,
        cause: `test-pressure:${writtenAt(step)}`,
        message: start
          ? `Test ${step.gate.test} is timed, and no pressure says where it starts: each hand pumps to what he remembers. Write “hold” and a pressure, or “from … to …”.`
          : `Test ${step.gate.test} says from where the pressure falls, and not to where: the time cannot be stopped. Write “to” and the pressure at the end.`,
      });
    }
  },
};
