import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileHash, readList } from '../../../server/host/files/records.ts';
import { openLedger } from '../../../server/host/ledger/ledger.ts';
import { affected, history } from '../../../server/host/ledger/questions.ts';
import type { Bench, Comparison, Setting } from '../bench.ts';
import { sideBySide } from '../measure/side-by-side.ts';
import { spreadOf } from '../measure/spread.ts';
import { writeClosedJobs } from '../workload/closed-jobs.ts';

const reading = 'reading and hashing alone';

const ledger: Bench = {
  title: 'the ledger of closed jobs: first build beside reading and hashing, one more job, each question, memory',
  onlyNamed: true,
  inProcess: true,
  async *run(setting) {
    for (const count of setting.quick ? [1000] : [1000, 10_000, 100_000]) yield* ofSize(setting, count);
  },
};
export default ledger;

async function* ofSize({ folders, quick }: Setting, count: number): AsyncIterable<Comparison> {
  const jobs = `${count.toLocaleString('en')} jobs`;
  const records = folders.empty();
  writeClosedJobs(records, 1, count);
  const row = { kind: 'comparison', unit: 'ms' } as const;
  const rounds = { most: quick ? 3 : count > 10_000 ? 3 : 7, seconds: 120, warm: 1 };
  const first = await sideBySide(
    [
      { name: 'Handtight', measure: () => timeOf(() => build(records, folders.empty())) },
      { name: reading, measure: () => timeOf(() => readAll(records)) },
    ],
    rounds,
  );
  yield { ...row, work: `first build, ${jobs}`, measured: first, limits: [{ of: 'median', times: 4, than: reading }] };

  const cache = folders.empty();
  await build(records, cache);
  const [before] = [process.memoryUsage().rss];
  let next = count;
  const more: number[] = [];
  for (let round = 0; round < 7; round++) {
    next++;
    writeClosedJobs(records, next, next);
    more.push(await timeOf(() => build(records, cache)));
  }
  const one = (name: string, values: readonly number[]) => [{ name, spread: spreadOf(values) }];
  yield {
    ...row,
    work: `one more job, ${jobs}`,
    measured: one('Handtight', more),
    limits: [{ of: 'median', most: 20 }],
  };

  const opened = await openLedger(records, { cache });
  const questions: Readonly<Record<string, () => unknown>> = {
    'history of a serial': () => history(opened, `${Math.ceil(count / 2)}-1`),
    'a gauge in one month': () => affected(opened, { tool: 'PG-400', from: '2016-02-01', to: '2016-02-28' }),
    'a revision on one day': () =>
      affected(opened, { procedure: 'rebuild-one-spring', revision: 'B', from: '2016-01-20', to: '2016-01-20' }),
  };
  for (const [name, ask] of Object.entries(questions)) {
    ask();
    const values: number[] = [];
    for (let round = 0; round < 9; round++) values.push(await timeOf(async () => void ask()));
    yield {
      ...row,
      work: `${name}, ${jobs}`,
      measured: one('Handtight', values),
      limits: [{ of: 'median', most: 20 }],
    };
  }
  opened.close();
  yield {
    kind: 'comparison',
    unit: 'MB',
    work: `memory more than after the build, ${jobs}`,
    measured: one('Handtight', [Math.max(0, process.memoryUsage().rss - before) / 1024 / 1024]),
    limits: [],
  };
}

/** Processor time of this process, ms. */
async function timeOf(work: () => unknown): Promise<number> {
  const before = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

async function build(records: string, cache: string): Promise<void> {
  (await openLedger(records, { cache })).close();
}

function readAll(records: string): void {
  for (const [name, hash] of readList(records))
    if (fileHash(readFileSync(join(records, name))) !== hash) throw new Error(`${name} was changed.`);
}
