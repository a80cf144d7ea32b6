import { existsSync } from 'node:fs';
import { join } from 'node:path';
import pc from 'picocolors';
import { findMissing } from '../../language/documents/certificate/index.ts';
import { unfinishedOf } from '../../language/judgment/unfinished.ts';
import type { Job } from '../../language/model/job.ts';
import { partWords } from '../../language/model/titles.ts';
import { asDifference } from '../../language/quantities/convert.ts';
import { convertDifference } from '../../language/quantities/index.ts';
import { readQuantity } from '../../language/quantities/read-quantity.ts';
import type { Difference, UnitName } from '../../language/quantities/types.ts';
import { nearest } from '../../language/syntax/nearest.ts';
import { listName } from '../host/files/records.ts';
import { type Ledger, openLedger } from '../host/ledger/ledger.ts';
import {
  type AffectedBy,
  affected,
  history,
  type Learned,
  type LearnedRate,
  learned,
  namesIn,
  type Visit,
} from '../host/ledger/questions.ts';
import type { Row } from '../host/ledger/sqlite.ts';
import { resultText } from '../host/ledger/visits.ts';
import { findingsOn } from './bearing.ts';
import { closedIn } from './closed.ts';
import { heading, lines, type Page, pageTable, plots, writePage } from './page/page.ts';
import type { Plot, PlotPoint } from './page/plot.ts';
import type { RowFormat } from './row-formats.ts';
import { type Column, sayRows } from './rows.ts';
import { note, say } from './say.ts';
import { UsageError } from './usage-error.ts';
import { openQuietly } from './workspace.ts';

export interface AskOptions {
  readonly format: RowFormat;
  /** Folder of the records. */
  readonly records: string;
  /** File to write the answer to as a page; undefined: it is printed. */
  readonly page?: string | undefined;
}

export interface AffectedOptions extends AskOptions, AffectedBy {
  readonly within?: string;
}

export interface OpenOptions extends AskOptions {
  readonly workspace: string;
  /** ISO date that stands for today. */
  readonly today: string;
}

/** Prints every visit of a unit. Exit code: 0 there are some; 1 there is none. */
export async function historyCommand(word: string, { format, records, page }: AskOptions): Promise<number> {
  const ledger = await asked(records);
  try {
    const found = history(ledger, word);
    if (found === null) {
      say(`Nothing is recorded of ${word}: no closed job has it as serial, number, customer or renewed part.\n`);
      return 1;
    }
    if (page !== undefined) writePage(page, historyPage(word, found));
    else if (format === 'text') {
      if (found.by !== 'serial') note(`${word} is a ${found.by}: all units of it are listed.`);
      say(found.visits.map(visitText).join('\n'));
    } else
      sayRows(
        found.visits.flatMap(({ unit, results }) =>
          (results.length === 0 ? [{}] : results).map((result) => ({ ...unit, ...result })),
        ),
        historyColumns,
        format,
      );
    return 0;
  } finally {
    ledger.close();
  }
}

const key = (name: string): Column<Row> => ({ key: name, head: null, value: (row) => row[name] });

const historyColumns: readonly Column<Row>[] = [
  ...[
    'serial',
    'number',
    'job',
    'place',
    'customer',
    'received',
    'closed',
    'procedure',
    'revision',
    'issue',
    'on_hold',
  ],
  ...[
    'remarks',
    'renewed',
    'batches',
    'facts',
    'role',
    'name',
    'value',
    'value_unit',
    'passed',
    'limited',
    'margin',
    'tool',
    'person',
    'day',
  ],
  ...['note', 'record'],
].map(key);

/** A visit as text, a line for each thing. */
export function visitText({ unit, results }: Visit): string {
  return [
    `${pc.bold(visitTitle(unit))}\n`,
    ...visitFacts(unit).map((line) => `  ${line}\n`),
    ...results.map((one) => `  ${resultText(one)}\n`),
  ].join('');
}

function visitTitle(unit: Row): string {
  const title = unit.title === unit.job ? '' : ` “${unit.title}”`;
  return `${unit.closed}  job ${unit.job}${title}, unit ${unit.place}: ${unit.number} ${unit.serial ?? '(no serial)'}`;
}

function visitFacts(unit: Row): string[] {
  return [
    ['customer', unit.customer],
    ['received', unit.received],
    ['procedure', `${unit.procedure} revision ${unit.revision}`],
    ['on hold', unit.on_hold],
    ['as found', unit.remarks],
    ['renewed', unit.renewed],
    ['batches', unit.batches],
    ['on record', unit.facts],
    ['done by', unit.done],
    ['certificate', `${unit.record}, issue ${unit.issue}`],
  ].flatMap(([name, value]) => (value === null || value === '' ? [] : [`${name}: ${value}`]));
}

