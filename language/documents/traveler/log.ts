import { makersWords } from '../../i18n/fact-words.ts';
import type { Result, Unit } from '../../model/job.ts';
import type { Step, StepObject } from '../../model/procedure.ts';
import { sameSource } from '../../model/source.ts';
import { own } from '../../model/steps.ts';
import { capital } from '../../model/titles.ts';
import { byNumber } from '../figures/by-number.ts';
import { lineOf } from '../figures/limit-figure.ts';
import type { Fact, LogBlock, LogLine, LogUnit } from '../model.ts';
import { objectWords, specTitle } from '../names.ts';
import { setSize, shownSteps } from '../print-context.ts';
import type { LogGroup } from './arrangement.ts';
import type { SheetContext } from './context.ts';
import { type Recording, recordings, resultWords } from './rows.ts';
import { adviceFacts, stepBlock } from './steps.ts';

interface Column {
  readonly key: string;
  /** `9.3`; empty: it is of the repairs. */
  readonly step: string;
  readonly name: string;
  readonly unit: string;
  readonly fits: readonly Recording['fits'][];
  /** The first step that records it. */
  readonly of: Step;
}

/** Most lines of a unit; what is more has blank lines at the end. */
const mostLines = 6;
/** Lines that a page has room for under the head of the log. */
const room = { a4: 27, letter: 25 } as const;

/**
 * The log: units down, all that is set, tightened and tested across, and a line for each time; what the job has written down
 * is in it.
 */
export function logBlock(context: SheetContext, group: LogGroup): LogBlock {
  const { words, procedure } = context;
  const columns = columnsOf(context, group);
  const size = setSize(context);
  const needed =
    1 + group.repairs.reduce((sum, { tries }) => sum + (tries !== null && Number.isFinite(tries) ? tries : 3), 0);
  const lines = Math.max(2, Math.min(needed, mostLines, Math.floor(room[context.options.paper] / size)));
  const common = limitsInHead(context, columns);
  const units = context.columns.map((column, index): LogUnit => {
    const unit = context.units[index];
    const known = unit === undefined ? [] : knownLines(context, columns, unit);
    const limits = limitsOf(context, columns, common, unit);
    const said = [unit?.numberText ?? column.detail, unit?.serial ?? '', ...limits].filter((text) => text !== '');
    const count = Math.max(lines, known.length);
    return {
      place: column.place,
      odd: column.odd,
      lines: Array.from({ length: count }, (_, line): LogLine => {
        const cells = known[line] ?? [line === 0 ? words.log.asBuilt : '', ...columns.map(() => '')];
        return { head: headOf(column.place, said, line, count), cells: [...cells, ''] };
      }),
    };
  });
  const steps =
    group.stages.length === 1
      ? stageNumber(group.stages[0]!)
      : `${stageNumber(group.stages[0]!)}–${stageNumber(group.stages.at(-1)!)}`;
  return {
    kind: 'log',
    title: words.log.title({ stage: steps }),
    lead: words.log.lead,
    unit: words.units.place,
    columns: [
      { step: '', name: words.log.repair, unit: '' },
      ...columns.map(({ key, step, name, unit }) => ({
        step,
        name,
        unit:
          common.get(key) === undefined || unit === '' || common.get(key)!.includes(unit)
            ? (common.get(key) ?? unit)
            : `${unit} ${common.get(key)}`,
      })),
      { step: '', name: words.boxes.done, unit: '' },
    ],
    units,
    foot: needed > lines ? words.log.more({ lines: needed }) : words.log.last,
    needed,
    large: units.reduce((sum, { lines: list }) => sum + list.length, 0) > room[context.options.paper] / 2,
    fails: failFacts(context, group),
    advice: group.repairs.flatMap((repair) =>
      repair.steps.flatMap((step) => (step.verb === 'choose' ? adviceFacts(context, step) : [])),
    ),
    pressure: group.stages.some((stage) =>
      stage.steps.some((step) => context.figures.get(step)?.cautions?.pressure === true),
    ),
  };

  function stageNumber(stage: LogGroup['stages'][number]): string {
    return String(procedure.stages.indexOf(stage) + 1);
  }
}

