import { flag, place } from '../../../analysis/locations.ts';
import { partWords } from '../../../analysis/prose.ts';
import { namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** What holds a loaded spring with no thread comes off, or goes on, while nothing holds the spring together. */
export const springLetFly: Rule = {
  code: 'spring-let-fly',
  severity: 'error',
  unsafe: true,
  since: '0.2.0',
  title: 'What holds a loaded spring comes off or goes on while nothing holds the spring.',
  flow: ({ graph, layout, relations }, report) => {
    const words = (part: string) => partWords(graph.procedure, part);
    /** A thread lets the spring out turn by turn; a clip or a cover lets it fly. */
    const holdersOf = (spring: string) =>
      relations
        .holders(spring)
        .filter(({ name }) => relations.joint(name) === undefined && relations.closedBy(name).length === 0);
    return {
      step: on(['remove', 'discard', 'fit', 'release'], ({ step, before, path }) => {
        for (const [spring, cell] of layout.compressed) {
          if (graph.absent.has(spring) || !before.may(before.part(spring).place, place.in)) continue;
          const named = namedIn(step);
          if (step.verb === 'release') {
            const object = named.find(({ name }) => name === spring);
            const holders = holdersOf(spring);
            if (object === undefined || holders.length === 0 || holders.some(({ name }) => before.mayBeIn(name)))
              continue;
            // Held together so that its clip could come off, it is then let out by hand, slowly.
            if (holders.some(({ name }) => before.since(before.part(name).place) > before.since(cell))) continue;
            report({
              at: step,
              source: object.source,
              path,
              since: before.since(before.part(holders[0]!.name).place),
              rootCause: `fly:${spring}:${step.number}`,
              message: say`The ${words(spring)} is let go while the ${words(holders[0]!.name)} is not in place.`,
              why: say`nothing holds it then, and it flies.`,
              help: say`Fit the ${words(holders[0]!.name)} first, and let the spring go into it.`,
            });
            continue;
          }
          const object = named.find(({ name }) => holdersOf(spring).some((one) => one.name === name));
          if (object === undefined || !before.may(cell, flag.no)) continue;
          const isFit = step.verb === 'fit';
          if (isFit ? step.forTrial : !before.may(before.part(object.name).place, place.in)) continue;
          report({
            at: step,
            source: object.source,
            path,
            since: before.since(cell),
            rootCause: `fly:${spring}:${step.number}`,
            message: say`The ${words(object.name)} holds the ${words(spring)}, and ${isFit ? say`goes on` : say`comes off`} while nothing else holds it.`,
            why: say`a loaded spring flies into the face of whoever lets it go.`,
            help: say`Write “compress ${relations.part(spring).base} in "…"” before this step${isFit ? say`` : say`, and “release” when it is out`}.`,
          });
        }
      }),
    };
  },
};
