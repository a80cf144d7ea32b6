import { lower } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Source } from '../../../model/source.ts';
import { namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { behind } from '../../edits.ts';
import type { Rule } from '../../rule.ts';

/** Fitted without saying how it is located. */
export const partNotLocated: Rule<{ source: Source }> = {
  code: 'part-not-located',
  severity: 'warning',
  since: '0.1.0',
  title: 'A part that something locates is fitted, and the step does not say “located”.',
  procedure(procedure, report) {
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      for (const step of block.steps) {
        if (step.verb !== 'fit' && step.verb !== 'run-down') continue;
        for (const object of namedIn(step)) {
          const part = procedure.family.parts.find((other) => other.name === object.name)!;
          if (part.locatedBy === null || object.located !== null) continue;
          report({
            at: step,
            source: object.source,
            rootCause: `located:${writtenAt(step)}:${object.name}`,
            message: say`The ${lower(part.title)} is located by ${part.locatedBy}, but this step does not say so.`,
            why: say`forced on out of position, it shears a dowel or gets torqued crooked.`,
            help: say`Write “${part.base} located”.`,
            data: step.call === null ? { source: object.source } : undefined,
          });
        }
      }
    }
  },
  fix({ source }) {
    return { title: say`Say that it is located`, safe: true, edits: [behind(source, ' located')] };
  },
};