/** The ways of the tests: a line for those of all tests that go the same way. */
function failFacts(context: SheetContext, { stages }: LogGroup): Fact[] {
  const ways = stages
    .flatMap((stage) => shownSteps(context, stage))
    .filter(({ verb }) => verb === 'test' || verb === 'set')
    .flatMap((step): Fact[] => {
      const path = stepBlock(context, step).fail;
      if (path === null || path.ways.every(({ stops }) => stops.length === 0)) return [];
      const ways = path.ways.map(({ mark, stops, end }) =>
        [mark, ...stops.map(({ number, tries }) => `${number}, ${tries}`), ...(end === '' ? [] : [end])].join(' → '),
      );
      return [{ label: step.number, text: [...ways, path.stop].join(' ').trim() }];
    });
  const same = new Map<string, string[]>();
  for (const { label, text } of ways) same.set(text, [...(same.get(text) ?? []), label]);
  return [...same].map(([text, labels]) => ({ label: labels.join(', '), text }));
}

/** What is over a line: the place over the first, the rest over the others, together where there are few lines. */
function headOf(place: string, said: readonly string[], line: number, count: number): string[] {
  const others = count - 1;
  if (others === 0) return [place, ...said];
  if (line === 0) return [place];
  const each = Math.ceil(said.length / others);
  return said.slice((line - 1) * each, line * each);
}

/** Blank lines for units that take more than the log has. */
export function moreLines(log: LogBlock, { words }: SheetContext, count: number): LogBlock {
  return {
    ...log,
    title: words.log.moreTitle,
    lead: '',
    fails: [],
    advice: [],
    units: [
      {
        place: '',
        odd: false,
        lines: Array.from({ length: count }, () => ({ head: [], cells: log.columns.map(() => '') })),
      },
    ],
    foot: '',
  };
}

function columnsOf(context: SheetContext, { stages, repairs }: LogGroup): Column[] {
  const { words } = context;
  const columns = new Map<string, Column>();
  const chooses = repairs.map((repair) => shownSteps(context, repair).filter(({ verb }) => verb === 'choose').length);
  // A repair changes one shim: which one its number says.
  const oneShim = chooses.every((count) => count <= 1);
  const add = (step: Step, inRepair: boolean) => {
    for (const { key, label, unit, fits } of recordings(context, context.figures.get(step)!)) {
      const plain = step.verb === 'choose' && oneShim ? key.split(' ')[0]! : key;
      const name =
        step.verb === 'choose' && oneShim
          ? plain === 'out'
            ? words.log.shimOut
            : words.log.shimIn
          : nameOf(context, step, label);
      const known = columns.get(plain);
      columns.set(plain, {
        key: plain,
        step: inRepair ? (known?.step ?? '') : step.number,
        name: known?.name ?? name,
        unit: known?.unit ?? unitOf(context, step, label, unit),
        fits: [...(known?.fits ?? []), fits],
        of: known?.of ?? step,
      });
    }
  };
  for (const repair of repairs)
    for (const step of shownSteps(context, repair)) if (step.verb !== 'across') add(step, true);
  for (const stage of stages)
    for (const step of shownSteps(context, stage))
      if (!['across', 'check'].includes(step.verb) && !(step.verb === 'measure' && step.limit !== null))
        add(step, false);
  const rank = ({ key }: Column) =>
    key.startsWith('out') || key.startsWith('in') ? 0 : key.startsWith('torque') ? 1 : 2;
  return [...columns.values()].sort((a, b) => rank(a) - rank(b));
}

function nameOf(context: SheetContext, step: Step, label: string): string {
  const { procedure } = context;
  const reading = step.verb === 'test' ? step.gate.test : own(step, 'reading');
  if (reading != null) return capital(specTitle(procedure, reading));
  if (step.verb === 'torque' || step.verb === 'lock') return capital(objectWords(context, step.objects).join(', '));
  return label;
}

function unitOf({ words }: SheetContext, step: Step, label: string, unit: string): string {
  if (step.verb === 'test') return unit === '' ? words.boxes.verdict : unit;
  return unit === '' ? (step.verb === 'torque' || step.verb === 'lock' ? label : '') : unit;
}

