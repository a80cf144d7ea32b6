import { provesThrough } from '../../../analysis/effects.ts';
import { isLock, isOpenLock, loose, loosened, readsUnderPressure } from '../../../analysis/loose.ts';
import { partWords } from '../../../analysis/prose.ts';
import type { Rule } from '../../rule.ts';

/** A joint that a gate proves through, or that ships, is run down but not torqued. */
export const leftHandTight: Rule = {
  code: 'left-hand-tight',
  severity: 'error',
  since: '0.1.0',
  unsafe: true,
  title: 'A joint is run down but not torqued when the unit is tested or leaves.',
  replay: (replay, report) => {
    const { program, relations } = replay;
    const words = (part: string) => partWords(program.procedure, part);
    return {
      step({ step, before, way }) {
        if (step.verb !== 'test' || !readsUnderPressure(step, replay)) return;
        for (const { joint, since, cause } of loosened(replay, before, loose)) {
          if (joint.handTightIsFinal || isLock(replay, joint.part)) continue;
          if (!relations.loaded(joint.part) || !provesThrough(step.gate, joint.part)) continue;
          report({
            at: step,
            way,
            since,
            cause,
            message: `The ${words(joint.part)} is only hand-tight when ${step.gate.test} is tested.`,
            why: 'it can leak or let go under pressure.',
            help: 'Torque it before this test.',
          });
        }
      },
      end({ state, way, last, block }) {
        for (const { joint, since, cause } of loosened(replay, state, loose)) {
          if (joint.handTightIsFinal || isOpenLock(replay, state, joint.part)) continue;
          report({
            at: last ?? block.source,
            way,
            since,
            cause,
            message: `The ${words(joint.part)} is only hand-tight when the unit leaves.`,
            why: 'it will come loose on the engine.',
            help: 'Torque it, or write “hand-tight is final” at the joint in the family.',
          });
        }
      },
    };
  },
};
