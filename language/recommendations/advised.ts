import type { Words } from '../i18n/index.ts';
import type { Job, ReadingResult, Unit } from '../model/job.ts';
import { adviceSentence, turnsSentence } from './sentences.ts';
import { shareDrawer } from './shared-drawer.ts';
import { screwReadings } from './unit-screws.ts';
import { unitReadings } from './unit-shims.ts';

/** What to do in a unit for one of its readings. */
export interface Recommendation {
  readonly unit: Unit;
  /** Name of the test or reading. */
  readonly test: string;
  /** The shim that is chosen for it, or the screw that sets it. */
  readonly part: string;
  readonly reading: ReadingResult;
  /** Null: the reading is inside its window, and nothing is to be done. */
  readonly sentence: string | null;
}

/** What to fit, and how far to turn, in the units of a job by their last readings. */
export function buildRecommendations(job: Job, words: Words): Recommendation[] {
  const stands = unitReadings(job);
  const given = shareDrawer(stands);
  const shims = stands.map((stand): Recommendation => {
    const { unit, choice, reading, now, like, settling } = stand;
    const { advice, taken } = given.get(stand)!;
    const told = advice === null ? null : adviceSentence(words, advice, { now, like, settling, most: choice.most });
    const sentence = told !== null && taken ? words.advice.taken({ sentence: told }) : told;
    return { unit, test: choice.test, part: choice.parts[0]!.name, reading, sentence };
  });
  const screws = screwReadings(job).map(({ unit, adjuster, reading, turns, low, settling }): Recommendation => {
    const sentence = turns === null ? null : turnsSentence(words, turns, low, settling);
    return { unit, test: adjuster.sets, part: adjuster.part, reading, sentence };
  });
  return [...shims, ...screws];
}
