/** What is asked of the ledger. */
import type { Ledger } from './ledger.ts';
import type { Row, Value } from './sqlite.ts';
import { type NamedKind, resultColumns } from './tables.ts';

/** A job that a unit was here for, with its results in order. */
export interface Visit {
  readonly unit: Row;
  readonly results: readonly Row[];
}

export type HistoryBy = 'serial' | 'job' | 'part number' | 'customer' | 'renewed part';

const visits = `select jobs.job, jobs.title, jobs.customer, jobs.received, jobs.closed, jobs.procedure,
  jobs.revision, jobs.record, jobs.issue, units.place, units.number, units.serial, units.on_hold, units.remarks,
  units.renewed, units.batches, units.facts, units.cause, units.done, units.results
  from jobs join units on units.job = jobs.id where jobs.replaced = 0 and`;

/** The jobs that name something of a kind; the name is the next value of the statement, and those of `more` follow. */
function naming(kind: NamedKind, more = ''): string {
  return `jobs.id in (select value from named, json_each(named.jobs) where kind = '${kind}' and name = ? ${more})`;
}

/** A list of names with commas holds one, which is the next value of the statement. */
const holds = (column: string) => `instr(', ' || ${column} || ', ', ', ' || ? || ', ') > 0`;

/** What a word can be, in the order in which it is tried: the first that has an answer counts. */
const meanings: readonly (readonly [HistoryBy, string, (word: string) => string[]])[] = [
  ['serial', 'units.serial = ?', (word) => [word]],
  ['job', 'jobs.job = ?', (word) => [word]],
  ['part number', `${naming('part number')} and units.number = ?`, (word) => [word, word]],
  ['customer', "jobs.customer like ? escape '\\'", (word) => [`%${word.replace(/[\\%_]/gu, '\\$&')}%`]],
  ['renewed part', `${naming('renewed part')} and ${holds('units.renewed')}`, (word) => [word, word]],
];

/** Every visit of what a word names, the last first; null: it names nothing. */
export function history(ledger: Ledger, word: string): { readonly by: HistoryBy; readonly visits: Visit[] } | null {
  for (const [by, where, values] of meanings) {
    const rows = ledger.all(`${visits} ${where} order by jobs.closed desc, jobs.id desc, units.id`, values(word));
    if (rows.length === 0) continue;
    return { by, visits: rows.map(visitOf) };
  }
  return null;
}

function visitOf({ results, ...unit }: Row): Visit {
  return { unit, results: tuplesIn(results).map((tuple) => resultOf(tuple)) };
}

type Tuple = readonly Value[];

/** Where a tuple has each column. */
const at = Object.fromEntries(resultColumns.map((column, index) => [column, index])) as Readonly<
  Record<(typeof resultColumns)[number], number>
>;

/** The results of a unit in the order in which they were written. */
function tuplesIn(text: Value | undefined): readonly Tuple[] {
  return JSON.parse(String(text)) as readonly Tuple[];
}

/** A result as a row, with what else the row has. */
function resultOf(tuple: Tuple, row: Record<string, Value> = {}): Row {
  for (const [index, column] of resultColumns.entries()) row[column] = tuple[index] ?? null;
  return row;
}

export interface AffectedBy {
  readonly tool?: string | undefined;
  readonly by?: string | undefined;
  /** Of a renewed part. */
  readonly batch?: string | undefined;
  readonly procedure?: string | undefined;
  readonly revision?: string | undefined;
  /** ISO dates, both inclusive. */
  readonly from?: string | undefined;
  readonly to?: string | undefined;
}

/** What was judged with a tool, by somebody or by a procedure, between two days; what was nearest to its limit first. */
export function affected(ledger: Ledger, asked: AffectedBy): Row[] {
  const { tool, by, batch, revision, from = '', to = '9999' } = asked;
  const named = (['tool', 'by', 'batch', 'procedure'] as const).filter((kind) => asked[kind] !== undefined);
  const conditions = [
    ...named.map((kind) => naming(kind, 'and day >= ? and day <= ?')),
    ...(batch === undefined ? [] : [holds('units.batches')]),
    ...(revision === undefined ? [] : ['jobs.revision = ?']),
  ];
  const units = ledger.all(`${visits} ${conditions.join(' and ')} order by jobs.id, units.id`, [
    ...named.flatMap((kind) => [asked[kind]!, from, to]),
    ...[batch, revision].filter((one) => one !== undefined),
  ]);
  const rows = units.flatMap(({ results, ...unit }) =>
    tuplesIn(results)
      .filter((one) => {
        const day = String(one[at.day]);
        const isOnTool = tool === undefined || one[at.tool] === tool || one[at.watched] === tool;
        const isBy = by === undefined || one[at.person] === by;
        return one[at.role] !== 'earlier' && day >= from && day <= to && isOnTool && isBy;
      })
      .map((one) => resultOf(one, { ...unit })),
  );
  const margin = (row: Row) => (typeof row.margin === 'number' ? row.margin : Number.POSITIVE_INFINITY);
  // Of the same margin what was read first comes first, and of the same day what was closed first.
  return rows.sort((one, other) => margin(one) - margin(other) || (String(one.day) < String(other.day) ? -1 : 0));
}

