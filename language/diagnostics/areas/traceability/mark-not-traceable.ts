import { stageSteps } from '../../../analysis/stages.ts';
import type { Source } from '../../../model/source.ts';
import { behind } from '../../edits.ts';
import type { Rule } from '../../rule.ts';

/** Every mark on the unit is without a number. A match mark beside one that has it is another thing. */
export const markNotTraceable: Rule<{ source: Source }> = {
  code: 'mark-not-traceable',
  severity: 'error',
  since: '0.2.0',
  title: 'The unit is marked with neither its number nor its serial.',
  replay({ program }, report) {
    const marks = stageSteps(program).flatMap(({ step }) => (step.verb === 'mark' ? [step] : []));
    const [first] = marks;
    const traceable = marks.some(
      ({ marking, text }) => marking.length > 0 || /\b(numbers?|no|serials?|job|order|code|date)\b/iu.test(text ?? ''),
    );
    if (first !== undefined && !traceable)
      report({
        at: first,
        message:
          'The mark has neither the number nor the serial: when the unit comes back it leads to no job. Write “with number, serial”, or say in the words of the step what is marked.',
        data: first.call === null ? { source: first.source } : undefined,
      });
    return {};
  },
  fix({ source }) {
    return { title: 'Mark it with number and serial', safe: false, edits: [behind(source, ' with number, serial')] };
  },
};
