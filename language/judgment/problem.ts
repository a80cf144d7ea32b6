import type { Source } from '../model/source.ts';
import type { Say } from './say.ts';

/** The rules that report in the text of a job what keeps it from being certified. */
export type JudgedRule =
  | 'result-fails'
  | 'result-in-guard-band'
  | 'result-from-before'
  | 'result-unexplained'
  | 'spread-too-wide'
  | 'tool-not-written-down'
  | 'tool-not-in-date'
  | 'calibration-not-dated'
  | 'done-on-wrong-day'
  | 'serial-not-written-down'
  | 'not-proven'
  | 'nobody-answers';

/** What keeps a unit from being certified. */
export interface Problem {
  /** Null: it is reported where the job is read, or nobody knows here which day it is. */
  readonly rule: JudgedRule | 'implausible-result' | null;
  /** Where it is written, or would be. */
  readonly at: Source;
  readonly say: Say;
}

export function problem(rule: Problem['rule'], at: Source, say: Say): Problem {
  return { rule, at, say };
}
