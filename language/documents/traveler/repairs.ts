import type { Repair, Stage, Step } from '../../model/procedure.ts';
import { failEntries, own } from '../../model/steps.ts';
import { capital, titleOf } from '../../model/titles.ts';
import type { Fact, Lookup, RepairColumn, RepairHead, RepairsBlock, StepBlock } from '../model.ts';
import { repairNumber } from '../names.ts';
import { shownSteps } from '../print-context.ts';
import type { SheetContext } from './context.ts';
import { backText, repairId, repairWords, triesText } from './fail-path.ts';
import { sectionMessages } from './safety.ts';
import { stationFacts } from './station-facts.ts';
import { adviceFacts, allowedHere, stepBlock } from './steps.ts';

/** Repairs one after the other; those that begin and end alike are beside each other, and what they share is said once. */
export function repairBlocks(context: SheetContext, repairs: readonly Repair[], at: Stage): RepairsBlock[] {
  const made = repairs.map((repair) => ({
    repair,
    steps: shownSteps(context, repair).map((step) => ({ step, block: stepBlock(context, step) })),
  }));
  return alike(made).map((group) => blockOf(context, group, at));
}

interface Made {
  readonly repair: Repair;
  readonly steps: readonly { readonly step: Step; readonly block: StepBlock }[];
}

/** Fewest steps that are worth a column. */
const leastShared = 4;

/** Neighbors that begin alike and end alike. */
function alike(made: readonly Made[]): Made[][] {
  const groups: Made[][] = [];
  for (const one of made) {
    const last = groups.at(-1);
    const { head, tail } = last === undefined ? { head: 0, tail: 0 } : shared([...last, one]);
    if (last !== undefined && head > 0 && tail > 0 && head + tail >= leastShared) last.push(one);
    else groups.push([one]);
  }
  return groups;
}

/** How many steps all of them begin with, and how many they end with. */
function shared(group: readonly Made[]): { readonly head: number; readonly tail: number } {
  const texts = group.map(({ steps }) => steps.map(({ block }) => plain(block)));
  const least = Math.min(...texts.map(({ length }) => length));
  const same = (at: (list: readonly string[]) => string | undefined) => new Set(texts.map(at)).size === 1;
  let head = 0;
  while (head < least && same((list) => list[head])) head++;
  let tail = 0;
  while (head + tail < least && same((list) => list[list.length - 1 - tail])) tail++;
  return { head, tail };
}

/** All that a step says but its number. */
function plain({ id: _, number: _n, key: _k, line: _l, ...step }: StepBlock): string {
  return JSON.stringify(step);
}

function blockOf(context: SheetContext, group: readonly Made[], at: Stage): RepairsBlock {
  const all = group.flatMap(({ steps }) => steps);
  const heads = group.map(({ repair }) => headOf(context, repair));
  const [first] = heads;
  const back = heads.every((head) => head.back === first!.back) ? first!.back : '';
  return {
    kind: 'repairs',
    repairs: back === '' ? heads : heads.map((head) => ({ ...head, back: '' })),
    back: capital(back),
    facts: stationFacts(
      context,
      group.map(({ repair }) => repair),
    ),
    warnings: sectionMessages(
      context,
      group.map(({ repair }) => repair),
      false,
      // On the page beside or above.
      [at],
    ).warnings,
    columns: withShares(group.length === 1 ? columnsOfOne(group[0]!) : columnsOf(context, group)),
    lookups: distinct(all.flatMap(({ block }) => block.lookups)),
    // Where there is a log it is beside the lines.
    advice: context.arrangement.groups.some(({ repairs }) => repairs.includes(group[0]!.repair))
      ? []
      : distinct(all.flatMap(({ step }): Fact[] => (step.verb === 'choose' ? adviceFacts(context, step) : []))),
    pressure: all.some(({ block }) => block.pressure),
  };

  function distinct<T extends Lookup | Fact>(list: readonly T[]): T[] {
    return [...new Map(list.map((one) => [JSON.stringify(one), one])).values()];
  }
}

/** `For each cylinder that failed. Then measure only what failed again.` */
function placesText({ procedure, words }: SheetContext, repair: Repair): string[] {
  const places = procedure.family.places.find(({ name }) => name === repair.eachOf);
  const sending = procedure.stages
    .flatMap(({ steps }) => steps)
    .filter((step) => own(step, 'plan') != null)
    .flatMap(failEntries)
    .filter((entry) => entry.repair === repair.name);
  return [
    ...(places === undefined ? [] : [words.plan.failed({ place: words.inSentence(titleOf(places)) })]),
    ...(sending.length === 0
      ? []
      : [sending.some(({ allAgain }) => allAgain) ? words.plan.allAgain : words.plan.failedAgain]),
  ];
}

