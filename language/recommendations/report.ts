import { type ShimChoice, shimChoices } from '../analysis/shims.ts';
import { type Words, wordsIn } from '../i18n/index.ts';
import { type Reader, readerOf } from '../i18n/translate.ts';
import type { Job, Unit } from '../model/job.ts';
import { formatQuantity, kindOfUnit, window } from '../quantities/index.ts';
import { joined, listed, type Said, say } from '../say/say.ts';
import { buildRecommendations } from './advised.ts';
import { expectedWords, spreadWords, withSettled } from './sentences.ts';
import { type MatchedSet, matchedSets, type SetChoice } from './set-shims.ts';
import { allReadings, type UnknownReading } from './unit-shims.ts';

/** A unit as it is called in a report: place, number, serial. */
function called({ place, numberText, serial }: Unit): Said {
  return say`unit ${[place, numberText, serial].filter((word) => word !== null).join(' ')}`;
}

/** One line for each unit of a job: what to fit or to turn, that it is right as it is, or what is not known yet. */
export function shimLines(job: Job, reader: Reader = readerOf('en')): string[] {
  return shimSaid(job, wordsIn(reader.language)).map(reader.tell);
}

function shimSaid(job: Job, words: Words): Said[] {
  const { procedure } = job;
  const screws = procedure.family.adjusters.filter(({ rate }) => rate !== null);
  const shims = shimChoices(procedure);
  if (shims.length === 0 && screws.length === 0)
    return [
      say`${procedure.name} chooses no part from a stock of the shop, and gives no change per turn for any screw: there is nothing to advise.`,
    ];
  const advised = buildRecommendations(job, words);
  const unknown = allReadings(job).filter((one) => 'unknown' in one);
  return job.units.flatMap((unit) => {
    if (unit.onHold !== null) return [say`${called(unit)}: on hold, ${unit.onHold}`];
    const known = advised
      .filter((one) => one.unit === unit)
      .map(({ test, reading, sentence }) => {
        const read = joined([called(unit), joined([test, words.quantity(reading.value)])], ': ');
        return sentence === null ? say`${read}, inside its window: it stays` : joined([read, sentence], '. ');
      });
    const open = unknown.filter((one) => one.unit === unit).map((one) => joined([called(unit), whyWords(one)], ': '));
    if (known.length + open.length > 0) return [...known, ...open];
    return [
      shims.length > 0
        ? say`${called(unit)}: no part is chosen for its number`
        : say`${called(unit)}: no reading of ${screws[0]!.sets} yet. Write into the job, for instance: ${`${screws[0]!.sets} 98 bar`}`,
    ];
  });
}

/** Why nothing is advised, and what to write. */
function whyWords({ choice, unknown }: UnknownReading): Said {
  const { test } = choice;
  const [part] = choice.parts;
  const write = say`Write into the job, for instance: ${`${part!.name} out 1.30 mm   ${test} ${exampleOf(choice)}`}`;
  switch (unknown.why) {
    case 'no reading':
      return say`no reading of ${test} with its ${part!.name} yet. ${write}`;
    case 'no shim':
      return say`${test} is read, but the ${part!.name} that was in is not written down. ${write}`;
    case 'changed since':
      return say`the ${part!.name} was changed after ${test} was read: read it again with the one that is in, and write it behind it`;
    case 'no limit':
      return say`${test} has no limit for this part number: there is nothing to bring it to. Give one in the procedure`;
    case 'no aim':
      return say`the limit of ${test} has no end: there is nothing to aim at. Write “choose ${part!.name} to bring ${test} to” and a figure`;
    case 'no rate':
      return say`nothing says how far a ${part!.name} moves ${test}. Write “by” and a rate above zero after the choose, such as 96 bar per mm, a band with two ends, or one quantity per another`;
    case 'other kind':
      return say`${test} is read in another kind of unit than its limit has: look at the unit of the reading`;
    case 'several parts':
      return say`${listed(choice.parts.map(({ name }) => name))} are chosen together for ${test}: how the change is shared between them is the lead’s to say`;
    case 'slip': {
      const value = formatQuantity(unknown.value);
      const said = unknown.what === 'shim' ? say`a ${part!.name} of ${value}` : joined([test, value]);
      const meant = unknown.meant === null ? '' : say` Is it ${formatQuantity(unknown.meant)}?`;
      return say`${said} cannot be: nothing is worked out from it.${meant} Put it right in the job`;
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
export function matchLines(job: Job, reader: Reader = readerOf('en')): string[] {
  return matchSaid(job, wordsIn(reader.language)).map(reader.tell);
}

function matchSaid(job: Job, words: Words): Said[] {
  if (shimChoices(job.procedure).length === 0)
    return [say`${job.procedure.name} chooses no part from a stock of the shop: there is nothing to match.`];
  const sets = matchedSets(job);
  if (sets.length === 0)
    return [say`No unit of this job can be calculated yet. handtight shim ${job.name} says what is missing for each.`];
  return sets.flatMap((set) => setLines(job, set, words));
}

function setLines(job: Job, set: MatchedSet, words: Words): Said[] {
  const { number, test, stands, read, units, choices, across } = set;
  const name = number === null ? test : `${test}, ${number}`;
  const head = units === 1 ? say`${name}: ${read} of 1 unit read` : say`${name}: ${read} of ${units} units read`;
  if (choices === null)
    return [
      say`${head}. Not every one can be brought into its window from this drawer. handtight shim ${job.name} says which, and why.`,
    ];
  const opened = choices.filter(({ shims }) => shims !== null);
  const like = stands[0]!.like;
  const spread = spreadWords(words, set.spread!, like);
  const limit = across === null ? '' : say` (at most ${words.quantity(across.width)})`;
  const settled =
    set.settled === null ? '' : say`; ${spreadWords(words, set.settled, like)} when new springs have settled`;
  if (opened.length === 0)
    return [
      set.kept
        ? say`${head}, all inside their window, spread ${spread} measured${limit}${settled}: nothing to do`
        : say`${head}, all inside their window, spread ${spread} measured${limit}: this drawer has nothing that brings them nearer and lands surely. Put finer steps into it, or let the lead decide.`,
    ];
  return [
    head,
    ...choices.map((choice) => choiceLine(choice, words)),
    set.kept
      ? say`  spread ${spread} expected${limit}${settled}: no choice opens fewer, and none of those has less`
      : say`  spread ${spread} expected${limit}${settled}: no choice from this drawer keeps it, and none has less`,
  ];
}

function choiceLine({ stand, shims, expected }: SetChoice, words: Words): Said {
  const plain = expectedWords(words, expected, stand.like);
  const said = withSettled(words, plain, expected, stand.settling, stand.like);
  const now = words.quantity(stand.now);
  if (shims === null) return say`  ${called(stand.unit)}: ${now} stays, it stays closed: ${said} read`;
  const fit = listed(shims.map((shim) => words.quantity(shim)));
  return say`  ${called(stand.unit)}: fit ${fit} (now ${now}): expect ${said}`;
}
