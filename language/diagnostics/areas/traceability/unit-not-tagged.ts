import { allSteps, flag } from '../../../analysis/locations.ts';
import { stationWords } from '../../../analysis/prose.ts';
import type { AbstractState } from '../../../analysis/state.ts';
import type { Step } from '../../../model/procedure.ts';
import { verbs } from '../../../model/verbs.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingAfterStep, type StepFix } from '../../step-fixes.ts';

/** A unit without a tag or a mark is separated from its parts, or put with others. */
export const unitNotTagged: Rule<StepFix> = {
  code: 'unit-not-tagged',
  severity: 'error',
  since: '0.2.0',
  title: 'A unit with no tag has its parts sent elsewhere, or is put with other units.',
  flow: ({ graph, layout }, report) => {
    const { procedure } = graph;
    const received = allSteps(procedure).find(({ verb }) => verb === 'receive');
    const station = (step: Step, before: AbstractState) =>
      (step.verb === 'keep' || step.verb === 'send') &&
      step.station !== null &&
      !before.must(layout.unit.station, layout.stationBit(step.station))
        ? step.station
        : null;
    return {
      looksAround: true,
      step: on(verbs, ({ step, block, before, path }) => {
        if (!before.may(layout.unit.tagged, flag.no) || !before.may(layout.unit.marked, flag.no)) return;
        const to = station(step, before);
        const together = 'together' in block && block.together;
        if (to === null && !together) return;
        report({
          at: step,
          path,
          rootCause: 'unit-not-tagged',
          message: say`${to === null ? say`The unit is put with the rest of its set` : say`The parts of the unit go to ${stationWords(procedure, to)}`}, but it has no tag.`,
          why: say`it gets another unit's parts and readings.`,
          help: say`Write “tag” where the unit is received.`,
          data: received === undefined ? undefined : missingAfterStep(received, 'tag'),
        });
      }),
    };
  },
  fix: fixStep,
};
