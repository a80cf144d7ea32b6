import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** Something has to be written down at a step that has no box on the sheet. */
export const readingNotRecorded: Rule = {
  code: 'reading-not-recorded',
  severity: 'warning',
  since: '0.2.0',
  title: 'Something has to be written down, and the step has no box for it.',
  procedure(procedure, report) {
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      for (const step of block.steps) {
        if (step.verb !== 'do' || !/\b(write|note|jot|put) ((it|them|this|each) )?down\b/iu.test(step.text ?? ''))
          continue;
        report({
          at: step,
          message: say`This step says to write something down, but “do” has no box on the sheet.`,
          why: say`the reading ends up on a scrap of paper.`,
          help: say`Write “read … as found”, “measure …” or “check …” instead: these have a box for each unit.`,
        });
      }
    }
  },
};
