/**
 * The ledger: a database of all closed jobs, made from their records and from nothing else. It lies in the user's cache
 * folder, and can be thrown away at any time.
 */
import { createHash } from 'node:crypto';
import { closeSync, existsSync, fstatSync, mkdirSync, openSync, readFileSync, readSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseAnswers, type RecordAnswers } from '../../../language/archive/record.ts';
import { type Said, say } from '../../../language/say/say.ts';
import { cacheFolder } from '../cache/cache-folder.ts';
import { fileHash, listName } from '../files/records.ts';
import { shimSums } from './shim-sums.ts';
import { openSqlite, type Row, type Sqlite, type Value } from './sqlite.ts';

/** Version of the tables: a ledger of another one is made again. */
const version = 3;

const schema = `
create table meta (key text primary key, value) without rowid;
create table jobs (
  id integer primary key, record text, hash text, job text, title text, customer text, received text, closed text,
  procedure text, revision text, family text, shop text, issue integer, reason text, replaced integer default 0);
create table units (
  id integer primary key, job integer, place text, number text, serial text, on_hold text, remarks text, renewed text,
  batches text, facts text, comeback text, cause text, done text, at_once integer);
create table results (
  unit integer, seq integer, role text, name text, value text, value_unit text, passed integer, limited text, margin real,
  tool text, watched text, person text, day text, note text, tries integer, primary key (unit, seq)) without rowid;
create table rates (
  job integer, part text, test text, value_unit text, units integer, points integer, xx real, xy real, yy real, blur_x real, blur_y real,
  primary key (job, part, test, value_unit)) without rowid;
`;

const indexes = `
create index if not exists jobs_job on jobs (job);
create index if not exists jobs_record on jobs (record);
create index if not exists jobs_hash on jobs (hash);
create index if not exists jobs_customer on jobs (customer);
create index if not exists jobs_closed on jobs (closed);
create index if not exists jobs_procedure on jobs (procedure, revision);
create index if not exists units_job on units (job);
create index if not exists units_serial on units (serial);
create index if not exists results_tool on results (tool, day);
create index if not exists results_watched on results (watched, day) where watched is not null;
`;

const rareIndexes = {
  person: 'create index if not exists results_person on results (person, day)',
  day: 'create index if not exists results_day on results (day)',
  number: 'create index if not exists units_number on units (number)',
};

export interface Ledger {
  all(sql: string, values?: readonly Value[]): Row[];
  /** Makes an index that few questions need when the first of them is asked; a ledger that others keep busy does without. */
  ready(index: keyof typeof rareIndexes): void;
  /** What somebody who asks should know: that it was made again, or what could not be taken in. */
  readonly notes: readonly Said[];
  close(): void;
}

export interface LedgerOptions {
  /** Folder that it is kept in; the user's cache folder unless said otherwise. */
  readonly cache?: string | null | undefined;
  readonly open?: typeof openSqlite;
  /** So many new records are taken in, and no more: then it throws `TooManyRecords`. Undefined: all. */
  readonly most?: number;
}

/** More is new than the caller has the time for. */
class TooManyRecords extends Error {}

/** Folder of all ledgers; null: nothing is kept. */
function ledgerFolder(): string | null {
  const cache = cacheFolder();
  return cache === null ? null : join(cache, 'ledger');
}

