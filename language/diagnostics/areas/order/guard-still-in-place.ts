import { inPlaceCause } from '../../../analysis/assembly.ts';
import { place } from '../../../analysis/locations.ts';
import { faceWords, partWords } from '../../../analysis/prose.ts';
import type { Source } from '../../../model/source.ts';
import { say } from '../../../say/say.ts';
import { stepBefore } from '../../edits.ts';
import { on, type Rule } from '../../rule.ts';

/** A face is guarded with a part that is still in its own place in the unit. */
export const guardStillInPlace: Rule<{ remove: string; source: Source }> = {
  code: 'guard-still-in-place',
  severity: 'error',
  since: '0.2.0',
  title: 'A face is guarded with a part that is still in its own place.',
  flow: ({ graph, relations }, report) => ({
    step: on(['guard'], ({ step, before, path }) => {
      const { procedure } = graph;
      for (const object of step.withObjects) {
        const cell = before.part(object.name).place;
        if (!before.may(cell, place.in | place.trial)) continue;
        const { base } = relations.part(object.name);
        report({
          at: step,
          source: object.source,
          path,
          since: before.since(cell),
          rootCause: inPlaceCause(relations, before, object.name),
          message: say`The ${partWords(procedure, object.name)} is still in its own place when it has to guard ${step.objects[0] === undefined ? say`a face` : faceWords(procedure, step.objects[0].name)}.`,
          why: say`it cannot be in two places, and the face is not bare yet.`,
          help: say`Write “remove ${base}” before this step, with the parts under it.`,
          data: step.call === null ? { remove: `remove ${base}`, source: step.source } : undefined,
        });
      }
    }),
  }),
  fix({ remove, source }) {
    return { title: say`Take it off first`, safe: false, edits: [stepBefore(source, remove)] };
  },
};
