import { findDoubts } from '../../../analysis/doubts.ts';
import { doubtWords } from '../../../i18n/doubt-words.ts';
import { wordsIn } from '../../../i18n/index.ts';
import type { Rule } from '../../rule.ts';

/** A figure of a job that cannot be right as written. The certificate says the same, in its own language. */
export const implausibleResult: Rule = {
  code: 'implausible-result',
  severity: 'error',
  since: '0.2.0',
  title:
    'A result of a job cannot be right as written: a misplaced decimal point, zero, or more than the tool can show.',
  job(job, report) {
    const words = wordsIn('en');
    for (const { result, why } of findDoubts(job)) {
      const [message, ...help] = sentences(doubtWords(words, why));
      report({
        at: result.source,
        message: message!,
        why: 'nothing can be judged or worked out from it.',
        help: help.join(' '),
      });
    }
  },
};

/** The certificate prints all of it in one cell: first what is wrong, then what to do. */
function sentences(text: string): string[] {
  return [...new Intl.Segmenter('en', { granularity: 'sentence' }).segment(text)].map(({ segment }) => segment.trim());
}
