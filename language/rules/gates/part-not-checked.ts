import { restsOn } from '../../replay/relations.ts';
import type { Rule } from '../rule.ts';
import { partWords } from '../words.ts';

/** A part that the family has always checked comes off, and no step looks at it or measures it. */
export const partNotChecked: Rule = {
  code: 'part-not-checked',
  severity: 'error',
  title: 'A part that the family has always checked comes off, and no step checks it.',
  replay({ program, relations }, report) {
    const { procedure, numbers } = program;
    const mine = procedure.stages
      .flatMap((stage) => stage.steps)
      .filter((step) => step.only === null || numbers === null || step.only.some((number) => numbers.includes(number)));
    const named = (verbs: readonly string[], part: string) =>
      mine.some(
        (step) =>
          verbs.includes(step.verb) &&
          [...step.objects, ...step.withObjects].some(({ kind, name }) => kind === 'part' && name === part),
      );
    /** It comes off; or it is the body, and what stands in it comes off. */
    const comesApart = (part: string) =>
      named(['remove'], part) ||
      (restsOn(relations.part(part)).length === 0 && relations.onIt(part).some(({ name }) => named(['remove'], name)));
    return {
      end() {
        for (const { name, source } of procedure.family.alwaysChecked) {
          // A partial job leaves it where it is; a new one needs no judging.
          if (!comesApart(name) || named(['discard', 'renew'], name) || named(['check', 'measure'], name)) continue;
          report({
            at: procedure.source,
            cause: `part-not-checked:${name}`,
            related: [{ message: 'The family says so here.', source }],
            message: `The ${partWords(procedure, name)} is always checked, and no step of this procedure looks at it: a worn or cracked one would go back in. Write “check ${name} "…"” with what is looked for, after the wash.`,
          });
        }
      },
    };
  },
};
