import { lower } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Source } from '../../../model/source.ts';
import { closesUp, namedIn } from '../../../model/steps.ts';
import type { Verb } from '../../../model/verbs.ts';
import { say } from '../../../say/say.ts';
import { behind } from '../../edits.ts';
import type { Rule } from '../../rule.ts';

/** A part with marks is fitted, and the step does not mention them. */
export const marksNotLinedUp: Rule<{ source: Source }> = {
  code: 'marks-not-lined-up',
  severity: 'error',
  since: '0.2.0',
  title: 'A part with marks is fitted without lining them up.',
  procedure(procedure, report) {
    if (procedure.family.parts.every(({ marks }) => marks === null)) return;
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      const named = (verb: Verb) =>
        block.steps.filter((step) => step.verb === verb).flatMap((step) => step.objects.map((object) => object.name));
      const [linedUp, fitted] = [named('line-up'), named('fit')];
      for (const step of block.steps) {
        if (!closesUp(step)) continue;
        // `with marks aligned` applies to the whole step.
        if (step.objects.some((object) => object.marksAligned)) continue;
        for (const object of namedIn(step)) {
          const part = procedure.family.parts.find((other) => other.name === object.name)!;
          if (part.marks === null || linedUp.includes(part.name)) continue;
          // A part that was fitted and is then run down was lined up when it was fitted.
          if (step.verb === 'run-down' && fitted.includes(part.name)) continue;
          report({
            at: step,
            source: object.source,
            rootCause: `marks:${writtenAt(step)}:${part.base}`,
            message: say`The ${lower(part.title)} has marks (${part.marks}), but this step does not line them up.`,
            why: say`it goes on in the wrong position as easily as in the right one.`,
            help: say`Write “with marks aligned”.`,
            data: step.call === null ? { source: step.objects.at(-1)!.source } : undefined,
          });
        }
      }
    }
  },
  fix({ source }) {
    return { title: say`Line the marks up`, safe: true, edits: [behind(source, ' with marks aligned')] };
  },
};
