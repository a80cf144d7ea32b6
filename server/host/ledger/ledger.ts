/**
 * The ledger: a database of all closed jobs, made from their records and from nothing else. It lies in the user's cache
 * folder, and can be thrown away at any time.
 */
import { createHash } from 'node:crypto';
import { closeSync, existsSync, fstatSync, mkdirSync, openSync, readFileSync, readSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { type Said, say } from '../../../language/say/say.ts';
import { cacheFolder } from '../cache/cache-folder.ts';
import { listName } from '../files/record-names.ts';
import { fileHash } from '../files/records.ts';
import { type Named, rowsOf, type Values } from './rows.ts';
import { openSqlite, type Row, type Sqlite, type Value } from './sqlite.ts';
import { columnCounts, indexes, type Table, tables, version } from './tables.ts';

export interface Ledger {
  all(sql: string, values?: readonly Value[]): Row[];
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
  // 32 MB: with the 2 MB that it has by itself the first build writes each page many times.
  database.exec('pragma cache_size = -32000');
  await patiently(() => takeIn(database, filling));
  return {
    all: (sql, values) => database.all(sql, values),
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
        database.exec(tables);
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
  const put = {
    jobs: new Inserting(database, 'jobs'),
    units: new Inserting(database, 'units'),
    named: new Inserting(database, 'named'),
    rates: new Inserting(database, 'rates'),
  };
  const next = (table: 'jobs' | 'units') =>
    Number(database.all(`select coalesce(max(id), 0) + 1 as id from ${table}`)[0]?.id);
  const ids = { job: next('jobs'), unit: next('units') };
  const known = new Set<string>();
  const isKnown = (name: string) =>
    known.has(name) || (!fresh && database.all('select 1 from jobs where record = ?', [name]).length > 0);
  const wrong: string[] = [];
  const named = new NamedIn();
  const replaced: { readonly job: Value; readonly hash: string }[] = [];
  for (const line of lines) {
    const [, hash, name] = /^([0-9a-f]{64}) {2}(\S.*)$/u.exec(line) ?? [];
    if (hash === undefined || name === undefined || isKnown(name)) continue;
    const bytes = asWritten(join(records, name), hash);
    const made = bytes === null ? null : rowsOf(bytes, { name, hash, ...ids });
    if (made === null) {
      wrong.push(name);
      continue;
    }
    known.add(name);
    const { jobs, units, rates } = made.rows;
    put.jobs.add(jobs);
    put.units.add(units);
    put.rates.add(rates);
    if (made.replaces !== null) replaced.push({ job: jobs[0]![jobColumn]!, hash: made.replaces });
    for (const one of made.named) named.add(one, ids.job);
    ids.job++;
    ids.unit += units.length;
  }
  put.named.add(named.rows());
  for (const one of Object.values(put)) one.end();
  if (fresh) database.exec(indexes);
  if (replaced.length > 0) {
    const mark = database.prepare('update jobs set replaced = 1 where job = ? and hash = ?');
    for (const { job, hash } of replaced) mark([job, hash]);
  }
  if (wrong.length > 0)
    notes.push(
      wrong.length === 1
        ? say`${wrong[0]!} is missing or not as written, and not in this answer. Run npx handtight verify.`
        : say`${wrong.length} records, ${wrong[0]!} first, are missing or not as written, and not in this answer. Run npx handtight verify.`,
    );
}

/** Where the rows of jobs have the number of the job. */
const jobColumn = 3;

/** The bytes of a record; null: it is missing, or not as written. */
function asWritten(path: string, hash: string): Buffer | null {
  try {
    const bytes = readFileSync(path);
    return fileHash(bytes) === hash ? bytes : null;
  } catch {
    return null;
  }
}

/** Which of the jobs that are taken in name what. */
class NamedIn {
  readonly #jobs = new Map<string, { readonly named: Named; readonly jobs: number[] }>();

  add(named: Named, job: number): void {
    const key = named.join('\n');
    const known = this.#jobs.get(key);
    if (known === undefined) this.#jobs.set(key, { named, jobs: [job] });
    else if (known.jobs.at(-1) !== job) known.jobs.push(job);
  }

  rows(): Values[] {
    return [...this.#jobs.values()].map(({ named, jobs }) => [...named, JSON.stringify(jobs)]);
  }
}

/** Puts rows into a table, many with one statement: most of what a small row costs is the statement. */
class Inserting {
  static readonly many = 20;
  readonly #columns: number;
  readonly #one: (values: Values) => void;
  readonly #many: (values: Values) => void;
  #waiting: Value[] = [];

  constructor(database: Sqlite, table: Table) {
    this.#columns = columnCounts[table];
    const row = `(${Array.from({ length: this.#columns }, () => '?').join(', ')})`;
    const statement = (count: number) =>
      database.prepare(`insert into ${table} values ${Array.from({ length: count }, () => row).join(', ')}`);
    this.#one = statement(1);
    this.#many = statement(Inserting.many);
  }

  add(rows: readonly Values[]): void {
    for (const row of rows) {
      this.#waiting.push(...row);
      if (this.#waiting.length < Inserting.many * this.#columns) continue;
      this.#many(this.#waiting);
      this.#waiting = [];
    }
  }

  /** Puts in what still waits. */
  end(): void {
    for (let at = 0; at < this.#waiting.length; at += this.#columns)
      this.#one(this.#waiting.slice(at, at + this.#columns));
    this.#waiting = [];
  }
}
