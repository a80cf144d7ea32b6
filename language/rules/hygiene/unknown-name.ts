import { isSlip } from '../../grammar/nearest.ts';
import type { Fix } from '../../model/finding.ts';
import type { Source } from '../../model/source.ts';
import type { Rule } from '../rule.ts';
import { either } from '../words.ts';

/** A name that nothing declares, with the nearest ones. */
export const unknownName: Rule = {
  code: 'unknown-name',
  severity: 'error',
  unsafe: true,
  title: 'A name that nothing declares.',
  workspace({ problems }, report) {
    for (const problem of problems) {
      if (problem.kind !== 'unknown-name') continue;
      const { name, what, near, source } = problem;
      const mend = near.length > 0 ? `Did you mean ${either(near)}?` : `Declare it, or mend the name.`;
      const others = problems.flatMap((other) =>
        other.kind === 'unknown-name' && other.name === name && other.what === what && other !== problem
          ? [other.source]
          : [],
      );
      report({
        at: source,
        cause: `unknown:${what}:${name}`,
        related: others.slice(0, 5).map((place) => ({ message: `${name} is named here too.`, source: place })),
        message: `No ${what} is called ${name}. ${mend}`,
        data:
          near.length > 0
            ? {
                source,
                near: near[0],
                safe: near.filter((one) => isSlip(name, one)).length === 1 && isSlip(name, near[0]!),
              }
            : undefined,
      });
    }
  },
  fix(data): Fix {
    const { source, near, safe } = data as { source: Source; near: string; safe: boolean };
    return { title: `Write ${near}`, safe, edits: [{ source, text: near }] };
  },
};
