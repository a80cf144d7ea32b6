import { languages, wordsIn } from '../i18n/words.ts';
import { judgeJob } from '../judgment/judge.ts';
import type { JudgedJob, LimitVerdict } from '../judgment/judged.ts';
import type { JudgedRule } from '../judgment/problem.ts';
import type { Say } from '../judgment/say.ts';
import type { Fix, Severity } from '../model/diagnostic.ts';
import type { Job } from '../model/job.ts';
import type { Source } from '../model/source.ts';
import { oncePer } from '../quantities/memo.ts';
import { inEach, type Said } from '../say/say.ts';
import type { Rule } from './rule.ts';

interface JudgedParts {
  readonly code: string;
  /** What it reports; without it what is called as the rule is. */
  readonly of?: readonly JudgedRule[];
  readonly severity: Severity;
  readonly ofAbsence?: true;
  readonly references?: readonly string[];
  readonly title: string;
  readonly why: Said;
  /** Whether it is reported yet: of a unit that is still in work much is missing. `unit` is null where it concerns the set. */
  readonly isDue?: (unit: LimitVerdict | null, job: JudgedJob) => boolean;
  readonly fix?: (at: Source) => Fix<Said> | null;
}

/**
 * A rule that reports, in the text of a job, what keeps a unit from being certified; the certificate says the same in its own
 * language. Nobody knows here which day it is: what is in the future, only the certificate says.
 */
export function judgedRule({ code, of = [code as JudgedRule], why, isDue, ...rule }: JudgedParts): Rule<Source> {
  return {
    code,
    since: '0.2.0',
    ...rule,
    job(job, report) {
      const all = judged(job);
      for (const { problem, unit } of all.missing) {
        if (problem === null || !of.some((one) => one === problem.rule)) continue;
        if (isDue?.(all.units.find((one) => one.unit === unit) ?? null, all) === false) continue;
        report({ at: problem.at, ...statement(problem.say), why, data: problem.at });
      }
    },
  };
}

/** Whether a unit is said to be done, or every unit where it concerns the set. */
export function isSigned(unit: LimitVerdict | null, { units }: JudgedJob): boolean {
  const all = unit === null ? units : [unit];
  return all.length > 0 && all.every((one) => one.unit.results.at(-1)?.form === 'done');
}

/** Whether a unit is signed, and not only as one that was taken apart. */
export function isTested(unit: LimitVerdict, job: JudgedJob): boolean {
  return isSigned(unit, job) && unit.outcomes.some(({ reading, verdict }) => reading !== null || verdict !== null);
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
