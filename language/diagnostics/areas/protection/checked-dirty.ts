import { dirt, place, unclean, wet } from '../../../analysis/locations.ts';
import { partsWords } from '../../../analysis/prose.ts';
import type { Step } from '../../../model/procedure.ts';
import { failEntries, own } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** A part is judged while it is dirty, or wet with solvent, detergent or water. */
export const checkedDirty: Rule = {
  code: 'checked-dirty',
  severity: 'error',
  since: '0.2.0',
  title: 'A part is judged while it is dirty, or still wet from the wash.',
  flow: ({ graph, relations }, report) => {
    /** Parts already reported: a later path reaches the same step with the same dirt. */
    const told = new Set<string>();
    return {
      looksAround: true,
      step: on(['check', 'measure'], ({ step, before, path }) => {
        // Whether a part moves is felt, clean or not.
        if (!judges(step) || own(step, 'moves') != null) return;
        const parts = [
          ...new Set(
            step.objects.flatMap(({ kind, name }) =>
              kind === 'part' ? [name] : kind === 'face' ? [relations.face(name).part] : [],
            ),
          ),
        ].filter((name) => !graph.absent.has(name) && !before.may(before.part(name).place, place.gone));
        const dirty = parts.filter((name) => before.may(before.part(name).dirt, unclean));
        const pasty = dirty.some((name) => before.may(before.part(name).dirt, dirt.paste));
        const wetOnes = parts.filter((name) => before.may(before.part(name).wet, wet.solvent | wet.water));
        const names = dirty.length > 0 ? dirty : wetOnes;
        const [first] = names;
        if (first === undefined || names.every((name) => told.has(name))) return;
        for (const name of names) told.add(name);
        const cells = before.part(first);
        const since = before.since(dirty.length > 0 ? cells.dirt : cells.wet);
        const words = partsWords(graph.procedure, names);
        const [are, them] = names.length > 1 ? [say`are`, say`them`] : [say`is`, say`it`];
        report({
          at: step,
          path,
          since,
          rootCause: dirty.length > 0 ? `dirty:${since}` : `wet:${since}`,
          ...(dirty.length > 0
            ? {
                message: say`The ${words} ${are} judged dirty.`,
                why: pasty
                  ? say`lapping paste is still on ${them}, fills a score line, and cuts on in whatever it gets into.`
                  : say`a crack or a score line hides under the dirt.`,
                help:
                  pasty && isLapIf(step)
                    ? say`Write “then wash in FLUID” behind “lap if”: a rinse does not take paste off.`
                    : say`Wash ${them} first.`,
              }
            : {
                message: say`The ${words} ${are} judged wet from the wash.`,
                why: say`a wet film shines like a good face and hides a hairline crack.`,
                help: say`Blow ${them} dry first.`,
              }),
        });
      }),
    };
  },
};

/** The paste is of the lapping that the check itself asks for. */
function isLapIf(step: Step): boolean {
  return step.verb === 'check' && step.verdicts.some(({ verdict }) => verdict === 'lap');
}

/** Says what is good, or sends the unit to a repair. A first look that can only reject may be taken through the dirt. */
function judges(step: Step): boolean {
  if (step.verb === 'measure') return failEntries(step).length > 0;
  if (step.verb !== 'check') return false;
  const { gate, verdicts } = step;
  return verdicts.length > 0 ? verdicts.some(({ verdict }) => verdict !== 'reject') : gate.onFail.length > 0;
}
