/** What is asked of the ledger. */
import type { Ledger } from './ledger.ts';
import type { Row, Value } from './sqlite.ts';

/** A job that a unit was here for, with its results in order. */
export interface Visit {
  readonly unit: Row;
  readonly results: readonly Row[];
}

export type HistoryBy = 'serial' | 'job' | 'part number' | 'customer' | 'renewed part';

const visits = `select units.id, jobs.job, jobs.title, jobs.customer, jobs.received, jobs.closed, jobs.procedure,
  jobs.revision, jobs.record, jobs.issue, units.place, units.number, units.serial, units.on_hold, units.remarks,
  units.renewed, units.batches, units.facts, units.done from units join jobs on jobs.id = units.job where jobs.replaced = 0 and`;

/** What a word can be, in the order in which it is tried: the first that has an answer counts. */
const meanings: readonly (readonly [HistoryBy, string, (word: string) => string])[] = [
  ['serial', 'units.serial = ?', (word) => word],
  ['job', 'jobs.job = ?', (word) => word],
  ['part number', 'units.number = ?', (word) => word],
  ['customer', "jobs.customer like ? escape '\\'", (word) => `%${word.replace(/[\\%_]/gu, '\\$&')}%`],
  [
    'renewed part',
    "', ' || units.renewed || ', ' like ? escape '\\'",
    (word) => `%, ${word.replace(/[\\%_]/gu, '\\$&')}, %`,
  ],
];

/** Every visit of what a word names, the last first; null: it names nothing. */
export function history(ledger: Ledger, word: string): { readonly by: HistoryBy; readonly visits: Visit[] } | null {
  for (const [by, where, pattern] of meanings) {
    if (by === 'part number') ledger.ready('number');
    const units = ledger.all(`${visits} ${where} order by jobs.closed desc, jobs.id desc, units.id`, [pattern(word)]);
    if (units.length === 0) continue;
    return {
      by,
      visits: units.map((unit) => ({
        unit,
        results: resultsOf(ledger, unit.id ?? null),
      })),
    };
  }
  return null;
}

/** The results of a unit in the order in which they were written. */
export function resultsOf(ledger: Ledger, unit: Value): Row[] {
  return ledger.all('select * from results where unit = ? order by seq', [unit]);
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
export function affected(ledger: Ledger, { tool, by, batch, procedure, revision, from, to }: AffectedBy): Row[] {
  if (by !== undefined && tool === undefined) ledger.ready('person');
  // Few results are of one day, and many of one procedure: the plus keeps SQLite from beginning with the procedure.
  const byDay = tool === undefined && by === undefined && (from !== undefined || to !== undefined);
  if (byDay) ledger.ready('day');
  const conditions: [string, Value | undefined][] = [
    ['(results.tool = ? or results.watched = ?)', tool],
    ['results.person = ?', by],
    ["', ' || units.batches || ', ' like '%, ' || ? || ', %'", batch],
    [byDay ? '+jobs.procedure = ?' : 'jobs.procedure = ?', procedure],
    [byDay ? '+jobs.revision = ?' : 'jobs.revision = ?', revision],
    ['results.day >= ?', from],
    ['results.day <= ?', to],
  ];
  const given = conditions.filter(([, value]) => value !== undefined);
  return ledger.all(
    `select jobs.job, jobs.customer, units.place, units.number, units.serial, results.day, results.person, results.role,
      results.name, results.value, results.value_unit, results.limited, results.margin, results.tool, jobs.procedure, jobs.revision,
      jobs.record
    from results join units on units.id = results.unit join jobs on jobs.id = units.job
    where jobs.replaced = 0 and results.role <> 'earlier' and ${given.map(([sql]) => sql).join(' and ')}
    order by results.margin is null, results.margin, results.day, jobs.id, units.id, results.seq`,
    given.flatMap(([sql, value]) => Array.from({ length: sql.split('?').length - 1 }, () => value!)),
  );
}

/** Values of a column that a misspelled one is compared with. */
export function namesIn(ledger: Ledger, what: 'tool' | 'by' | 'batch' | 'procedure'): string[] {
  const from = {
    tool: 'tool from results',
    by: 'person from results',
    batch: 'batches from units',
    procedure: 'procedure from jobs',
  }[what];
  return ledger.all(`select distinct ${from}`).flatMap((row) => {
    const [value] = Object.values(row);
    return typeof value === 'string' ? [value] : [];
  });
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
  const ofJobs = ['jobs.replaced = 0', ...given.map(([sql]) => sql)].join(' and ');
  const where = `${ofJobs} and units.on_hold is null`;
  const values = given.map(([, value]) => value!);
  const rows = ledger.all(
    `select substr(closed, 1, 7) as month, procedure, count(*) as units, sum(at_once) as first_pass,
      sum(found is not null) as found, sum(found = 1) as found_passed
    from (select jobs.closed, jobs.procedure,
        units.at_once,
        (select min(passed) from results where unit = units.id and role = 'as found' and passed is not null) as found
      from units join jobs on jobs.id = units.job where ${where})
    group by month, procedure order by month, procedure`,
    values,
  );
  const causes = ledger.all(
    `select substr(jobs.closed, 1, 7) as month, jobs.procedure, units.cause, count(*) as count
    from units join jobs on jobs.id = units.job where ${where} and units.cause is not null
    group by month, procedure, cause order by cause`,
    values,
  );
  const rates = ledger.all(
    `select substr(jobs.closed, 1, 7) as month, jobs.procedure, rates.part, rates.test, rates.value_unit, sum(rates.units) as units,
      sum(points) as points, sum(xx) as xx, sum(xy) as xy, sum(yy) as yy,
      sum(blur_x) as blur_x, sum(blur_y) as blur_y
    from rates join jobs on jobs.id = rates.job where ${ofJobs}
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
    comebacks: Object.fromEntries(
      causes
        .filter((one) => one.month === row.month && one.procedure === row.procedure)
        .map((one) => [String(one.cause), Number(one.count)]),
    ),
  }));
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
export function lastVisit(ledger: Ledger, serial: string): Row | null {
  return (
    ledger.all(
      `select units.id, jobs.job, jobs.closed, jobs.customer, units.cause from units join jobs on jobs.id = units.job
      where jobs.replaced = 0 and units.serial = ? order by jobs.closed desc, jobs.id desc limit 1`,
      [serial],
    )[0] ?? null
  );
}
