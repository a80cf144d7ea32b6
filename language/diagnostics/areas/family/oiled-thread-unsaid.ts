import { lower } from '../../../analysis/prose.ts';
import type { StepOf } from '../../../model/procedure.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';
import { declared, fixStep, type StepFix } from '../../step-fixes.ts';

/** A joint is oiled before it is tightened, but neither the family nor the torque step says that its threads are oiled. */
export const oiledThreadUnsaid: Rule<StepFix> = {
  code: 'oiled-thread-unsaid',
  severity: 'warning',
  since: '0.2.0',
  title: 'A thread is oiled before it is torqued, but the family does not say so.',
  procedure(procedure, report) {
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      block.steps.forEach((step, at) => {
        if (step.verb !== 'oil') return;
        for (const object of step.objects) {
          const joint = procedure.family.joints.find((other) => other.part === object.name && !other.oiled);
          const torque = block.steps
            .slice(at + 1)
            .find(
              (later): later is StepOf<'torque'> =>
                later.verb === 'torque' && later.objects.some(({ name }) => name === object.name),
            );
          if (joint === undefined || torque === undefined || torque.oiled) continue;
          const part = procedure.family.parts.find((other) => other.name === joint.part)!;
          report({
            at: step,
            source: object.source,
            rootCause: `oiled-thread:${part.base}`,
            allow: part.allow,
            related: [{ message: say`The joint is declared here.`, source: joint.source }],
            message: say`The ${lower(part.title)} is oiled before it is torqued, but nothing says that the torque is for oiled threads.`,
            why: say`the same torque clamps a dry joint far less.`,
            help: say`Write “threads oiled” at the joint or at the torque, or leave out the oil.`,
            data: declared(joint.source, 'threads oiled'),
          });
        }
      });
    }
  },
  fix: fixStep,
};
