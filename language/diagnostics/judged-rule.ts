import { wordsIn } from '../i18n/index.ts';
import { judgeJob } from '../judgment/judge.ts';
import type { LimitVerdict } from '../judgment/judged.ts';
import type { JudgedRule, Problem } from '../judgment/problem.ts';
import type { Fix, Severity } from '../model/diagnostic.ts';
import type { Job } from '../model/job.ts';
import type { Source } from '../model/source.ts';
import { oncePer } from '../quantities/memo.ts';
import type { Rule } from './rule.ts';

interface JudgedParts {
  readonly code: JudgedRule;
  readonly severity: Severity;
  readonly references?: readonly string[];
  readonly title: string;
  readonly why: string;
  /** Whether it is reported for a unit that is still in work. */
  readonly isDue?: (unit: LimitVerdict) => boolean;
  readonly fix?: (at: Source) => Fix | null;
}

/**
 * A rule that reports, in the text of a job, what keeps a unit from being certified; the certificate says the same in its own
 * language. Nobody knows here which day it is: what is in the future, only the certificate says.
 */
export function judgedRule({ code, why, isDue, ...rule }: JudgedParts): Rule<Source> {
  return {
    code,
    since: '0.2.0',
    ...rule,
    job(job, report) {
      const { units, missing } = judged(job);
      for (const { problem, unit } of missing) {
        if (problem?.rule !== code) continue;
        const verdict = units.find((one) => one.unit === unit);
        if (verdict !== undefined && isDue?.(verdict) === false) continue;
        report({ at: problem.at, ...statement(problem), why, data: problem.at });
      }
    },
  };
}

/** Of the procedure it has the figures: no rule on a job is shown more. */
const judged = oncePer((job: Job) => judgeJob(job.procedure, job, null));

/** The certificate prints all of it in one cell: first what is wrong, then what to do. */
function statement({ say }: Problem) {
  const [message, ...help] = say(wordsIn('en')).split(betweenSentences);
  return { message: message!, help: help.join(' ') };
}

/** Not behind the initial of a name. */
const betweenSentences = /(?<=[.?])(?<!(?:^|\s)\p{Lu}\.) (?=\p{Lu})/u;
