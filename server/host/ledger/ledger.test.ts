/** The ledger beside a plain reading of the same records, with both builds of SQLite. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import {
  chmodSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it, test } from 'vitest';
import { writeRecord } from '../../../language/archive/record.ts';
import { inLanguage } from '../../../language/i18n/translate.ts';
import { closedJob, writeClosedJobs } from '../../../tests/bench/workload/closed-jobs.ts';
import { listName } from '../files/record-names.ts';
import { enterInList, recordNames, writeRecordFile } from '../files/records.ts';
import { type LedgerOptions, openLedger } from './ledger.ts';
import { affected, closedJobs, history, learned } from './questions.ts';
import { ofNode, ofWasm } from './sqlite.ts';

const folder = mkdtempSync(join(tmpdir(), 'handtight-ledger-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const records = join(folder, 'records');
const count = 300;
writeClosedJobs(records, 1, count);
const all = Array.from({ length: count }, (_, index) => closedJob(index + 1).answers);

let number = 0;
/** A cache folder of its own, and one of the two builds. */
const fresh = (open?: LedgerOptions['open']): LedgerOptions => ({
  cache: join(folder, `cache-${number++}`),
  ...(open === undefined ? {} : { open }),
});
const opened = async (options: LedgerOptions, of = records) => {
  const ledger = await openLedger(of, options);
  const jobs = closedJobs(ledger).size;
  ledger.close();
  return { jobs, notes: ledger.notes.map((one) => inLanguage(one, 'en')) };
};

