import { isLock, isOpenLock, loose, loosened, readsUnderPressure } from '../../../analysis/loose.ts';
import { partWords } from '../../../analysis/prose.ts';
import { provesThrough } from '../../../analysis/reach.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingTorque, type StepFix } from '../../step-fixes.ts';

/** A joint that a gate proves through, or that ships, is run down but not torqued. */
export const leftHandTight: Rule<StepFix> = {
  code: 'left-hand-tight',
  severity: 'error',
  since: '0.1.0',
  unsafe: true,
  title: 'A joint is run down but not torqued when the unit is tested or leaves.',
  flow: (flow, report) => {
    const { graph, relations } = flow;
    const words = (part: string) => partWords(graph.procedure, part);
    return {
      step: on(['test'], ({ step, before, path }) => {
        if (!readsUnderPressure(step, flow)) return;
        for (const { joint, since, cause } of loosened(flow, before, loose)) {
          if (joint.handTightIsFinal || isLock(flow, joint.part)) continue;
          if (!relations.loaded(joint.part) || !provesThrough(graph.procedure, step.gate, joint.part)) continue;
          report({
            at: step,
            path,
            since,
            rootCause: cause,
            message: say`The ${words(joint.part)} is only hand-tight when ${step.gate.test} is tested.`,
            why: say`it can leak or let go under pressure.`,
            help: say`Torque it before this test.`,
            data: missingTorque(flow, since, joint.part),
          });
        }
      }),
      end({ state, path, last, block }) {
        for (const { joint, since, cause } of loosened(flow, state, loose)) {
          if (joint.handTightIsFinal || isOpenLock(flow, state, joint.part)) continue;
          report({
            at: last ?? block.source,
            path,
            since,
            rootCause: cause,
            message: say`The ${words(joint.part)} is only hand-tight when the unit leaves.`,
            why: say`it will come loose on the engine.`,
            help: say`Torque it, or write “hand-tight is final” at the joint in the family.`,
            data: missingTorque(flow, since, joint.part),
          });
        }
      },
    };
  },
  fix: fixStep,
};