/** Values of a column that a misspelled one is compared with. */
export function namesIn(ledger: Ledger, kind: NamedKind): string[] {
  return ledger.all('select distinct name from named where kind = ?', [kind]).map(({ name }) => String(name));
}

/** Numbers of the jobs that are closed. */
export function closedJobs(ledger: Ledger): ReadonlySet<string> {
  return new Set(ledger.all('select job from jobs').map(({ job }) => String(job)));
}

/** What a month of closed jobs shows of a procedure. */
export interface Learned {
  readonly month: string;
  readonly procedure: string;
  readonly units: number;
  /** Units that passed every test the first time. */
  readonly firstPass: number;
  /** Units that were read as they came in, and those of them that were still inside their limit in service. */
  readonly found: number;
  readonly foundPassed: number;
  /** What a shim brought, by the readings of the month; null: too few. */
  readonly rate: LearnedRate | null;
  /** Units that came back, by cause. */
  readonly comebacks: Readonly<Record<string, number>>;
}

export interface LearnedRate {
  readonly part: string;
  readonly test: string;
  /** In this unit, for a millimeter more. */
  readonly unit: string;
  readonly slope: number;
  /** Its standard error, what the last digits of readings and shims cannot show included: as `fitSlope`. */
  readonly error: number;
  readonly units: number;
}

/** Month by month, the first first. */
export function learned(
  ledger: Ledger,
  { procedure, from, to }: Pick<AffectedBy, 'procedure' | 'from' | 'to'>,
): Learned[] {
  const conditions: [string, Value | undefined][] = [
    ['jobs.procedure = ?', procedure],
    ['jobs.closed >= ?', from],
    ['jobs.closed <= ?', to],
  ];
  const given = conditions.filter(([, value]) => value !== undefined);
  const where = ['jobs.replaced = 0', ...given.map(([sql]) => sql)].join(' and ');
  const values = given.map(([, value]) => value!);
  const rows = ledger.all(
    `select substr(closed, 1, 7) as month, procedure, sum(units) as units, sum(at_once) as first_pass,
      sum(found) as found, sum(found_passed) as found_passed
    from jobs where ${where} group by month, procedure having sum(units) > 0 order by month, procedure`,
    values,
  );
  const causes = ledger.all(
    `select substr(closed, 1, 7) as month, procedure, causes, count(*) as count
    from jobs where ${where} and causes is not null group by month, procedure, causes`,
    values,
  );
  const rates = ledger.all(
    `select substr(jobs.closed, 1, 7) as month, jobs.procedure, rates.part, rates.test, rates.value_unit, sum(rates.units) as units,
      sum(points) as points, sum(xx) as xx, sum(xy) as xy, sum(yy) as yy,
      sum(blur_x) as blur_x, sum(blur_y) as blur_y
    from rates join jobs on jobs.id = rates.job where ${where}
    group by month, procedure, part, test, value_unit order by sum(rates.units) desc`,
    values,
  );
  return rows.map((row) => ({
    rate: rateOf(rates.find((one) => one.month === row.month && one.procedure === row.procedure)),
    month: String(row.month),
    procedure: String(row.procedure),
    units: Number(row.units),
    firstPass: Number(row.first_pass),
    found: Number(row.found),
    foundPassed: Number(row.found_passed),
    comebacks: countsOf(causes.filter((one) => one.month === row.month && one.procedure === row.procedure)),
  }));
}

/** How often each cause is in lists of causes, by cause. */
function countsOf(rows: readonly Row[]): Readonly<Record<string, number>> {
  const counts = new Map<string, number>();
  for (const { causes, count } of rows)
    for (const cause of String(causes).split(', ')) counts.set(cause, (counts.get(cause) ?? 0) + Number(count));
  return Object.fromEntries([...counts].sort(([one], [other]) => (one < other ? -1 : 1)));
}

/** One slope for all units, with a height of its own for each: as `fitSlope`, from sums. Null: no point to spare. */
function rateOf(row: Row | undefined): LearnedRate | null {
  if (row === undefined) return null;
  const figure = (key: string) => Number(row[key]);
  const [units, points, xx, xy, yy] = [figure('units'), figure('points'), figure('xx'), figure('xy'), figure('yy')];
  const freedom = points - units - 1;
  if (freedom < 1) return null;
  const slope = xy / xx;
  const blurred = (figure('blur_y') + slope ** 2 * figure('blur_x')) / points;
  const error = Math.sqrt((Math.max(0, yy - slope * xy) / freedom + blurred) / xx);
  return { part: String(row.part), test: String(row.test), unit: String(row.value_unit), slope, error, units };
}

/** When a serial was here before: for a unit that is taken in. */
export function lastVisit(ledger: Ledger, serial: string): Visit | null {
  const [row] = ledger.all(`${visits} units.serial = ? order by jobs.closed desc, jobs.id desc limit 1`, [serial]);
  return row === undefined ? null : visitOf(row);
}