/** The ledger of a folder of records, with all that its list has. What it had before stays; only new records are read. */
export async function openLedger(records: string, options: LedgerOptions = {}): Promise<Ledger> {
  const { cache = ledgerFolder(), open = openSqlite, most = Number.POSITIVE_INFINITY } = options;
  const notes: Said[] = [];
  if (cache === null) return await filled(await open(':memory:'), { records, notes, most });
  const path = join(cache, `${createHash('sha256').update(resolve(records)).digest('hex').slice(0, 24)}.sqlite`);
  try {
    mkdirSync(cache, { recursive: true });
  } catch {
    notes.push(say`${cache} cannot be written to, so the ledger is made again for each question.`);
    return await filled(await open(':memory:'), { records, notes, most });
  }
  for (const attempt of ['first', 'second'] as const) {
    let database: Sqlite | null = null;
    try {
      database = await open(path);
      return await filled(database, { records, notes, most });
    } catch (error) {
      try {
        database?.close();
      } catch {
        // It is thrown away, or there was none.
      }
      if (attempt === 'second' || error instanceof TooManyRecords) throw error;
      if (isBusy(error)) break;
      notes.push(say`The ledger was damaged, and was made again from the records.`);
      for (const ending of ['', '-journal', '-wal', '-shm', '.lock'])
        rmSync(`${path}${ending}`, { force: true, recursive: true });
    }
  }
  notes.push(say`Another program has kept the ledger busy, so it was made for this question alone.`);
  return await filled(await open(':memory:'), { records, notes, most });
}

function isBusy(error: unknown): boolean {
  return /locked|busy/iu.test(String(error));
}

interface Filling {
  readonly records: string;
  readonly notes: Said[];
  readonly most: number;
}

async function filled(database: Sqlite, filling: Filling): Promise<Ledger> {
  const { notes } = filling;
  database.exec('pragma busy_timeout = 20000');
  // What a power cut costs is made again.
  database.exec('pragma synchronous = off');
  await patiently(() => takeIn(database, filling));
  return {
    all: (sql, values) => database.all(sql, values),
    ready(index) {
      try {
        database.exec(rareIndexes[index]);
      } catch (error) {
        if (!isBusy(error)) throw error;
      }
    },
    notes,
    close: () => database.close(),
  };
}

/** Tries again while another process writes: not every SQLite waits by itself. */
async function patiently(work: () => void): Promise<void> {
  for (let attempt = 0; ; attempt++) {
    try {
      return work();
    } catch (error) {
      if (!isBusy(error) || attempt > 200) throw error;
      await new Promise((done) => setTimeout(done, 20 + (attempt % 7) * 10));
    }
  }
}

/** Takes in what the list has behind the place that was read to. */
function takeIn(database: Sqlite, { records, notes, most }: Filling): void {
  const known = stateOf(database);
  const list = listTail(records, known);
  if (list === 'same') return;
  if (list.lines.length > most) throw new TooManyRecords();
  database.exec('begin immediate');
  try {
    // Another process may have been here in between.
    const now = stateOf(database);
    const tail = listTail(records, now);
    if (tail !== 'same') {
      const fresh = now === null || tail.from === 0;
      if (fresh) {
        if (now !== null) notes.push(say`The list of records is another than before, so the ledger was made again.`);
        database.exec(
          'drop table if exists meta; drop table if exists jobs; drop table if exists units; drop table if exists results; drop table if exists rates;',
        );
        database.exec(schema);
      }
      insertAll(database, records, { lines: tail.lines, fresh }, notes);
      if (fresh) database.exec(indexes);
      const put = database.prepare('insert or replace into meta values (?, ?)');
      put(['version', version]);
      put(['offset', tail.to]);
      put(['last', tail.lines.at(-1) ?? (fresh ? '' : (now?.last ?? ''))]);
      database.finish();
    }
    database.exec('commit');
  } catch (error) {
    database.finish();
    try {
      database.exec('rollback');
    } catch {
      // What went wrong before is what counts.
    }
    throw error;
  }
}

interface State {
  /** How far the list was read, in bytes. */
  readonly offset: number;
  /** The last line before that. */
  readonly last: string;
}

/** Null: there is no ledger yet, or one of another version. */
function stateOf(database: Sqlite): State | null {
  if (database.all("select 1 from sqlite_master where name = 'meta'").length === 0) return null;
  const meta = new Map(database.all('select key, value from meta').map(({ key, value }) => [key, value]));
  if (meta.get('version') !== version) return null;
  return { offset: Number(meta.get('offset')), last: String(meta.get('last')) };
}

interface Tail {
  readonly lines: readonly string[];
  /** From where it was read, in bytes: 0, all of it. */
  readonly from: number;
  readonly to: number;
}

