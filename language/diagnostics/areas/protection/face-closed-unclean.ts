import { place, unclean } from '../../../analysis/locations.ts';
import { capital, faceWords } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import { closesUp, namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** A lapped face is covered for good while its part is dirty, where the part is neither fitted nor carries what is fitted. */
export const faceClosedUnclean: Rule = {
  code: 'face-closed-unclean',
  severity: 'error',
  since: '0.2.0',
  title: 'A lapped face is covered for good while its part is dirty.',
  flow: ({ graph, relations }, report) => ({
    step: on(['fit', 'run-down'], ({ step, before, path }) => {
      if (!closesUp(step)) return;
      const objects = namedIn(step).filter(({ name }) => !before.mustBeIn(name));
      /** What goes in with a part that carries it. */
      const names = objects.flatMap(({ name }) => [
        name,
        ...relations
          .inside(name)
          .filter((inner) => before.may(before.part(inner.name).place, place.sub))
          .map((inner) => inner.name),
      ]);
      // fitted-dirty reports these.
      const seen = objects.flatMap(({ name }) => [name, ...restsOn(relations.part(name))]);
      for (const face of graph.procedure.family.faces) {
        if (face.finish === null || face.meets === null || seen.includes(face.part)) continue;
        const other = relations.face(face.meets).part;
        const closes =
          [face.part, other].every((part) => names.includes(part) || before.mayBeIn(part)) &&
          [face.part, other].some((part) => names.includes(part));
        const cells = before.part(face.part);
        if (!closes || !before.may(cells.dirt, unclean)) continue;
        const since = before.since(cells.dirt);
        report({
          at: step,
          source: (objects.find(({ name }) => name === other || name === face.part) ?? objects[0]!).source,
          path,
          since,
          rootCause: `dirty:${since}`,
          message: say`${capital(faceWords(graph.procedure, face.id))} is covered here and has not been cleaned${since < 0 ? say` since the unit came in` : say` since it was dirtied`}.`,
          why: say`one grain of grit between lapped faces holds them apart, and they leak.`,
          help: say`Wash ${relations.part(face.part).base} first.`,
        });
      }
    }),
  }),
};
