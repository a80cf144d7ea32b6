import type { Rule } from '../../rule.ts';

/** The same name declared twice. The first is taken. */
export const duplicateName: Rule = {
  code: 'duplicate-name',
  severity: 'error',
  since: '0.1.0',
  title: 'A name is declared twice.',
  problems(problems, report) {
    for (const problem of problems) {
      if (problem.kind !== 'duplicate-name') continue;
      report({
        at: problem.source,
        related: [{ message: `${problem.name} is declared first here.`, source: problem.first }],
        message: `${problem.what.charAt(0).toUpperCase()}${problem.what.slice(1)} ${problem.name} is declared already; the first one is taken, and this one is not read.`,
        help: 'Give one of them another name.',
      });
    }
  },
};
