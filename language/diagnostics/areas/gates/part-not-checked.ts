import { partsWords } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import { namedIn } from '../../../model/steps.ts';
import type { Verb } from '../../../model/verbs.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingAfterStep, type StepFix } from '../../step-fixes.ts';

/** A part that the family says is always checked comes off, and no step looks at it or measures it. */
export const partNotChecked: Rule<StepFix> = {
  code: 'part-not-checked',
  severity: 'error',
  since: '0.2.0',
  title: 'A part that the family says is always checked comes off, and no step checks it.',
  flow({ graph, relations }, report) {
    const { procedure, numbers } = graph;
    /** What is done to each part of these part numbers. */
    const done = new Map<string, Set<Verb>>();
    if (procedure.family.alwaysChecked.length > 0)
      for (const step of procedure.stages.flatMap((stage) => stage.steps)) {
        if (step.only !== null && numbers !== null && !step.only.some((number) => numbers.includes(number))) continue;
        for (const { kind, name } of namedIn(step))
          if (kind === 'part') done.set(name, (done.get(name) ?? new Set()).add(step.verb));
      }
    const named = (verbs: readonly Verb[], part: string) => verbs.some((verb) => done.get(part)?.has(verb));
    /** It comes off; or it is the body, and what is in it comes off. */
    const comesApart = (part: string) =>
      named(['remove'], part) ||
      (restsOn(relations.part(part)).length === 0 && relations.onIt(part).some(({ name }) => named(['remove'], name)));
    return {
      looksAround: true,
      end() {
        // A partial job leaves a part where it is; a new part needs no check.
        const unseen = procedure.family.alwaysChecked.filter(
          ({ name }) => comesApart(name) && !named(['discard', 'renew'], name) && !named(['check', 'measure'], name),
        );
        const [first] = unseen;
        if (first === undefined) return;
        const names = unseen.map(({ name }) => name);
        const several = names.length > 1;
        const steps = procedure.stages.flatMap((stage) => stage.steps);
        const dried =
          steps.find(({ verb }) => verb === 'blow-dry') ??
          steps.findLast(({ verb }) => verb === 'wash' || verb === 'remove');
        report({
          at: procedure.source,
          rootCause: 'part-not-checked',
          related: [{ message: say`The family says so here.`, source: first.source }],
          message: say`The family says that the ${partsWords(procedure, names)} ${several ? say`are` : say`is`} always checked, but no step of this procedure checks ${several ? say`them` : say`it`}.`,
          why: say`a worn or cracked one would go back in.`,
          data: dried === undefined ? undefined : missingAfterStep(dried, `check ${names.join(', ')} ${blank}`),
          help: say`After the wash, write “check ${names.join(', ')} "…"” with what to look for.`,
        });
      },
    };
  },
  fix: fixStep,
};