/** A limit that is the same for all units is in the head of its column. */
function limitsInHead(context: SheetContext, columns: readonly Column[]): ReadonlyMap<string, string> {
  return new Map(
    columns.flatMap((column) => {
      const texts = byNumber(context, (number) => limitText(context, column, number));
      return texts.length === 1 && texts[0]!.whose === '' ? [[column.key, texts[0]!.told]] : [];
    }),
  );
}

/** `spring`, or of several copies `6 springs`. */
function copiesWords(context: SheetContext, parts: readonly string[]): string {
  const { source } = context.procedure;
  const object = (name: string): StepObject => ({ kind: 'part', name, located: null, marksAligned: false, source });
  return objectWords(context, parts.map(object)).join(', ');
}

/** The others are beside the unit. */
function limitsOf(
  context: SheetContext,
  columns: readonly Column[],
  common: ReadonlyMap<string, string>,
  unit: Unit | undefined,
): string[] {
  if (unit === undefined || unit.number === null) return [];
  return columns.flatMap((column) => {
    const text = common.has(column.key) ? null : limitText(context, column, unit.number);
    return text === null ? [] : [`${column.step === '' ? column.name : column.step}: ${text}`];
  });
}

function limitText({ figures }: SheetContext, column: Column, number: string | null): string | null {
  if (column.key.startsWith('verdict')) return null;
  const { held, inTime, stretch } = figures.get(column.of)!;
  const own = held.find((one) => one.which === 'rebuilt' && (one.number === number || one.number === null));
  const figure = own?.figure ?? stretch ?? inTime;
  return figure === null || figure === undefined ? null : figure.value === '' ? lineOf(figure) : figure.value;
}

/** What is written down of a unit, as lines: a new one begins where something was changed after a test. */
function knownLines(context: SheetContext, columns: readonly Column[], unit: Unit): string[][] {
  const { words, recorded } = context;
  const lines: string[][] = [];
  let tested = true;
  let [first, shim] = ['', ''];
  const out = columns.findIndex(({ key }) => key === 'out') + 1;
  const line = () => {
    lines.push([lines.length === 0 ? words.log.asBuilt : '', ...columns.map(() => '')]);
    tested = false;
  };
  let before: Result | null = null;
  const isTest = (result: Result) => result.form === 'reading' || result.form === 'verdict';
  for (const result of unit.results) {
    if (result.form === 'shim' && !result.fitted && lines.length === 0) {
      first = resultWords(words, result);
      shim = first;
      recorded.take(result);
    }
    if ('asFound' in result && result.asFound) continue;
    if (result.form === 'renewed') {
      recorded.take(result);
      // All copies that one word of the job names.
      if (before !== null && sameSource(before.source, result.source)) continue;
      before = result;
      const copies = unit.results.filter((one) => one.form === 'renewed' && sameSource(one.source, result.source));
      if (tested) line();
      const cells = lines.at(-1)!;
      const part = copiesWords(
        context,
        copies.flatMap((one) => (one.form === 'renewed' ? one.part : [])),
      );
      cells[0] = [cells[0], words.log.renewed({ part }), ...makersWords(result)]
        .filter((word) => word !== '')
        .join(', ');
      continue;
    }
    // `torque holder 45 N·m` is one line of the job for all holders, and one box.
    const isCopy = before?.form === result.form && sameSource(before.source, result.source) && !isTest(result);
    before = result;
    if (isCopy) {
      recorded.take(result);
      continue;
    }
    const at = columns.findIndex(({ fits }) => fits.some((one) => one(result))) + 1;
    if (at === 0 || (result.form === 'shim' && !result.fitted && lines.length === 0)) continue;
    if (lines.length === 0 || (tested && !isTest(result)) || lines.at(-1)![at] !== '') line();
    const cells = lines.at(-1)!;
    cells[at] = resultWords(words, result);
    if (result.form === 'shim' && result.fitted && out > 0) {
      if (cells[out] === '') cells[out] = shim;
      shim = cells[at];
    }
    if (isTest(result)) tested = true;
    recorded.take(result);
  }
  // What came out while it was stripped is what lies in it as built.
  if (out > 0 && shim !== '') {
    if (lines.length === 0) line();
    if (lines[0]![out] === '') lines[0]![out] = first;
  }
  return lines;
}
