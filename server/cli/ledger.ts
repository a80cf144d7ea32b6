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
import { term } from '../../language/say/say.ts';
import { nearest } from '../../language/syntax/nearest.ts';
import { listName } from '../host/files/record-names.ts';
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
import { resultText, roleText } from '../host/ledger/result-words.ts';
import type { Row } from '../host/ledger/sqlite.ts';
import { resultColumns } from '../host/ledger/tables.ts';
import { findingsOn } from './bearing.ts';
import { closedIn } from './closed.ts';
import { worded, words } from './messages.ts';
import { meant } from './near.ts';
import { writePage } from './page/page.ts';
import { affectedPage, historyPage, learnPage, openPage } from './page/pages.ts';
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
      say(
        `${worded`Nothing is recorded of ${word}: no closed job has it as serial, number, customer or renewed part.`}\n`,
      );
      return 1;
    }
    if (page !== undefined) writePage(page, historyPage(word, found));
    else if (format === 'text') {
      if (found.by !== 'serial') note(worded`${word} is a ${term(found.by)}: all units of it are listed.`);
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
  ...['remarks', 'renewed', 'batches', 'facts'],
  ...resultColumns.filter((name) => name !== 'watched' && name !== 'tries'),
  'record',
].map(key);

/** A visit as text, a line for each thing. */
export function visitText({ unit, results }: Visit): string {
  return [
    `${pc.bold(visitTitle(unit))}\n`,
    ...visitFacts(unit).map((line) => `  ${line}\n`),
    ...results.map((one) => `  ${resultText(one, words)}\n`),
  ].join('');
}

export function visitTitle(unit: Row): string {
  return `${unit.closed}  ${unitText(unit)}`;
}

export function visitFacts(unit: Row): string[] {
  return [
    [worded`customer`, unit.customer],
    [worded`received`, unit.received],
    [worded`procedure`, worded`${String(unit.procedure)} revision ${String(unit.revision)}`],
    [worded`on hold`, unit.on_hold],
    [worded`as found`, unit.remarks],
    [worded`renewed`, unit.renewed],
    [worded`batches`, unit.batches],
    [worded`on record`, unit.facts],
    [worded`done by`, unit.done],
    [worded`certificate`, worded`${String(unit.record)}, issue ${String(unit.issue)}`],
  ].flatMap(([name, value]) => (value === null || value === '' ? [] : [`${name}: ${value}`]));
}

function unitText({ job, title, place, number, serial }: Visit['unit']): string {
  const named = title === job ? `${job}` : `${job} “${title}”`;
  return serial === null
    ? worded`job ${named}, unit ${String(place)}: ${String(number)} (no serial)`
    : worded`job ${named}, unit ${String(place)}: ${String(number)} ${String(serial)}`;
}

/** Lists what was judged with a tool, by somebody, or by a procedure. Exit code: 0, also where nothing was. */
export async function affectedCommand({ within, ...options }: AffectedOptions): Promise<number> {
  const { tool, by, batch, procedure, revision, from, to, format, records, page } = options;
  if (tool === undefined && by === undefined && batch === undefined && procedure === undefined)
    throw new UsageError(
      worded`Say what is in question: --tool PG-400, --batch L-7, --by "…" or --procedure NAME, and the days with --from and --to.`,
    );
  if (revision !== undefined && procedure === undefined)
    throw new UsageError(worded`A revision is one of a procedure: give --procedure NAME too.`);
  if (from !== undefined && to !== undefined && from > to)
    throw new UsageError(worded`--from ${from} is after --to ${to}. Turn them around.`);
  const least = within === undefined ? null : difference(within);
  const ledger = await asked(records);
  try {
    const all = affected(ledger, { tool, by, batch, procedure, revision, from, to });
    if (all.length === 0) unknown(ledger, { tool, by, batch, procedure });
    const rows = least === null ? all : all.filter((row) => isWithin(row, least));
    if (page !== undefined) {
      writePage(
        page,
        affectedPage(rows, { ...options, within }, { columns: affectedColumns(), summary: summary(rows) }),
      );
      return 0;
    }
    if (format !== 'text' || rows.length > 0) sayRows(rows, affectedColumns(), format);
    if (format === 'text') say(`${summary(rows)}\n`);
    return 0;
  } finally {
    ledger.close();
  }
}

