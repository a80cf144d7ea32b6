import { isHydraulic } from '../../replay/hydraulic.ts';
import type { Rule } from '../rule.ts';

/** A test that reads or holds pressure says no pressure. */
export const pressureMissing: Rule = {
  code: 'pressure-missing',
  severity: 'error',
  unsafe: true,
  title: 'A pressure test says no pressure.',
  procedure(procedure, report) {
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      for (const step of block.steps) {
        const { test } = step;
        if (step.verb !== 'test' || test === null) continue;
        const name = step.gate!.name;
        if (test.reads !== null && test.within === null) {
          report({
            at: step,
            message: `Test ${name} reads ${test.reads}, and no limit says what is good. Write “within” and a spec or a limit.`,
          });
        } else if (
          test.reads === null &&
          (test.forTime !== null || test.inTime !== null || test.to !== null) &&
          test.hold === null &&
          test.from === null
        ) {
          report({
            at: step,
            message: `Test ${name} is timed, and no pressure says where it starts. Write “hold” and a pressure, or “from … to …”.`,
          });
        } else if (
          !isHydraulic(step, procedure) &&
          test.reads === null &&
          test.within === null &&
          step.accept === null
        ) {
          report({
            at: step,
            message: `Test ${name} says neither what is read nor what is accepted. Write “read … within …”, or “accept "…"”.`,
          });
        }
      }
    }
  },
};
