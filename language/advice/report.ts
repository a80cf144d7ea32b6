import type { Job, Unit } from '../model/job.ts';
import { formatQuantity } from '../quantities/index.ts';
import { shimChoices } from '../rules/shim-choices.ts';
import { wordsIn } from '../words/index.ts';
import { advisedOf } from './advised.ts';
import { expectedWords, spreadWords, withSettled } from './sentences.ts';
import { matchedSets } from './set-shims.ts';

/** The command line speaks English. */
const words = wordsIn('en');

/** A unit as it is called in a report: place, number, serial. */
function called({ place, numberText, serial }: Unit): string {
  return ['unit', place, numberText, serial].filter((word) => word !== null).join(' ');
}

/** For each unit of a job one line: what to fit or to turn, that it stands, or what is not known yet. */
export function shimLines(job: Job): string[] {
  const { procedure } = job;
  const screws = procedure.family.adjusters.filter(({ rate }) => rate !== null);
  const shims = shimChoices(procedure);
  if (shims.length === 0 && screws.length === 0)
    return [
      `${procedure.name} chooses no part from a stock of the shop, and says of no screw what a turn brings: there is nothing to advise.`,
    ];
  const advised = advisedOf(job, words);
  const wanted =
    shims.length === 0
      ? `no reading of ${screws[0]!.sets} yet. Write into the job, for instance: ${screws[0]!.sets} 98 bar`
      : 'no reading with its shim yet. Write into the job, for instance: shim out 1.30 mm   opening 231 bar';
  return job.units.flatMap((unit) => {
    const own = advised.filter((one) => one.unit === unit);
    if (own.length === 0)
      return [unit.onHold === null ? `${called(unit)}: ${wanted}` : `${called(unit)}: on hold, ${unit.onHold}`];
    return own.map(({ test, reading, sentence }) => {
      const read = `${called(unit)}: ${test} ${formatQuantity(reading.value)}`;
      return sentence === null ? `${read}, inside its window: it stays` : `${read}. ${sentence}`;
    });
  });
}

/** Shims for the set: each unit, and the spread that comes of it. */
export function matchLines(job: Job): string[] {
  if (shimChoices(job.procedure).length === 0)
    return [`${job.procedure.name} chooses no part from a stock of the shop: there is nothing to match.`];
  const sets = matchedSets(job);
  if (sets.length === 0)
    return [
      'No unit of this job has a reading with its shim yet. Write into the job, for instance: shim out 1.30 mm   opening 231 bar',
    ];
  return sets.flatMap(({ number, test, stands, choices, spread }) => {
    const head = `${test}${number === null ? '' : `, ${number}`}: ${stands.length} ${stands.length === 1 ? 'unit' : 'units'}`;
    if (choices === null)
      return [
        `${head}. Not every one can be brought into its window from this drawer. handtight shim ${job.name} says which, and why.`,
      ];
    return [
      head,
      ...choices.map(({ stand, shim, expected }) => {
        const plain = expectedWords(words, expected, stand.low);
        const said = withSettled(words, plain, expected, stand.settling, stand.low);
        return shim === stand.now
          ? `  ${called(stand.unit)}: ${formatQuantity(shim)} stays: ${said}`
          : `  ${called(stand.unit)}: fit ${formatQuantity(shim)} (now ${formatQuantity(stand.now)}): expect ${said}`;
      }),
      `  spread ${spreadWords(words, spread!)}: no other choice from this drawer has less`,
    ];
  });
}