const affectedColumns = (): readonly Column<Row>[] => [
  { key: 'day', head: worded`day`, value: (row) => row.day },
  { key: 'job', head: worded`job`, value: (row) => row.job },
  { key: 'customer', head: worded`customer`, value: (row) => row.customer },
  { key: 'place', head: worded`unit`, value: (row) => row.place },
  { key: 'number', head: worded`number`, value: (row) => row.number },
  { key: 'serial', head: worded`serial`, value: (row) => row.serial },
  { key: 'role', head: null, value: (row) => row.role },
  {
    key: 'name',
    head: worded`what`,
    value: (row) => row.name,
    shown: (row) => roleText(row, words),
  },
  {
    key: 'value',
    head: worded`reading`,
    value: (row) => row.value,
    shown: (row) => (row.value === null ? '' : `${row.value} ${row.value_unit}`),
  },
  key('value_unit'),
  { key: 'limit', head: worded`limit`, value: (row) => row.limited },
  {
    key: 'margin',
    head: worded`inside by`,
    value: (row) => row.margin,
    shown: (row) => (row.margin === null ? '' : `${row.margin} ${row.value_unit}`),
  },
  { key: 'tool', head: worded`tool`, value: (row) => row.tool },
  { key: 'by', head: worded`by`, value: (row) => row.person },
  key('procedure'),
  key('revision'),
  key('record'),
];

function summary(rows: readonly Row[]): string {
  const different = (of: (row: Row) => unknown) => new Set(rows.map(of)).size;
  const counts = [
    counted(rows.length, worded`1 result`, (count) => worded`${count} results`),
    counted(
      different(({ job, place }) => `${job} ${place}`),
      worded`1 unit`,
      (count) => worded`${count} units`,
    ),
    counted(
      different(({ job }) => job),
      worded`1 job`,
      (count) => worded`${count} jobs`,
    ),
    counted(
      different(({ customer }) => customer),
      worded`1 customer`,
      (count) => worded`${count} customers`,
    ),
  ] as const;
  return rows.length === 0
    ? worded`Nothing was judged so.`
    : worded`${counts[0]} of ${counts[1]}, ${counts[2]}, ${counts[3]}.`;
}

function counted(count: number, one: string, many: (count: number) => string): string {
  return count === 1 ? one : many(count);
}

function difference(text: string): Difference {
  const read = readQuantity(text);
  if ('quantity' in read) return asDifference(read.quantity);
  throw new UsageError(
    worded`--within ${text} cannot be read: ${'problem' in read ? words(read.problem) : worded`write a figure and its unit, such as "3 bar".`}`,
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
    const all = namesIn(ledger, what);
    if (all.includes(name)) continue;
    const near = nearest(name, all);
    note(worded`No closed job has --${what} ${name}. ${meant(near, '')}`.trimEnd());
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
    if (page !== undefined) writePage(page, learnPage(rows, of, learnColumns()));
    else if (rows.length === 0 && format === 'text') say(`${worded`No unit was closed so.`}\n`);
    else sayRows(rows, learnColumns(), format);
    return 0;
  } finally {
    ledger.close();
  }
}

export const share = (part: number, whole: number) => (whole === 0 ? null : Math.round((100 * part) / whole));

/** A share as a figure and a bar of ten. */
function bar(percent: number | null): string {
  return percent === null
    ? ''
    : `${String(percent).padStart(3)} % ${'█'.repeat(Math.round(percent / 10)).padEnd(10, '·')}`;
}

/** `96.2 ±1.4 bar per mm`: the rate with its standard error. */
function rateText({ slope, error, unit }: LearnedRate): string {
  return `${slope.toFixed(1)} ±${error.toFixed(1)} ${unit} per mm`;
}

