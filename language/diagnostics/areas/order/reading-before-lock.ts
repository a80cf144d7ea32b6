import { adjuster as setting } from '../../../analysis/locations.ts';
import { openLocks } from '../../../analysis/loose.ts';
import { partWords } from '../../../analysis/prose.ts';
import { provesThrough } from '../../../analysis/reach.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/** A test is read while an adjuster is set but its lock is not tight. */
export const readingBeforeLock: Rule<StepFix> = {
  code: 'reading-before-lock',
  severity: 'error',
  since: '0.2.0',
  title: 'A test is read while an adjuster is set but not locked.',
  flow: (flow, report) => ({
    step: on(['test'], ({ step, before, path }) => {
      const words = (part: string) => partWords(flow.graph.procedure, part);
      for (const { adjuster, lock, since, cause } of openLocks(flow, before, setting.set)) {
        if (!provesThrough(flow.graph.procedure, step.gate, adjuster.part)) continue;
        report({
          at: step,
          path,
          since,
          rootCause: cause,
          message: say`The ${words(adjuster.part)} is set but not locked when ${step.gate.test} is tested.`,
          why: say`tightening the ${words(lock)} moves it, and the unit leaves with another figure than the sheet shows.`,
          help: say`Write “lock ${lock}” before this test.`,
          data: missingBefore(step, `lock ${lock}`),
        });
      }
    }),
  }),
  fix: fixStep,
};
