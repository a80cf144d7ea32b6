import type { Rule } from '../../rule.ts';

/** The same name declared twice. The first declaration is used. */
export const duplicateName: Rule = {
  code: 'duplicate-name',
  severity: 'error',
  since: '0.1.0',
  title: 'A name is declared twice.',
  workspace({ problems }, report) {
    for (const problem of problems) {
      if (problem.kind !== 'duplicate-name') continue;
      report({
        at: problem.source,
        related: [{ message: `${problem.name} is first declared here.`, source: problem.first }],
        message: `${problem.what.charAt(0).toUpperCase()}${problem.what.slice(1)} ${problem.name} is already declared.`,
        why: 'the first declaration is used, and this one is ignored.',
        help: 'Rename one of them.',
      });
    }
  },
};
