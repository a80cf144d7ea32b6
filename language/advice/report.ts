import type { Job, Unit } from '../model/job.ts';
import { formatQuantity } from '../quantities/index.ts';
import { shimChoices } from '../rules/shim-choices.ts';
import { adviceSentence, expectedWords } from './sentences.ts';
import { matchedSets } from './set-shims.ts';
import { adviceFor, unitStands } from './unit-shims.ts';

/** A unit as it is called in a report: place, number, serial. */
function called({ place, numberText, serial }: Unit): string {
  return ['unit', place, numberText, serial].filter((word) => word !== null).join(' ');
}

/** For each unit of a job one line: what to fit, that it stands, or what is not known yet. */
export function shimLines(job: Job): string[] {
  const stands = unitStands(job);
  if (shimChoices(job.procedure).length === 0)
    return [`${job.procedure.name} chooses no part from a stock of the shop: there is nothing to advise.`];
  return job.units.flatMap((unit) => {
    const own = stands.filter((stand) => stand.unit === unit);
    if (own.length === 0)
      return [
        unit.onHold === null
          ? `${called(unit)}: no reading with its shim yet. Write into the job, for instance: shim out 1.30 mm   opening 231 bar`
          : `${called(unit)}: on hold, ${unit.onHold}`,
      ];
    return own.map((stand) => {
      const read = `${called(unit)}: ${stand.choice.test} ${formatQuantity(stand.reading.value)}`;
      const advice = adviceFor(stand);
      return advice === null
        ? `${read}, inside its window: it stays`
        : `${read}. ${adviceSentence(advice, stand.now, stand.low)}`;
    });
  });
}

/** Shims for the set: each unit, and the spread that comes of it. */
export function matchLines(job: Job): string[] {
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
        const words = expectedWords(expected, stand.low);
        return shim === stand.now
          ? `  ${called(stand.unit)}: ${formatQuantity(shim)} stays: ${words}`
          : `  ${called(stand.unit)}: fit ${formatQuantity(shim)} (now ${formatQuantity(stand.now)}): expect ${words}`;
      }),
      `  spread ${expectedWords(spread!, stands[0]!.low)}: no other choice from this drawer has less`,
    ];
  });
}