const learnColumns = (): readonly Column<Learned>[] => [
  { key: 'month', head: worded`month`, value: ({ month }) => month },
  { key: 'procedure', head: worded`procedure`, value: ({ procedure }) => procedure },
  { key: 'units', head: worded`units`, value: ({ units }) => units },
  {
    key: 'first_pass',
    head: worded`passed at once`,
    value: ({ firstPass, units }) => share(firstPass, units),
    shown: ({ firstPass, units }) => bar(share(firstPass, units)),
  },
  {
    key: 'found_passed',
    head: worded`as found still good`,
    value: ({ foundPassed, found }) => share(foundPassed, found),
    shown: ({ foundPassed, found }) => bar(share(foundPassed, found)),
  },
  {
    key: 'shim_rate',
    head: worded`a shim brings`,
    value: ({ rate }) => (rate === null ? null : Number(rate.slope.toFixed(2))),
    shown: ({ rate }) => (rate === null ? '' : rateText(rate)),
  },
  { key: 'shim_rate_error', head: null, value: ({ rate }) => (rate === null ? null : Number(rate.error.toFixed(2))) },
  { key: 'shim_rate_unit', head: null, value: ({ rate }) => (rate === null ? null : `${rate.unit} per mm`) },
  {
    key: 'comebacks',
    head: worded`came back, by cause`,
    value: ({ comebacks }) =>
      Object.entries(comebacks)
        .map(([cause, count]) => `${cause} ${count}`)
        .join(', '),
  },
];

export interface OpenJob {
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
      note(worded`Job ${name} cannot be read. Run npx handtight check.`);
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
  if (page !== undefined) writePage(page, openPage(rows, today, openColumns()));
  else if (rows.length === 0 && format === 'text') say(`${worded`No job is open.`}\n`);
  else sayRows(rows, openColumns(), format);
  return 0;
}

/** `unit 2: spring since 2026-11-04`; what the whole job waits for first. */
function waitingFor({ intake, units, procedure }: Job): string {
  const quoted = intake.findLast(({ word }) => word === 'quote');
  const isApproved = intake.some(({ word }) => word === 'approved');
  const quote = quoted === undefined || isApproved ? [] : [since(worded`approval of the quote`, quoted.on)];
  const ofUnits = units.flatMap((unit) =>
    unfinishedOf(unit).map(({ how, fact: { name, text, on } }) => {
      const what = how === 'waiting' ? partWords(procedure, name ?? '') : worded`sent out, ${text ?? ''}`;
      return worded`unit ${unit.place}: ${since(what, on)}`;
    }),
  );
  return [...quote, ...ofUnits].join('; ');
}

function since(what: string, day: string | null): string {
  return day === null ? what : worded`${what} since ${day}`;
}

const openColumns = (): readonly Column<OpenJob>[] => [
  {
    key: 'promised',
    head: worded`promised`,
    value: ({ promised }) => promised,
    shown: ({ promised, isLate }) => (promised === null ? '' : isLate ? worded`${promised} late` : promised),
  },
  { key: 'received', head: worded`received`, value: ({ received }) => received },
  { key: 'job', head: worded`job`, value: ({ job }) => job },
  { key: 'customer', head: worded`customer`, value: ({ customer }) => customer },
  { key: 'procedure', head: worded`procedure`, value: ({ procedure }) => procedure },
  { key: 'units', head: worded`units`, value: ({ units }) => units },
  { key: 'on_hold', head: worded`on hold`, value: ({ onHold }) => onHold },
  { key: 'waiting', head: worded`waiting for`, value: ({ waiting }) => waiting },
  { key: 'missing', head: worded`missing`, value: ({ missing }) => missing },
  { key: 'file', head: worded`file`, value: ({ file }) => file },
];

async function asked(records: string): Promise<Ledger> {
  if (!existsSync(join(records, listName)))
    throw new UsageError(
      worded`There are no records in ${records}: no job was closed there. Give their folder with --records, or close a job: npx handtight close JOB.`,
    );
  const ledger = await openLedger(records);
  for (const one of ledger.notes) note(words(one));
  return ledger;
}