/** Each visit with its results, and how each reading went from visit to visit. */
function historyPage(word: string, { by, visits }: History): Page {
  const of = (role: string, name: string) =>
    visits.flatMap(({ unit, results }) =>
      results.flatMap((one) =>
        one.role === role && one.name === name && one.value !== null
          ? [{ on: String(one.day ?? unit.closed), value: Number(one.value) }]
          : [],
      ),
    );
  const read = visits.flatMap(({ results }) => results.filter((one) => one.role === 'as left' && one.value !== null));
  const drawn = [...new Map(read.map((one) => [one.name, one.value_unit])).entries()].map(
    ([name, unit]): Plot => ({
      title: `${name}, visit by visit`,
      unit: String(unit),
      form: by === 'serial' ? 'line' : 'points',
      series: ['as found', 'as left'].map((role) => ({ name: role, points: of(role, String(name)) })),
    }),
  );
  const jobs = new Set(visits.map(({ unit }) => unit.job)).size;
  return {
    title: `History of ${by} ${word}`,
    about: `${jobs} ${jobs === 1 ? 'job' : 'jobs'}, the last first.`,
    blocks: [
      ...(visits.length > 1 ? plots(drawn) : []),
      ...visits.flatMap(({ unit, results }) => [
        heading(visitTitle(unit)),
        lines(visitFacts(unit)),
        pageTable(results, visitColumns),
      ]),
    ],
  };
}

type History = NonNullable<ReturnType<typeof history>>;

const figureWith = (name: string, unit: string) => (row: Row) =>
  row[name] === null ? '' : `${row[name]} ${row[unit]}`;

const visitColumns: readonly Column<Row>[] = [
  {
    key: 'role',
    head: 'what',
    value: ({ name, role }) =>
      role === 'torque' ? `${name} torque` : `${name}, ${String(role).replace(/^shim /u, '')}`,
  },
  {
    key: 'value',
    head: 'reading',
    value: (row) => row.value ?? row.note,
    shown: (row) => (row.value === null ? String(row.note ?? '') : figureWith('value', 'value_unit')(row)),
  },
  { key: 'passed', head: 'verdict', value: (row) => (row.passed === null ? '' : row.passed === 1 ? 'pass' : 'fail') },
  { key: 'limited', head: 'limit', value: (row) => row.limited },
  { key: 'tool', head: 'tool', value: (row) => [row.tool, row.watched].filter((one) => one !== null).join(', ') },
  { key: 'person', head: 'by', value: (row) => row.person },
  { key: 'day', head: 'day', value: (row) => row.day },
];

/** Lists what was judged with a tool, by somebody, or by a procedure. Exit code: 0, also where nothing was. */
export async function affectedCommand({ within, ...options }: AffectedOptions): Promise<number> {
  const { tool, by, batch, procedure, revision, from, to, format, records, page } = options;
  if (tool === undefined && by === undefined && batch === undefined && procedure === undefined)
    throw new UsageError(
      'Say what is in question: --tool PG-400, --batch L-7, --by "…" or --procedure NAME, and the days with --from and --to.',
    );
  if (revision !== undefined && procedure === undefined)
    throw new UsageError('A revision is one of a procedure: give --procedure NAME too.');
  if (from !== undefined && to !== undefined && from > to)
    throw new UsageError(`--from ${from} is after --to ${to}. Turn them around.`);
  const least = within === undefined ? null : difference(within);
  const ledger = await asked(records);
  try {
    const all = affected(ledger, { tool, by, batch, procedure, revision, from, to });
    if (all.length === 0) unknown(ledger, { tool, by, batch, procedure });
    const rows = least === null ? all : all.filter((row) => isWithin(row, least));
    if (page !== undefined) {
      writePage(page, affectedPage(rows, options));
      return 0;
    }
    if (format !== 'text' || rows.length > 0) sayRows(rows, affectedColumns, format);
    if (format === 'text') say(`${summary(rows)}\n`);
    return 0;
  } finally {
    ledger.close();
  }
}

