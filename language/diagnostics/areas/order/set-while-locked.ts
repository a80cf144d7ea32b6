import { joint } from '../../../analysis/locations.ts';
import { partWords } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/** An adjuster is turned while its lock is tight. */
export const setWhileLocked: Rule<StepFix> = {
  code: 'set-while-locked',
  severity: 'error',
  since: '0.2.0',
  title: 'An adjuster is turned while its lock is tight.',
  flow: ({ graph, layout }, report) => ({
    step: on(['set', 'back-off'], ({ step, block, before, path }) => {
      // A repair that sends the unit back here in the wrong state is not a mistake of this step, but of the repair.
      const sent = path.repair !== null && path.repair !== block ? path.repair : null;
      const { procedure } = graph;
      for (const object of step.objects) {
        const lock = procedure.family.adjusters.find((one) => one.part === object.name)?.lockedBy ?? null;
        const cell = lock === null ? undefined : layout.joints.get(lock);
        if (lock === null || cell === undefined || !before.mayBeIn(lock)) continue;
        if (!before.may(cell, joint.found | joint.torqued | joint.locked)) continue;
        if (sent !== null) {
          report({
            at: sent.steps.at(-1) ?? sent.source,
            path,
            since: before.since(cell),
            allow: sent.allow,
            rootCause: `lock-tight:${lock}:${sent.name}`,
            message: say`Repair ${sent.name} sends the unit back to step ${step.number} with the ${partWords(procedure, lock)} still tight, and the ${partWords(procedure, object.name)} is turned there.`,
            why: say`it does not turn, or its thread or slot gives way.`,
            help: say`Write “slacken ${lock}” in the repair, with the pressure off.`,
          });
          continue;
        }
        report({
          at: step,
          source: object.source,
          path,
          since: before.since(cell),
          rootCause: `lock-tight:${lock}:${writtenAt(step)}`,
          message: say`The ${partWords(procedure, lock)} is still tight when the ${partWords(procedure, object.name)} is turned.`,
          why: say`it does not turn, or its thread or slot gives way.`,
          help: say`Write “slacken ${lock}” before this step, with the pressure off.`,
          data: missingBefore(step, `slacken ${lock}`),
        });
      }
    }),
  }),
  fix: fixStep,
};
