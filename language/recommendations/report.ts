import { type ShimChoice, shimChoices } from '../analysis/shims.ts';
import { wordsIn } from '../i18n/index.ts';
import type { Job, Unit } from '../model/job.ts';
import { formatQuantity, kindOfUnit, window } from '../quantities/index.ts';
import { buildRecommendations } from './advised.ts';
import { expectedWords, spreadWords, withSettled } from './sentences.ts';
import { type MatchedSet, matchedSets, type SetChoice } from './set-shims.ts';
import { allReadings, type UnknownReading } from './unit-shims.ts';

/** The command line speaks English. */
const words = wordsIn('en');

/** A unit as it is called in a report: place, number, serial. */
function called({ place, numberText, serial }: Unit): string {
  return ['unit', place, numberText, serial].filter((word) => word !== null).join(' ');
}

/** One line for each unit of a job: what to fit or to turn, that it is right as it is, or what is not known yet. */
export function shimLines(job: Job): string[] {
  const { procedure } = job;
  const screws = procedure.family.adjusters.filter(({ rate }) => rate !== null);
  const shims = shimChoices(procedure);
  if (shims.length === 0 && screws.length === 0)
    return [
      `${procedure.name} chooses no part from a stock of the shop, and gives no change per turn for any screw: there is nothing to advise.`,
    ];
  const advised = buildRecommendations(job, words);
  const unknown = allReadings(job).filter((one) => 'unknown' in one);
  return job.units.flatMap((unit) => {
    if (unit.onHold !== null) return [`${called(unit)}: on hold, ${unit.onHold}`];
    const known = advised
      .filter((one) => one.unit === unit)
      .map(({ test, reading, sentence }) => {
        const read = `${called(unit)}: ${test} ${formatQuantity(reading.value)}`;
        return sentence === null ? `${read}, inside its window: it stays` : `${read}. ${sentence}`;
      });
    const open = unknown.filter((one) => one.unit === unit).map((one) => `${called(unit)}: ${whyWords(one)}`);
    if (known.length + open.length > 0) return [...known, ...open];
    return [
      shims.length > 0
        ? `${called(unit)}: no part is chosen for its number`
        : `${called(unit)}: no reading of ${screws[0]!.sets} yet. Write into the job, for instance: ${screws[0]!.sets} 98 bar`,
    ];
  });
}

/** Why nothing is advised, and what to write. */
function whyWords({ choice, unknown }: UnknownReading): string {
  const { test } = choice;
  const [part] = choice.parts;
  const write = `Write into the job, for instance: ${part!.name} out 1.30 mm   ${test} ${exampleOf(choice)}`;
  switch (unknown.why) {
    case 'no reading':
      return `no reading of ${test} with its ${part!.name} yet. ${write}`;
    case 'no shim':
      return `${test} is read, but the ${part!.name} that was in is not written down. ${write}`;
    case 'changed since':
      return `the ${part!.name} was changed after ${test} was read: read it again with the one that is in, and write it behind it`;
    case 'no limit':
      return `${test} has no limit for this part number: there is nothing to bring it to. Give one in the procedure`;
    case 'no aim':
      return `the limit of ${test} has no end: there is nothing to aim at. Write “choose ${part!.name} to bring ${test} to” and a figure`;
    case 'no rate':
      return `nothing says how far a ${part!.name} moves ${test}. Write “by” and a rate above zero after the choose, such as 96 bar per mm, a band with two ends, or one quantity per another`;
    case 'other kind':
      return `${test} is read in another kind of unit than its limit has: look at the unit of the reading`;
    case 'several parts':
      return `${choice.parts.map(({ name }) => name).join(' and ')} are chosen together for ${test}: how the change is shared between them is the lead’s to say`;
    case 'slip': {
      const value = formatQuantity(unknown.value);
      const said = unknown.what === 'shim' ? `a ${part!.name} of ${value}` : `${test} ${value}`;
      const meant = unknown.meant === null ? '' : ` Is it ${formatQuantity(unknown.meant)}?`;
      return `${said} cannot be: nothing is worked out from it.${meant} Put it right in the job`;
    }
  }
}

/** A reading of the kind, somewhat as it may be. */
function exampleOf({ cases }: ShimChoice): string {
  const limit = cases.find((one) => one.limit !== null)?.limit ?? null;
  const { low, high, nominal } = limit === null ? { low: null, high: null, nominal: null } : window(limit);
  const figure = low ?? high ?? nominal;
  return figure === null || kindOfUnit(figure.unit) === 'pressure' ? '231 bar' : formatQuantity(figure);
}

/** Shims for the set: which units are opened, and the spread that comes of it. */
export function matchLines(job: Job): string[] {
  if (shimChoices(job.procedure).length === 0)
    return [`${job.procedure.name} chooses no part from a stock of the shop: there is nothing to match.`];
  const sets = matchedSets(job);
  if (sets.length === 0)
    return [`No unit of this job can be calculated yet. handtight shim ${job.name} says what is missing for each.`];
  return sets.flatMap((set) => setLines(job, set));
}

function setLines(job: Job, set: MatchedSet): string[] {
  const { number, test, stands, read, units, choices, across } = set;
  const head = `${test}${number === null ? '' : `, ${number}`}: ${read} of ${units} ${units === 1 ? 'unit' : 'units'} read`;
  if (choices === null)
    return [
      `${head}. Not every one can be brought into its window from this drawer. handtight shim ${job.name} says which, and why.`,
    ];
  const opened = choices.filter(({ shims }) => shims !== null);
  const like = stands[0]!.like;
  const spread = spreadWords(words, set.spread!, like);
  const limit = across === null ? '' : ` (at most ${formatQuantity(across.width)})`;
  const settled =
    set.settled === null ? '' : `; ${spreadWords(words, set.settled, like)} when new springs have settled`;
  if (opened.length === 0)
    return [
      set.kept
        ? `${head}, all inside their window, spread ${spread} measured${limit}${settled}: nothing to do`
        : `${head}, all inside their window, spread ${spread} measured${limit}: this drawer has nothing that brings them nearer and lands surely. Put finer steps into it, or let the lead decide.`,
    ];
  return [
    head,
    ...choices.map((choice) => choiceLine(choice)),
    `  spread ${spread} expected${limit}${settled}: ${
      set.kept
        ? 'no choice opens fewer, and none of those has less'
        : 'no choice from this drawer keeps it, and none has less'
    }`,
  ];
}

function choiceLine({ stand, shims, expected }: SetChoice): string {
  const plain = expectedWords(words, expected, stand.like);
  const said = withSettled(words, plain, expected, stand.settling, stand.like);
  const now = formatQuantity(stand.now);
  if (shims === null) return `  ${called(stand.unit)}: ${now} stays, it stays closed: ${said} read`;
  const fit = shims.map((shim) => formatQuantity(shim)).join(' and ');
  return `  ${called(stand.unit)}: fit ${fit} (now ${now}): expect ${said}`;
}
