import { doubtsOf } from '../../../analysis/doubts.ts';
import { doubtWords } from '../../../i18n/doubt-words.ts';
import { wordsIn } from '../../../i18n/index.ts';
import type { Rule } from '../../rule.ts';

/** A figure of a job that cannot be as it is written. The certificate says the same, in its own language. */
export const implausibleResult: Rule = {
  code: 'implausible-result',
  severity: 'error',
  since: '0.2.0',
  title: 'A result of a job cannot be as it is written: a slip of the point, nothing, or more than the tool can show.',
  workspace({ jobs }, report) {
    const words = wordsIn('en');
    for (const { result, why } of jobs.flatMap(doubtsOf))
      report({ at: result.source, message: doubtWords(words, why) });
  },
};
