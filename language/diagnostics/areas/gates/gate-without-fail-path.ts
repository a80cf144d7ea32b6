import { isGate, isTest } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** A test or check does not say what happens on a fail. A reading needs none; a setting is turned until it is right. */
export const gateWithoutFailPath: Rule<StepFix> = {
  code: 'gate-without-fail-path',
  severity: 'error',
  since: '0.1.0',
  title: 'A test or check does not say what is done when it fails.',
  procedure(procedure, report) {
    const { stages, repairs } = procedure;
    for (const block of [...stages, ...repairs]) {
      for (const step of block.steps) {
        // A test in a repair has to be moved, not given a fail path: gate-in-repair reports it.
        const strays = 'tries' in block && isTest(step);
        if (!isGate(step) || strays || step.verb === 'set' || step.gate.onFail.length > 0) continue;
        if (step.verb === 'check' && step.verdicts.length > 0) continue;
        const { gate } = step;
        const name =
          gate.kind === 'test'
            ? say`Test ${gate.test}`
            : gate.kind === 'across'
              ? say`This test across the set`
              : say`This check`;
        report({
          at: step,
          message: gate.failWritten
            ? say`${name} says “on fail” and then nothing.`
            : say`${name} does not say what to do when it fails.`,
          why: say`the bench hand is left with a bad unit and no next step.`,
          data: missingClause(step, gate.failWritten ? blank : `on fail ${blank}`),
          help: say`${gate.failWritten ? say`Name` : say`Write “on fail” and`} the repairs that are tried, in order.`,
        });
      }
    }
  },
  fix: fixStep,
};