describe.each([
  ['of Node', async (path: string) => (await ofNode(path))!],
  ['of WebAssembly', ofWasm],
])('SQLite %s', (_, open) => {
  it('answers what a reading of all records answers', async () => {
    const ledger = await openLedger(records, fresh(open));
    expect(ledger.notes).toEqual([]);
    const [one] = all[41]!.units;
    const found = history(ledger, one!.serial!)!;
    expect(found.by).toBe('serial');
    expect(found.visits).toHaveLength(1);
    expect(found.visits[0]!.unit).toMatchObject({ job: '42', serial: one!.serial, customer: all[41]!.customer });
    expect(found.visits[0]!.results.map((row) => `${row.role} ${row.value}`)).toEqual(
      one!.results.map(({ role, value }) => `${role} ${value!.number}`),
    );
    expect(history(ledger, '42')!.visits).toHaveLength(all[41]!.units.length);
    const ofFarm = all.filter(({ customer }) => customer === 'Hill farm').flatMap(({ units }) => units);
    expect(history(ledger, 'farm')).toMatchObject({ by: 'customer' });
    expect(history(ledger, 'farm')!.visits).toHaveLength(ofFarm.length);
    expect(history(ledger, '%')).toBeNull();
    const [from, to] = ['2016-01-03', '2016-01-07'];
    const read = all
      .flatMap(({ units }) => units.flatMap(({ results }) => results))
      .filter(({ tool, on, role }) => role !== 'earlier' && tool === 'PG-400' && on! >= from && on! <= to);
    const rows = affected(ledger, { tool: 'PG-400', from, to });
    expect(rows.map(({ margin }) => margin)).toEqual(read.map(({ margin }) => Number(margin)).sort((a, b) => a - b));
    expect(rows.length).toBeGreaterThan(10);
    ledger.close();
  });

  it('answers by batch, and month by month', async () => {
    const ledger = await openLedger(records, fresh(open));
    const units = all.flatMap(({ units: own }) => own);
    const fitted = units.filter(({ renewed }) => renewed.some(({ batch }) => batch === 'L-7'));
    const rows = affected(ledger, { batch: 'L-7' });
    expect(new Set(rows.map(({ serial }) => serial))).toEqual(new Set(fitted.map(({ serial }) => serial)));
    expect(affected(ledger, { batch: 'L' })).toEqual([]);
    const months = learned(ledger, {});
    expect(months.reduce((sum, one) => sum + one.units, 0)).toBe(units.length);
    expect(months.reduce((sum, one) => sum + one.firstPass, 0)).toBe(
      units.filter(({ results }) => results.every(({ role, tries }) => role !== 'as left' || tries === 1)).length,
    );
    const causes = months.map(({ comebacks }) => comebacks.wear ?? 0).reduce((sum, one) => sum + one, 0);
    expect(causes).toBe(units.filter(({ facts }) => facts.some(({ label }) => label === 'wear')).length);
    expect(causes).toBeGreaterThan(0);
    ledger.close();
  });

  it('counts no unit as passed at once that left outside its limit', async () => {
    const own = join(folder, `own-${number++}`);
    const record = closedJob(1);
    const [one, ...others] = record.answers.units.map((unit) => ({
      ...unit,
      results: unit.results.filter(({ role }) => role !== 'earlier'),
    }));
    const results = one!.results.map((result) => (result.role === 'as left' ? { ...result, passed: false } : result));
    const answers = { ...record.answers, units: [{ ...one!, results }, ...others] };
    const text = writeRecord({ ...record, answers }, null);
    writeRecordFile(own, '1-1.record.json', text);
    enterInList(own, '1-1.record.json', Buffer.from(text));
    const ledger = await openLedger(own, fresh(open));
    expect(learned(ledger, {})).toMatchObject([{ units: others.length + 1, firstPass: others.length }]);
    ledger.close();
  });

  it('takes in what is new, and only that', async () => {
    const own = join(folder, `own-${number++}`);
    writeClosedJobs(own, 1, 3);
    const options = fresh(open);
    expect(await opened(options, own)).toEqual({ jobs: 3, notes: [] });
    // What was taken in is not read again.
    rmSync(join(own, '1-1.record.json'));
    writeClosedJobs(own, 4, 5);
    expect(await opened(options, own)).toEqual({ jobs: 5, notes: [] });
    expect(await opened(options, own)).toEqual({ jobs: 5, notes: [] });
  });

  it('answers from the last issue of a job', async () => {
    const own = join(folder, `own-${number++}`);
    writeClosedJobs(own, 1, 1);
    const before = closedJob(1);
    const [, hash] = /^([0-9a-f]+)/u.exec(readFileSync(join(own, listName), 'utf8'))!;
    const again = { ...before.answers, issue: 2, reason: 'serial misread', replaces: hash! };
    const text = writeRecord({ ...before, answers: again }, null);
    writeRecordFile(own, '1-2.record.json', text);
    enterInList(own, '1-2.record.json', Buffer.from(text));
    const ledger = await openLedger(own, fresh(open));
    expect(history(ledger, '1')!.visits.map(({ unit }) => unit.issue)).toEqual(before.answers.units.map(() => 2));
    ledger.close();
  });

  it('is made again with a word where it is damaged, cut off, or of another list', async () => {
    const options = fresh(open);
    await opened(options);
    const file = () => join(options.cache!, readdirSync(options.cache!).find((name) => name.endsWith('.sqlite'))!);
    const again = { jobs: count, notes: ['The ledger was damaged, and was made again from the records.'] };
    writeFileSync(file(), 'no database '.repeat(500));
    expect(await opened(options)).toEqual(again);
    truncateSync(file(), Math.floor(statSync(file()).size / 8192) * 4096);
    expect(await opened(options)).toEqual(again);
    rmSync(file());
    expect(await opened(options)).toEqual({ jobs: count, notes: [] });
    const own = join(folder, `own-${number++}`);
    writeClosedJobs(own, 1, 3);
    expect((await opened(options, own)).jobs).toBe(3);
    rmSync(own, { recursive: true });
    writeClosedJobs(own, 7, 8);
    expect(await opened(options, own)).toEqual({
      jobs: 2,
      notes: ['The list of records is another than before, so the ledger was made again.'],
    });
  });

  it('leaves out a record that was changed, and says so', async () => {
    const own = join(folder, `own-${number++}`);
    writeClosedJobs(own, 1, 3);
    writeFileSync(join(own, '2-1.record.json'), writeRecord(closedJob(9), null));
    const { jobs, notes } = await opened(fresh(open), own);
    expect(jobs).toBe(2);
    expect(notes).toEqual([expect.stringMatching(/^2-1\.record\.json is missing or not as written/u)]);
  });
});

test('keeps nothing where nothing is to be kept', async () => {
  const ledger = await openLedger(records, { cache: null });
  expect([closedJobs(ledger).size, ledger.notes]).toEqual([all.length, []]);
  ledger.close();
});

test('answers where nothing can be written to', async () => {
  const locked = join(folder, 'locked');
  writeFileSync(locked, '');
  chmodSync(locked, 0o444);
  const { jobs, notes } = await opened({ cache: join(locked, 'ledger') });
  expect(jobs).toBe(count);
  expect(notes).toEqual([expect.stringContaining('cannot be written to')]);
});

test('is made by two processes at once', async () => {
  const cache = join(folder, 'two');
  const program = fileURLToPath(new URL('../../../tests/fixtures/open-ledger.ts', import.meta.url));
  const said = await Promise.all(
    ['node', 'node', 'wasm', 'wasm'].map(async (build, index) => {
      // The two builds do not know each other's locks.
      const child = spawn(process.execPath, [program, records, join(cache, build), build]);
      let text = '';
      child.stdout.on('data', (chunk: Buffer) => {
        text += chunk;
      });
      child.stderr.on('data', (chunk: Buffer) => {
        text += chunk;
      });
      await once(child, 'close');
      return `${index} ${text}`;
    }),
  );
  expect(said).toEqual([0, 1, 2, 3].map((index) => `${index} ${count} []`));
  expect(recordNames(records)).toHaveLength(count);
}, 60_000);