function headOf(context: SheetContext, repair: Repair): RepairHead {
  return {
    id: repairId(context, repair.name),
    number: repairNumber(context.procedure, repair.name),
    title: capital(repairWords(context, repair.name)),
    tries: triesText(context, repair.tries),
    back: backText(context, repair.name),
    texts: [...placesText(context, repair), ...allowedHere(context.words, repair.allow)],
    line: { file: repair.source.file, line: repair.source.range.start.line },
  };
}

/** Three columns: what they begin with, what each does, what they end with. */
function columnsOf({ words, procedure }: SheetContext, group: readonly Made[]): RepairColumn[] {
  const { head, tail } = shared(group);
  const [first] = group;
  const numbers = group.map(({ repair }) => repairNumber(procedure, repair.name));
  const sharedParts = (said: (fillings: { repairs: string }) => string, from: number, to: number) => {
    const rows = first!.steps.slice(from, to).map(({ block }, index) => ({
      block,
      // Counted from the end of each where they end alike.
      numbers: group.map(
        ({ steps }) => steps[from === 0 ? index : steps.length - first!.steps.length + from + index]!.block.number,
      ),
    }));
    return labeled(rows, numbers).map(({ stems, steps }, index) => ({
      title:
        index === 0 || stems.length > 0
          ? index === 0
            ? said({ repairs: (stems.length > 0 ? stems : numbers).join(' ') })
            : stems.join(' ')
          : '',
      steps,
    }));
  };
  return [
    { share: 1, parts: sharedParts(words.repairs.begin, 0, head) },
    {
      share: 1,
      parts: group.map(({ steps }) => ({
        title: '',
        steps: steps.slice(head, steps.length - tail).map(({ block }) => ({ label: block.number, step: block })),
      })),
    },
    { share: 1, parts: sharedParts(words.repairs.end, first!.steps.length - tail, first!.steps.length) },
  ];
}

interface Shared {
  readonly block: StepBlock;
  /** Its number in each of the repairs. */
  readonly numbers: readonly string[];
}

/**
 * What shared steps are called: letters of one number in each repair (`R1.4a`, `R2.5a`) by the letter, under the numbers;
 * others by what follows the number of the repair where that is the same, else by all their numbers.
 */
function labeled(rows: readonly Shared[], repairs: readonly string[]) {
  const parts: { key: string; stems: readonly string[]; steps: { label: string; step: StepBlock }[] }[] = [];
  for (const { block, numbers } of rows) {
    const split = numbers.map((number) => /^(.*\d)([a-z]+)$/u.exec(number));
    const letters = new Set(split.map((one) => one?.[2]));
    const lettered = letters.size === 1 && !letters.has(undefined);
    const stems = lettered ? split.map((one) => one![1]!) : [];
    const rests = new Set(numbers.map((number, at) => number.slice(repairs[at]!.length + 1)));
    // Under the numbers of the repairs what follows them is enough.
    const isFirst = parts.every(({ key: other }) => other === '');
    const label = lettered ? split[0]![2]! : isFirst && rests.size === 1 ? [...rests][0]! : numbers.join(' ');
    const key = stems.join(' ');
    const last = parts.at(-1);
    if (last?.key === key) last.steps.push({ label, step: block });
    else parts.push({ key, stems, steps: [{ label, step: block }] });
  }
  return parts;
}

/** Columns that are about as high: as wide as their words are many, within reason. */
function withShares(columns: readonly RepairColumn[]): RepairColumn[] {
  const sizes = columns.map(({ parts }) =>
    parts.reduce((sum, { steps }) => sum + steps.reduce((all, { step }) => all + 30 + inlineLength(step), 0), 0),
  );
  const mean = sizes.reduce((sum, size) => sum + size, 0) / Math.max(1, sizes.length);
  return columns.map((column, index) => ({ ...column, share: Math.min(1.35, Math.max(0.75, sizes[index]! / mean)) }));
}

function inlineLength({ sentence, facts, notes, cautions, limits }: StepBlock): number {
  return [...sentence, ...facts, ...notes, ...cautions].reduce(
    (sum, { text }) => sum + text.length,
    60 * limits.length,
  );
}

/** Most columns of one repair. */
const most = 3;

/** One repair, its steps in columns that are about as long. */
function columnsOfOne({ steps }: Made): RepairColumn[] {
  const sizes = steps.map(({ block }) => plain({ ...block, lookups: [] }).length);
  const all = sizes.reduce((sum, size) => sum + size, 0);
  const count = Math.min(most, Math.max(1, Math.ceil(steps.length / 3)));
  const columns: Made['steps'][number][][] = Array.from({ length: count }, () => []);
  let passed = 0;
  steps.forEach((one, index) => {
    columns[Math.min(count - 1, Math.floor(((passed + sizes[index]! / 2) / all) * count))]!.push(one);
    passed += sizes[index]!;
  });
  return columns
    .filter((column) => column.length > 0)
    .map((column) => ({
      share: 1,
      parts: [{ title: '', steps: column.map(({ block }) => ({ label: block.number, step: block })) }],
    }));
}
