import { either } from '../../../analysis/prose.ts';
import type { Source } from '../../../model/source.ts';
import { say, term } from '../../../say/say.ts';
import { isSlip } from '../../../syntax/nearest.ts';
import { collectCalls, grouped, placeKey } from '../../calls-of.ts';
import type { Rule } from '../../rule.ts';

/** A name that nothing declares, with the most similar ones. */
export const unknownName: Rule<{ source: Source; near: string; safe: boolean }> = {
  code: 'unknown-name',
  severity: 'error',
  since: '0.1.0',
  unsafe: true,
  title: 'A name that nothing declares.',
  problems(problems, report) {
    const unknown = problems.filter((problem) => problem.kind === 'unknown-name');
    // Once in each file: a check of one file must show what is wrong in it.
    for (const same of grouped(unknown, ({ what, name }) => `${what}:${name}`)) {
      const { name, what, near, source } = same[0]!;
      const help = near.length > 0 ? say`Did you mean ${either(near)}?` : say`Declare it, or correct the name.`;
      const [first] = near;
      const [, ...elsewhere] = grouped(same, (problem) => placeKey(problem.source));
      report({
        at: source,
        rootCause: `unknown:${what}:${name}`,
        related: [
          ...elsewhere
            .slice(0, 5)
            .map(([other]) => ({ message: say`${name} is named here too.`, source: other!.source })),
          ...collectCalls(same),
        ],
        message: say`No ${either(what.split(/, | or /u).map(term))} is called ${name}.`,
        help,
        data:
          first === undefined
            ? undefined
            : {
                source,
                near: first,
                safe: near.filter((one) => isSlip(name, one)).length === 1 && isSlip(name, first),
              },
      });
    }
  },
  fix({ source, near, safe }) {
    return { title: say`Write ${near}`, safe, edits: [{ source, text: near }] };
  },
};
