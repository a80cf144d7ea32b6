import { dirt, noFilm, place, wet } from '../../../analysis/locations.ts';
import { partWords } from '../../../analysis/prose.ts';
import { namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, onlyTestOil, type StepFix } from '../../step-fixes.ts';

/** A matched pair goes together dry: it must be wet with clean test oil. */
export const lappedPairFittedDry: Rule<StepFix> = {
  code: 'lapped-pair-fitted-dry',
  severity: 'error',
  since: '0.1.0',
  title: 'A lapped pair goes together dry instead of wet with clean test oil.',
  flow: ({ graph, relations }, report) => ({
    step: on(['fit'], ({ step, before, path }) => {
      const oil = onlyTestOil(graph.procedure.shop);
      const objects = namedIn(step);
      const names = objects.map((object) => object.name);
      for (const object of objects) {
        for (const other of relations.part(object.name).matchedTo) {
          const runsIn =
            relations.part(object.name).in.includes(other) || relations.part(other).in.includes(object.name);
          if (
            !runsIn ||
            before.mustBeIn(object.name) ||
            !(names.includes(other) || before.mayBeIn(other) || before.may(before.part(other).place, 2))
          )
            continue;
          const fluid = graph.procedure.shop.fluids.find(({ name }) => name === step.fluid)?.kind;
          if (fluid === 'test-oil' || fluid === 'oil') continue;
          // Preserving oil is no film to run in; that of a new part is reported as such.
          const dry = [object.name, other].filter(
            (name) =>
              before.may(before.part(name).wet, noFilm | wet.preserving) &&
              !before.may(before.part(name).dirt, dirt.preserved),
          );
          if (dry.length === 0) continue;
          const since = before.since(before.part(dry[0]!).wet);
          report({
            at: step,
            source: object.source,
            path,
            since,
            rootCause: `dry:${dry[0]}:${since}`,
            message: say`The ${partWords(graph.procedure, object.name)} and the ${partWords(graph.procedure, other)} are a lapped pair and go together ${before.may(before.part(dry[0]!).wet, noFilm) ? say`dry` : say`in preserving oil`}.`,
            why: before.may(before.part(dry[0]!).wet, noFilm)
              ? say`the first stroke can seize them.`
              : say`it is thick and gums the fit: the needle sticks at the first test, and on the engine when it is cold.`,
            help: say`Rinse both in clean test oil first.`,
            data:
              oil === null || [object.name, other].some((name) => before.may(before.part(name).place, place.gone))
                ? undefined
                : missingBefore(step, `rinse ${object.name}, ${other} in ${oil}`),
          });
        }
      }
    }),
  }),
  fix: fixStep,
};
