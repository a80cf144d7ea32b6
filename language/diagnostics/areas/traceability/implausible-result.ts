import { findDoubts } from '../../../analysis/doubts.ts';
import { doubtWords } from '../../../i18n/doubt-words.ts';
import { languages, wordsIn } from '../../../i18n/words.ts';
import { inEach, say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A figure of a job that cannot be right as written. The certificate says the same, in its own language. */
export const implausibleResult: Rule = {
  code: 'implausible-result',
  severity: 'error',
  since: '0.2.0',
  title:
    'A result of a job cannot be right as written: a misplaced decimal point, zero, or more than the tool can show.',
  job(job, report) {
    for (const { result, why } of findDoubts(job)) {
      const said = languages.map((language) => [language, sentences(doubtWords(wordsIn(language), why))] as const);
      report({
        at: result.source,
        message: inEach(Object.fromEntries(said.map(([language, [first]]) => [language, first!]))),
        why: say`nothing can be judged or worked out from it.`,
        help: inEach(Object.fromEntries(said.map(([language, [, ...others]]) => [language, others.join(' ')]))),
      });
    }
  },
};

/** The certificate prints all of it in one cell: first what is wrong, then what to do. */
function sentences(text: string): string[] {
  return [...new Intl.Segmenter('en', { granularity: 'sentence' }).segment(text)].map(({ segment }) => segment.trim());
}
