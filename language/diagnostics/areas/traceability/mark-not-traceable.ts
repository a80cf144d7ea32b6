import { stageSteps } from '../../../analysis/stages.ts';
import type { Source } from '../../../model/source.ts';
import { say } from '../../../say/say.ts';
import { behind } from '../../edits.ts';
import type { Rule } from '../../rule.ts';

/** No mark on the unit has a number. A match mark next to one that has is another matter. */
export const markNotTraceable: Rule<{ source: Source }> = {
  code: 'mark-not-traceable',
  severity: 'error',
  since: '0.2.0',
  title: 'The unit is marked with neither its part number nor its serial number.',
  flow({ graph }, report) {
    const marks = stageSteps(graph).flatMap(({ step }) => (step.verb === 'mark' ? [step] : []));
    const [first] = marks;
    const traceable = marks.some(
      ({ marking, text }) => marking.length > 0 || /\b(numbers?|no|serials?|job|order|code|date)\b/iu.test(text ?? ''),
    );
    if (first !== undefined && !traceable)
      report({
        at: first,
        message: say`The mark has neither the part number nor the serial number.`,
        why: say`when the unit comes back, the mark does not lead to its job.`,
        help: say`Write “with number, serial”, or say in the text of the step what is marked.`,
        data: first.call === null ? { source: first.source } : undefined,
      });
    return {};
  },
  fix({ source }) {
    return { title: say`Mark it with number and serial`, safe: false, edits: [behind(source, ' with number, serial')] };
  },
};