/** How near to its limit each reading was, day by day, by unit of measure: a gauge that drifts shows. */
function affectedPage(rows: readonly Row[], of: AffectedBy & { readonly within?: string }): Page {
  const figures = rows.filter(({ margin }) => typeof margin === 'number');
  const units = [...new Set(figures.map((row) => String(row.value_unit)))];
  const names = (unit: string) => [
    ...new Set(figures.filter((row) => row.value_unit === unit).map((row) => String(row.name))),
  ];
  const asked = Object.entries(of).filter(([name]) =>
    ['tool', 'by', 'batch', 'procedure', 'revision', 'from', 'to', 'within'].includes(name),
  );
  return {
    title: 'What was judged so',
    about: `${asked.map(([name, value]) => `${name} ${value}`).join(', ')}. ${summary(rows)}`,
    blocks: [
      ...plots(
        units.map((unit) => ({
          title: 'Inside its limit by',
          unit,
          form: 'points',
          from: 0,
          series: names(unit).map((name) => ({
            name,
            points: figures
              .filter((row) => row.value_unit === unit && row.name === name && row.day !== null)
              .map((row) => ({ on: String(row.day), value: Number(row.margin) })),
          })),
        })),
      ),
      pageTable(rows, affectedColumns),
    ],
  };
}

const affectedColumns: readonly Column<Row>[] = [
  { key: 'day', head: 'day', value: (row) => row.day },
  { key: 'job', head: 'job', value: (row) => row.job },
  { key: 'customer', head: 'customer', value: (row) => row.customer },
  { key: 'place', head: 'unit', value: (row) => row.place },
  { key: 'number', head: 'number', value: (row) => row.number },
  { key: 'serial', head: 'serial', value: (row) => row.serial },
  { key: 'role', head: null, value: (row) => row.role },
  { key: 'name', head: 'what', value: (row) => row.name, shown: (row) => `${row.role} ${row.name}` },
  {
    key: 'value',
    head: 'reading',
    value: (row) => row.value,
    shown: (row) => (row.value === null ? '' : `${row.value} ${row.value_unit}`),
  },
  key('value_unit'),
  { key: 'limit', head: 'limit', value: (row) => row.limited },
  {
    key: 'margin',
    head: 'inside by',
    value: (row) => row.margin,
    shown: (row) => (row.margin === null ? '' : `${row.margin} ${row.value_unit}`),
  },
  { key: 'tool', head: 'tool', value: (row) => row.tool },
  { key: 'by', head: 'by', value: (row) => row.person },
  key('procedure'),
  key('revision'),
  key('record'),
];

function summary(rows: readonly Row[]): string {
  const count = (name: string, one: string, many: string) => {
    const different = new Set(rows.map((row) => row[name])).size;
    return `${different} ${different === 1 ? one : many}`;
  };
  if (rows.length === 0) return 'Nothing was judged so.';
  const units = new Set(rows.map(({ job, place }) => `${job} ${place}`)).size;
  return `${rows.length} ${rows.length === 1 ? 'result' : 'results'} of ${units} ${units === 1 ? 'unit' : 'units'}, ${count('job', 'job', 'jobs')}, ${count('customer', 'customer', 'customers')}.`;
}

function difference(text: string): Difference {
  const read = readQuantity(text);
  if ('quantity' in read) return asDifference(read.quantity);
  throw new UsageError(
    `--within ${text} cannot be read: ${'problem' in read ? read.problem : 'write a figure and its unit, such as "3 bar".'}`,
  );
}

/** A verdict without a figure may have been wrong by anything. */
function isWithin({ margin, value, value_unit: unit }: Row, least: Difference): boolean {
  if (typeof margin !== 'number') return value === null;
  const most = convertDifference(least, unit as UnitName);
  return most !== null && margin <= most.valueOf();
}

/** Nothing was found of a name that is nowhere: it may be misspelled. */
function unknown(ledger: Ledger, names: Pick<AffectedBy, 'tool' | 'by' | 'batch' | 'procedure'>) {
  for (const what of ['tool', 'by', 'batch', 'procedure'] as const) {
    const name = names[what];
    if (name === undefined) continue;
    const all = namesIn(ledger, what).flatMap((one) => (what === 'batch' ? one.split(', ') : one));
    if (all.includes(name)) continue;
    const near = nearest(name, all);
    note(`No closed job has --${what} ${name}.${near.length > 0 ? ` Did you mean ${near.join(' or ')}?` : ''}`);
  }
}

export interface LearnOptions extends AskOptions {
  readonly procedure?: string;
  readonly from?: string;
  readonly to?: string;
}

/** Shows month by month how many units passed at once, how they came in, and what came back. Exit code 0. */
export async function learnCommand({ format, records, page, ...of }: LearnOptions): Promise<number> {
  const ledger = await asked(records);
  try {
    const rows = learned(ledger, of);
    if (page !== undefined) writePage(page, learnPage(rows, of));
    else if (rows.length === 0 && format === 'text') say('No unit was closed so.\n');
    else sayRows(rows, learnColumns, format);
    return 0;
  } finally {
    ledger.close();
  }
}

