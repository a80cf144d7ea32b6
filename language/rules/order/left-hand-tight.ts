import { joint } from '../../replay/cells.ts';
import { isHydraulic } from '../../replay/hydraulic.ts';
import { provesThrough } from '../../replay/transfer.ts';
import type { Rule } from '../rule.ts';
import { partWords } from '../words.ts';

/** A joint that a gate proves through, or that ships, is run down and not torqued. */
export const leftHandTight: Rule = {
  code: 'left-hand-tight',
  severity: 'error',
  unsafe: true,
  title: 'A joint is run down and not torqued when the unit is tested or leaves.',
  replay: ({ program, layout, relations }, report) => {
    const { procedure } = program;
    const { joints, adjusters } = procedure.family;
    const loose = joint.run | joint.slack | joint.apart;
    const words = (part: string) => partWords(procedure, part);
    return {
      step({ step, before, way }) {
        const gate = step.gate;
        if (step.verb !== 'test' || gate === null || !isHydraulic(step, procedure)) return;
        for (const one of joints) {
          const cell = layout.joints.get(one.part)!;
          if (one.handTightIsFinal || !relations.loaded(one.part) || !provesThrough(gate, gate.name, one.part))
            continue;
          // A lock nut is left loose while its adjuster is being set.
          if (adjusters.some((adjuster) => adjuster.lockedBy === one.part || adjuster.part === one.part)) continue;
          if (!before.may(cell, loose) || !before.mayBeIn(one.part)) continue;
          report({
            at: step,
            way,
            since: before.since[cell],
            cause: `loose:${one.part}:${before.since[cell]}`,
            message: `The ${words(one.part)} is only hand-tight when ${gate.name} is tested: it can leak or let go under pressure. Torque it before this test.`,
          });
        }
      },
      end({ state, way, last, block }) {
        for (const one of joints) {
          const cell = layout.joints.get(one.part)!;
          if (
            one.handTightIsFinal ||
            adjusters.some((adjuster) => adjuster.part === one.part) ||
            !state.may(cell, loose) ||
            !state.mayBeIn(one.part)
          )
            continue;
          report({
            at: last ?? block.source,
            way,
            since: state.since[cell],
            cause: `loose:${one.part}:${state.since[cell]}`,
            message: `The ${words(one.part)} is only hand-tight when the unit leaves: it will come loose on the engine. Torque it, or say in the family that hand-tight is final.`,
          });
        }
      },
    };
  },
};
