import { openLocks, turned } from '../../../analysis/loose.ts';
import { partWords } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingAfterStep, type StepFix } from '../../step-fixes.ts';

/** The unit leaves with an adjuster that was turned and whose lock is not tight. */
export const settingNotLocked: Rule<StepFix> = {
  code: 'setting-not-locked',
  severity: 'error',
  since: '0.2.0',
  unsafe: true,
  title: 'The unit leaves with an adjuster that is not locked.',
  flow: (flow, report) => ({
    end({ state, path, last, block }) {
      const words = (part: string) => partWords(flow.graph.procedure, part);
      for (const { adjuster, lock, since, cause } of openLocks(flow, state, turned)) {
        const turnedAt = flow.graph.nodes[since];
        report({
          at: last ?? block.source,
          path,
          since,
          rootCause: cause,
          message: say`The ${words(adjuster.part)} is not locked when the unit leaves.`,
          why: say`it turns by itself on the engine, and the setting is lost.`,
          help: say`After it is set, write “lock ${lock}” with its torque.`,
          data:
            turnedAt?.kind === 'step' && path.repair === null
              ? missingAfterStep(turnedAt.step, `lock ${lock}`)
              : undefined,
        });
      }
    },
  }),
  fix: fixStep,
};
