import { doubtsOf } from '../../../documents/certificate/doubts.ts';
import { wordsIn } from '../../../i18n/index.ts';
import type { Rule } from '../../rule.ts';

/** A figure of a job that cannot be as it is written. The certificate says the same, in its own language. */
export const implausibleResult: Rule = {
  code: 'implausible-result',
  severity: 'error',
  since: '0.2.0',
  title: 'A result of a job cannot be as it is written: a slip of the point, nothing, or more than the tool can show.',
  job(job, report) {
    const words = wordsIn('en');
    for (const { result, say } of doubtsOf(job)) report({ at: result.source, message: say(words) });
  },
};
