import { partsWords } from '../../../analysis/prose.ts';
import { shimChoices } from '../../../analysis/shims.ts';
import type { Procedure } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import { say } from '../../../say/say.ts';
import { blank, stepBefore } from '../../edits.ts';
import type { Rule } from '../../rule.ts';

/** The next shim is worked out from the one that came out, and nobody measures that one. */
export const shimNotMeasured: Rule<Missing> = {
  code: 'shim-not-measured',
  severity: 'error',
  since: '0.2.0',
  title: 'A shim is chosen by the reading, but the one that came out is never measured.',
  procedure(procedure, report) {
    for (const { step, parts, cases } of shimChoices(procedure)) {
      // Without a rate, and where the shim does not move the reading one for one, the old shim is not needed.
      if (step.rate === null && cases.every(({ rate }) => rate === null)) continue;
      const unknown = parts.filter((part) => !isKnown(procedure, part.name));
      if (unknown.length === 0) continue;
      const names = unknown.map(({ base }) => base);
      report({
        at: step,
        rootCause: `shim-unmeasured:${names.join(',')}`,
        message: say`The next size is worked out from the ${partsWords(
          procedure,
          unknown.map(({ name }) => name),
        )} that came out, but no step measures that one.`,
        why: say`without its size the bench hand guesses, and opens the unit three times.`,
        help: say`Write “measure ${names.join(', ')} with” and a micrometer where it comes out.`,
        data: step.call === null ? { source: step.source, names } : undefined,
      });
    }
  },
  fix({ source, names }) {
    return {
      title: say`Measure ${names.join(', ')} before the next is chosen`,
      safe: false,
      edits: [stepBefore(source, `measure ${names.join(', ')} with ${blank}`)],
    };
  },
};

interface Missing {
  readonly source: Source;
  readonly names: readonly string[];
}

/** Its thickness is measured, or the text gives it: `fit shim "1.50 mm to begin with"`. */
function isKnown({ stages, repairs }: Procedure, part: string): boolean {
  return [...stages, ...repairs].some(({ steps }) =>
    steps.some(
      (step) =>
        step.objects.some(({ name }) => name === part) &&
        (step.verb === 'measure' ||
          ((step.verb === 'fit' || step.verb === 'renew') &&
            /\d\s*(mm|µm|in|thou)\b/u.test(`${step.text} ${step.note}`))),
    ),
  );
}