/** What the list has behind a place, if what is before it is what was read then; else all of it. */
function listTail(records: string, state: State | null): Tail | 'same' {
  const path = join(records, listName);
  if (!existsSync(path)) return state !== null && state.offset === 0 ? 'same' : { lines: [], from: 0, to: 0 };
  const file = openSync(path, 'r');
  try {
    const { size } = fstatSync(file);
    const before = state === null ? 0 : Buffer.byteLength(state.last) + 1;
    if (state !== null && state.offset > 0 && size >= state.offset && state.offset >= before) {
      const text = readFrom(file, state.offset - before, size);
      if (text.startsWith(`${state.last}\n`)) {
        const whole = text.slice(state.last.length + 1);
        const end = whole.lastIndexOf('\n') + 1;
        if (end === 0) return 'same';
        return {
          lines: whole.slice(0, end - 1).split('\n'),
          from: state.offset,
          to: state.offset + Buffer.byteLength(whole.slice(0, end)),
        };
      }
    }
    const all = readFrom(file, 0, size);
    const end = all.lastIndexOf('\n') + 1;
    if (end === 0 && state !== null && state.offset === 0) return 'same';
    return {
      lines: end === 0 ? [] : all.slice(0, end - 1).split('\n'),
      from: 0,
      to: Buffer.byteLength(all.slice(0, end)),
    };
  } finally {
    closeSync(file);
  }
}

function readFrom(file: number, from: number, size: number): string {
  const bytes = Buffer.alloc(Math.max(0, size - from));
  let read = 0;
  while (read < bytes.length) {
    const count = readSync(file, bytes, read, bytes.length - read, from + read);
    if (count === 0) break;
    read += count;
  }
  return bytes.subarray(0, read).toString('utf8');
}

interface NewRecords {
  readonly lines: readonly string[];
  /** Nothing was taken in before. */
  readonly fresh: boolean;
}

function insertAll(database: Sqlite, records: string, { lines, fresh }: NewRecords, notes: Said[]): void {
  if (lines.length === 0) return;
  const insert = {
    replaced: database.prepare('update jobs set replaced = 1 where hash = ?'),
    job: database.prepare('insert into jobs values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 0)'),
    unit: database.prepare('insert into units values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)'),
    result: database.prepare('insert into results values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)'),
    rate: database.prepare('insert into rates values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)'),
  };
  const next = (table: string) => Number(database.all(`select coalesce(max(id), 0) as id from ${table}`)[0]?.id ?? 0);
  const ids = { job: next('jobs'), unit: next('units') };
  const known = new Set<string>();
  const isKnown = (name: string) =>
    known.has(name) || (!fresh && database.all('select 1 from jobs where record = ?', [name]).length > 0);
  const wrong: string[] = [];
  /** The hash of a record that is replaced has no index before all are in. */
  const replaced: string[] = [];
  for (const line of lines) {
    const [, hash, name] = /^([0-9a-f]{64}) {2}(\S.*)$/u.exec(line) ?? [];
    if (hash === undefined || name === undefined || isKnown(name)) continue;
    const rows = rowsAt(join(records, name), { name, hash, ids });
    if (rows === null) {
      wrong.push(name);
      continue;
    }
    known.add(name);
    if (rows.replaces !== null) replaced.push(rows.replaces);
    insert.job(rows.job);
    rows.units.forEach(insert.unit);
    rows.results.forEach(insert.result);
    rows.rates.forEach(insert.rate);
    ids.job++;
    ids.unit += rows.units.length;
  }
  if (replaced.length > 0 && fresh) database.exec(indexes);
  for (const hash of replaced) insert.replaced([hash]);
  if (wrong.length > 0)
    notes.push(
      wrong.length === 1
        ? say`${wrong[0]!} is missing or not as written, and not in this answer. Run npx handtight verify.`
        : say`${wrong.length} records, ${wrong[0]!} first, are missing or not as written, and not in this answer. Run npx handtight verify.`,
    );
}

type Values = readonly Value[];

