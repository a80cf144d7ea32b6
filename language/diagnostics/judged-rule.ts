import { languages, wordsIn } from '../i18n/words.ts';
import { judgeJob } from '../judgment/judge.ts';
import type { LimitVerdict } from '../judgment/judged.ts';
import type { JudgedRule } from '../judgment/problem.ts';
import type { Say } from '../judgment/say.ts';
import type { Fix, Severity } from '../model/diagnostic.ts';
import type { Job } from '../model/job.ts';
import type { Source } from '../model/source.ts';
import { oncePer } from '../quantities/memo.ts';
import { inEach, type Said } from '../say/say.ts';
import type { Rule } from './rule.ts';

interface JudgedParts {
  readonly code: JudgedRule;
  readonly severity: Severity;
  readonly ofAbsence?: true;
  readonly references?: readonly string[];
  readonly title: string;
  readonly why: Said;
  /** Whether it is reported for a unit that is still in work. */
  readonly isDue?: (unit: LimitVerdict) => boolean;
  readonly fix?: (at: Source) => Fix<Said> | null;
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
        report({ at: problem.at, ...statement(problem.say), why, data: problem.at });
      }
    },
  };
}

/** Of the procedure it has the figures: no rule on a job is shown more. */
const judged = oncePer((job: Job) => judgeJob(job.procedure, job, null));

/** What the certificate prints in one cell: first what is wrong, then what to do. */
export function statement(say: Say): { message: Said; help: Said } {
  const said = languages.map((language) => [language, say(wordsIn(language)).split(betweenSentences)] as const);
  return {
    message: inEach(Object.fromEntries(said.map(([language, [first]]) => [language, first!]))),
    help: inEach(Object.fromEntries(said.map(([language, [, ...others]]) => [language, others.join(' ')]))),
  };
}

/** Not behind the initial of a name. */
const betweenSentences = /(?<=[.?])(?<!(?:^|\s)\p{Lu}\.) (?=¿?\p{Lu})/u;