const share = (part: number, whole: number) => (whole === 0 ? null : Math.round((100 * part) / whole));

/** A share as a figure and a bar of ten. */
function bar(percent: number | null): string {
  return percent === null
    ? ''
    : `${String(percent).padStart(3)} % ${'█'.repeat(Math.round(percent / 10)).padEnd(10, '·')}`;
}

/** `96.2 ±1.4 bar per mm`: the rate with its standard error. */
function rateWords({ slope, error, unit }: LearnedRate): string {
  return `${slope.toFixed(1)} ±${error.toFixed(1)} ${unit} per mm`;
}

const learnColumns: readonly Column<Learned>[] = [
  { key: 'month', head: 'month', value: ({ month }) => month },
  { key: 'procedure', head: 'procedure', value: ({ procedure }) => procedure },
  { key: 'units', head: 'units', value: ({ units }) => units },
  {
    key: 'first_pass',
    head: 'passed at once',
    value: ({ firstPass, units }) => share(firstPass, units),
    shown: ({ firstPass, units }) => bar(share(firstPass, units)),
  },
  {
    key: 'found_passed',
    head: 'as found still good',
    value: ({ foundPassed, found }) => share(foundPassed, found),
    shown: ({ foundPassed, found }) => bar(share(foundPassed, found)),
  },
  {
    key: 'shim_rate',
    head: 'a shim brings',
    value: ({ rate }) => (rate === null ? null : Number(rate.slope.toFixed(2))),
    shown: ({ rate }) => (rate === null ? '' : rateWords(rate)),
  },
  { key: 'shim_rate_error', head: null, value: ({ rate }) => (rate === null ? null : Number(rate.error.toFixed(2))) },
  { key: 'shim_rate_unit', head: null, value: ({ rate }) => (rate === null ? null : `${rate.unit} per mm`) },
  {
    key: 'comebacks',
    head: 'came back, by cause',
    value: ({ comebacks }) =>
      Object.entries(comebacks)
        .map(([cause, count]) => `${cause} ${count}`)
        .join(', '),
  },
];

/** The same over time: for each procedure, and by cause. */
function learnPage(
  rows: readonly Learned[],
  { procedure, from, to }: Pick<LearnOptions, 'procedure' | 'from' | 'to'>,
): Page {
  const procedures = [...new Set(rows.map((row) => row.procedure))];
  const over = (of: (row: Learned) => Omit<PlotPoint, 'on'> | null) =>
    procedures.map((name) => ({
      name,
      points: rows.flatMap((row) => {
        const point = row.procedure === name ? of(row) : null;
        return point === null ? [] : [{ on: row.month, ...point }];
      }),
    }));
  const shares = (of: (row: Learned) => number | null) =>
    over((row) => {
      const value = of(row);
      return value === null ? null : { value };
    });
  const causes = [...new Set(rows.flatMap(({ comebacks }) => Object.keys(comebacks)))].sort();
  const months = [...new Set(rows.map(({ month }) => month))];
  const came = (month: string, cause: string) =>
    rows.reduce((sum, row) => sum + (row.month === month ? (row.comebacks[cause] ?? 0) : 0), 0);
  const rateUnits = [...new Set(rows.flatMap(({ rate }) => (rate === null ? [] : [rate.unit])))];
  const percent = { unit: '%', form: 'line', from: 0, to: 100 } as const;
  const units = rows.reduce((sum, row) => sum + row.units, 0);
  const span = [from === undefined ? '' : `from ${from}`, to === undefined ? '' : `to ${to}`].filter(
    (one) => one !== '',
  );
  return {
    title: 'What the closed jobs show',
    about: `${[procedure ?? 'All procedures', ...span].join(', ')}: ${units} ${units === 1 ? 'unit' : 'units'}, by the month of closing.`,
    blocks: [
      ...plots([
        {
          ...percent,
          title: 'Passed every test at once',
          series: shares(({ firstPass, units: all }) => share(firstPass, all)),
        },
        {
          ...percent,
          title: 'As found, still inside the limit in service',
          series: shares(({ foundPassed, found }) => share(foundPassed, found)),
        },
        ...rateUnits.map(
          (unit): Plot => ({
            title: 'What a shim brought, with its standard error',
            unit: `${unit} per mm`,
            form: 'points',
            series: over(({ rate }) =>
              rate?.unit === unit
                ? { value: Number(rate.slope.toFixed(2)), error: Number(rate.error.toFixed(2)) }
                : null,
            ),
          }),
        ),
        {
          title: 'Comebacks, by cause',
          unit: 'units',
          form: 'stack',
          from: 0,
          series: causes.map((name) => ({ name, points: months.map((on) => ({ on, value: came(on, name) })) })),
        },
      ]),
      pageTable(rows, learnColumns),
    ],
  };
}

