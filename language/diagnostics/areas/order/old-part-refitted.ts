import { age, place } from '../../../analysis/locations.ts';
import { partsWords } from '../../../analysis/prose.ts';
import type { AbstractState } from '../../../analysis/state.ts';
import type { StepObject } from '../../../model/procedure.ts';
import { namedIn } from '../../../model/steps.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/** A part that is always renewed, or that was discarded, goes back in. */
export const oldPartRefitted: Rule<StepFix> = {
  code: 'old-part-refitted',
  severity: 'error',
  since: '0.1.0',
  title: 'A part that is always renewed, or was discarded, is fitted again.',
  flow: ({ graph, relations }, report) => {
    const isRenewed = ({ name }: StepObject) => relations.part(name).renewed;
    const isOld = (object: StepObject, before: AbstractState) => {
      const cells = before.part(object.name);
      return isRenewed(object)
        ? before.may(cells.place, place.off | place.sub) && before.may(cells.age, age.found)
        : before.may(cells.place, place.gone);
    };
    return {
      step: on(['fit', 'run-down'], ({ step, before, path }) => {
        const old = namedIn(step).filter((object) => isOld(object, before));
        const sinceOf = ({ name }: StepObject) => before.since(before.part(name).place);
        /** Parts that came off at one step are one mistake. */
        const told = new Set<string>();
        for (const object of old) {
          const since = sinceOf(object);
          const renewed = isRenewed(object);
          const slip = `${since} ${renewed}`;
          if (told.has(slip)) continue;
          told.add(slip);
          const names = old
            .filter((other) => sinceOf(other) === since && isRenewed(other) === renewed)
            .map(({ name }) => name);
          const several = names.length > 1;
          const words = partsWords(graph.procedure, names);
          report({
            at: step,
            source: object.source,
            path,
            since,
            rootCause: `old:${names[0]}:${since}`,
            data: missingBefore(step, `renew ${names.join(', ')}`),
            ...(renewed
              ? {
                  message: `The ${words} ${several ? 'are' : 'is'} always renewed, but the old ${several ? 'ones go' : 'one goes'} back in.`,
                  why: 'a used one does not seal or hold a second time.',
                  help: `Write “discard” instead of “remove” where ${several ? 'they come' : 'it comes'} off, or write “renew ${names.join(', ')}” before this step.`,
                }
              : {
                  message: `The ${words} ${several ? 'were' : 'was'} discarded, and there is no new one to fit.`,
                  why: 'the scrapped one goes back in, or the unit waits for a new one.',
                  help: `Write “renew ${names.join(', ')}” before this step. If the old one is good, write remove instead of discard.`,
                }),
          });
        }
      }),
    };
  },
  fix: fixStep,
};
