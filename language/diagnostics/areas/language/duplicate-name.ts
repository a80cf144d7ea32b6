import { capital, say, term } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** The same name declared twice. The first declaration is used. */
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
        related: [{ message: say`${problem.name} is first declared here.`, source: problem.first }],
        message: say`${capital(term(problem.what))} ${problem.name} is already declared.`,
        why: say`the first declaration is used, and this one is ignored.`,
        help: say`Rename one of them.`,
      });
    }
  },
};
