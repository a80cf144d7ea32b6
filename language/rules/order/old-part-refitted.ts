import { age, place } from '../../replay/cells.ts';
import type { Rule } from '../rule.ts';
import { partWords } from '../words.ts';

/** A part that is always renewed, or that was discarded, goes back in. */
export const oldPartRefitted: Rule = {
  code: 'old-part-refitted',
  severity: 'error',
  title: 'A part that is always renewed, or was discarded, is fitted again.',
  replay: ({ program, relations }, report) => ({
    step({ step, before, way }) {
      if (step.verb !== 'fit' && step.verb !== 'run-down') return;
      for (const object of [...step.objects, ...step.withObjects]) {
        const cells = before.part(object.name);
        const { renewed } = relations.part(object.name);
        const old = renewed
          ? before.may(cells.place, place.off | place.sub) && before.may(cells.age, age.found)
          : before.may(cells.place, place.gone);
        if (!old) continue;
        const words = partWords(program.procedure, object.name);
        report({
          at: step,
          source: object.source,
          way,
          since: before.since[cells.place],
          cause: `old:${object.name}:${before.since[cells.place]}`,
          message: renewed
            ? `The ${words} is always renewed, but the old one, only taken off, goes back in: it will leak. Write discard where it comes off, or renew ${object.name} before this step.`
            : `The ${words} was discarded and there is no new one. Write “renew ${object.name}” before this step; if the old one is good, write remove instead of discard.`,
        });
      }
    },
  }),
};