interface OpenJob {
  readonly job: string;
  readonly customer: string | null;
  readonly received: string | null;
  readonly procedure: string;
  readonly units: number;
  readonly onHold: number;
  /** What its units wait for, since when. */
  readonly waiting: string;
  /** ISO date that it was promised for. */
  readonly promised: string | null;
  /** It was promised for a day that is past. */
  readonly isLate: boolean;
  readonly missing: number;
  readonly file: string;
}

/** Lists the jobs that have no record. Exit code 0. */
export async function openCommand({ workspace: around, today, records, format, page }: OpenOptions): Promise<number> {
  const workspace = await openQuietly([around]);
  const { result } = workspace;
  const closed = await closedIn(records);
  const rows: OpenJob[] = [];
  for (const name of new Set(result.declared.jobs.map((one) => one.name))) {
    if (closed.has(name)) continue;
    const job = result.jobOf(name);
    if (job === null) {
      note(`Job ${name} cannot be read. Run npx handtight check.`);
      continue;
    }
    const { procedure, customer, received, units, source, intake } = job;
    const promised = intake.findLast(({ word }) => word === 'promised')?.on ?? null;
    const diagnostics = findingsOn({ procedure, job }, result);
    rows.push({
      job: name,
      customer,
      received,
      procedure: procedure.name,
      units: units.length,
      onHold: units.filter(({ onHold }) => onHold !== null).length,
      waiting: waitingFor(job),
      promised,
      isLate: promised !== null && promised < today,
      missing: findMissing(procedure, job, { diagnostics, today }).length,
      file: source.file,
    });
  }
  // What is promised for the earliest day comes first.
  const rank = ({ promised, received }: OpenJob) => `${promised ?? '9999'} ${received ?? ''}`;
  rows.sort((one, other) => (rank(one) < rank(other) ? -1 : 1));
  if (page !== undefined)
    writePage(page, { title: 'What is in the house', about: `On ${today}.`, blocks: [pageTable(rows, openColumns)] });
  else if (rows.length === 0 && format === 'text') say('No job is open.\n');
  else sayRows(rows, openColumns, format);
  return 0;
}

/** `unit 2: spring since 2026-11-04`; what the whole job waits for first. */
function waitingFor({ intake, units, procedure }: Job): string {
  const quoted = intake.findLast(({ word }) => word === 'quote');
  const isApproved = intake.some(({ word }) => word === 'approved');
  const quote = quoted === undefined || isApproved ? [] : [`approval of the quote${since(quoted.on)}`];
  const ofUnits = units.flatMap((unit) =>
    unfinishedOf(unit).map(
      ({ how, fact: { name, text, on } }) =>
        `unit ${unit.place}: ${how === 'waiting' ? partWords(procedure, name ?? '') : `sent out, ${text}`}${since(on)}`,
    ),
  );
  return [...quote, ...ofUnits].join('; ');
}

function since(day: string | null): string {
  return day === null ? '' : ` since ${day}`;
}

const openColumns: readonly Column<OpenJob>[] = [
  {
    key: 'promised',
    head: 'promised',
    value: ({ promised }) => promised,
    shown: ({ promised, isLate }) => (promised === null ? '' : `${promised}${isLate ? ' late' : ''}`),
  },
  { key: 'received', head: 'received', value: ({ received }) => received },
  { key: 'job', head: 'job', value: ({ job }) => job },
  { key: 'customer', head: 'customer', value: ({ customer }) => customer },
  { key: 'procedure', head: 'procedure', value: ({ procedure }) => procedure },
  { key: 'units', head: 'units', value: ({ units }) => units },
  { key: 'on_hold', head: 'on hold', value: ({ onHold }) => onHold },
  { key: 'waiting', head: 'waiting for', value: ({ waiting }) => waiting },
  { key: 'missing', head: 'missing', value: ({ missing }) => missing },
  { key: 'file', head: 'file', value: ({ file }) => file },
];

async function asked(records: string): Promise<Ledger> {
  if (!existsSync(join(records, listName)))
    throw new UsageError(
      `There are no records in ${records}: no job was closed there. Give their folder with --records, or close a job: npx handtight close JOB.`,
    );
  const ledger = await openLedger(records);
  for (const one of ledger.notes) note(one);
  return ledger;
}