interface JobRows {
  readonly job: Values;
  readonly units: readonly Values[];
  readonly results: readonly Values[];
  /** What shims brought, by unit. */
  readonly rates: readonly Values[];
  readonly replaces: string | null;
}

interface Place {
  readonly name: string;
  readonly hash: string;
  /** Those that were given last. */
  readonly ids: { readonly job: number; readonly unit: number };
}

/** The rows of a record; null: it is missing, or not as written. Of what is as written the form was checked when it was. */
function rowsAt(path: string, place: Place): JobRows | null {
  try {
    const bytes = readFileSync(path);
    const answers = fileHash(bytes) === place.hash ? parseAnswers(bytes.toString('utf8')) : null;
    if (answers === null) return null;
    const rows = rowsOf(answers, place);
    const isValue = (value: unknown) => value === null || typeof value === 'string' || typeof value === 'number';
    return [rows.job, ...rows.units, ...rows.results, ...rows.rates].every((row) => row.every(isValue)) ? rows : null;
  } catch {
    return null;
  }
}

function rowsOf(answers: RecordAnswers, { name, hash, ids }: Place): JobRows {
  const { job, title, customer, received, closed, procedure, revision, family, shop, issue, reason } = answers;
  const id = ids.job + 1;
  const results: Values[] = [];
  const units = answers.units.map((unit, index): Values => {
    const own = ids.unit + 1 + index;
    for (const [seq, one] of unit.results.entries())
      results.push([
        own,
        seq,
        one.role,
        one.name,
        one.value?.number ?? null,
        one.value?.unit ?? null,
        one.passed === null ? null : Number(one.passed),
        one.limit,
        one.margin === null ? null : Number(one.margin),
        one.tool,
        one.watched,
        one.by,
        one.on ?? closed,
        one.text,
        one.tries,
      ]);
    const comeback = unit.facts.find(({ word }) => word === 'comeback');
    const done = unit.done.map(({ by, on }) => (on === null ? by : `${by}, ${on}`));
    return [
      own,
      id,
      unit.place,
      unit.number,
      unit.serial,
      unit.onHold,
      unit.remarks.join('; '),
      unit.renewed.map(({ part }) => part).join(', '),
      unit.renewed.flatMap(({ batch }) => batch ?? []).join(', '),
      unit.facts.map(factText).join('; '),
      comeback?.text ?? null,
      comeback?.label ?? null,
      [...new Set(done)].join('; '),
      Number(passedAtOnce(unit.results)),
    ];
  });
  return {
    job: [id, name, hash, job, title, customer, received, closed, procedure, revision, family, shop, issue, reason],
    units,
    results,
    rates: answers.choices.flatMap(({ part, test }) => ratesOf(answers, part, test).map((row) => [id, ...row])),
    replaces: answers.replaces,
  };
}

/** What the units of a job say of a shim, added up; of readings in several units of measure one row for each. */
function ratesOf({ units }: RecordAnswers, part: string, test: string): Value[][] {
  const sums = units.flatMap(({ results }) => shimSums(results, part, test) ?? []);
  return [...new Set(sums.map(({ unit }) => unit))].map((unit) => {
    const own = sums.filter((one) => one.unit === unit);
    const sum = (key: 'points' | 'xx' | 'xy' | 'yy' | 'blurX' | 'blurY') => own.reduce((all, one) => all + one[key], 0);
    const figures = [sum('points'), sum('xx'), sum('xy'), sum('yy'), sum('blurX'), sum('blurY')];
    return [part, test, unit, own.length, ...figures];
  });
}

/**
 * Nothing failed before it passed. What was read with the shim that came out is no try: it is read to choose the first one by.
 */
function passedAtOnce(results: RecordAnswers['units'][number]['results']): boolean {
  const first = results.findIndex(({ role }) => role === 'shim in');
  return !results.some(({ role, passed }, index) => role === 'earlier' && passed === false && index > first);
}

function factText({ word, name, text, label, by, on }: RecordAnswers['intake'][number]): string {
  return [word, ...[name, text, label, by, on].filter((one) => one !== null)].join(' ');
}
