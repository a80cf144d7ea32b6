import { findDoubts } from '../../../analysis/doubts.ts';
import { doubtWords } from '../../../i18n/doubt-words.ts';
import { say } from '../../../say/say.ts';
import { statement } from '../../judged-rule.ts';
import type { Rule } from '../../rule.ts';

/** A figure of a job that cannot be right as written. The certificate says the same, in its own language. */
export const implausibleResult: Rule = {
  code: 'implausible-result',
  severity: 'error',
  since: '0.2.0',
  title:
    'A result of a job cannot be right as written: a misplaced decimal point, zero, or more than the tool can show.',
  job(job, report) {
    for (const { result, why } of findDoubts(job))
      report({
        at: result.source,
        ...statement((words) => doubtWords(words, why)),
        why: say`nothing can be judged or worked out from it.`,
      });
  },
};
