import { cpSync, mkdirSync, readdirSync, readFileSync, renameSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileHash, readList } from '../../../server/host/files/records.ts';
import { openLedger } from '../../../server/host/ledger/ledger.ts';
import { affected, history, learned } from '../../../server/host/ledger/questions.ts';
import type { Bench, Comparison, Setting } from '../bench.ts';
import { sideBySide } from '../measure/side-by-side.ts';
import { spreadOf } from '../measure/spread.ts';
import { ourCommand, type Used } from '../programs/command.ts';
import { OurServer } from '../programs/our-server.ts';
import { writeClosedJobs } from '../workload/closed-jobs.ts';
import { libraryFile } from '../workload/procedures.ts';
import { type Archive, archive } from '../workload/season-records.ts';

const reading = 'reading and hashing alone';
const row = { kind: 'comparison', unit: 'ms' } as const;

const ledger: Bench = {
  title:
    'the ledger of closed jobs: first build beside reading and hashing, one more job, each question; what else reads the folder',
  onlyNamed: true,
  inProcess: true,
  async *run(setting) {
    const { folders, quick, brief } = setting;
    const season = archive();
    for (const count of quick ? [1000] : brief ? [1000, 10_000] : [1000, 10_000, 100_000]) {
      const jobs = `${count.toLocaleString('en')} jobs`;
      const workspace = folders.of(`season, ${jobs}`, () => season.files);
      const records = join(workspace, 'records');
      season.write(records, 1, count);
      yield* firstBuild(setting, records, jobs, count);
      yield* questions(setting, records, season, count);
      yield* besideIt(setting, workspace, jobs);
    }
    if (quick) return;
    const light = folders.empty();
    writeClosedJobs(light, 1, 10_000);
    yield* firstBuild(setting, light, '10,000 jobs of 7 kB', 10_000);
  },
};
export default ledger;

async function* firstBuild({ folders, quick }: Setting, records: string, jobs: string, count: number) {
  const rounds = { most: quick || count > 10_000 ? 3 : 7, seconds: 300, warm: count > 10_000 ? 0 : 1 };
  const caches: string[] = [];
  const cache = () => {
    caches.push(folders.empty());
    return caches.at(-1)!;
  };
  const measured = await sideBySide(
    [
      { name: 'Handtight', measure: () => timeOf(() => build(records, cache())) },
      { name: reading, measure: () => timeOf(() => readAll(records)) },
    ],
    rounds,
  );
  yield {
    ...row,
    work: `first build of the ledger, ${jobs}: processor time`,
    measured,
    limits: [{ of: 'median', times: 4, than: reading }],
  } satisfies Comparison;
  const [file] = readdirSync(caches.at(-1)!);
  const size = statSync(join(caches.at(-1)!, file!)).size / 1024 / 1024;
  yield {
    ...row,
    unit: 'MB',
    work: `file of the ledger, ${jobs}`,
    measured: one([size]),
    limits: [],
  } satisfies Comparison;
}

async function* questions({ folders }: Setting, records: string, season: Archive, count: number) {
  const jobs = `${count.toLocaleString('en')} jobs`;
  const cache = folders.empty();
  await build(records, cache);
  const more: number[] = [];
  for (let number = count + 1; number <= count + 7; number++) {
    season.write(records, number, number);
    more.push(await timeOf(() => build(records, cache)));
  }
  yield answer(`opening the ledger after one more job, ${jobs}`, more);
  const opened = await openLedger(records, { cache });
  const [day, month] = ['2016-01-20', { from: '2016-01-01', to: '2016-01-31' }];
  const asked: Readonly<Record<string, () => unknown>> = {
    'history of a serial': () => history(opened, `${Math.ceil(count / 2)}-1`),
    'history of a serial that is not known': () => history(opened, 'no such serial'),
    'affected by a gauge on one day': () => affected(opened, { tool: 'PG-400', from: day, to: day }),
    'affected by a gauge in one month': () => affected(opened, { tool: 'PG-400', ...month }),
    'affected by a batch in one month': () => affected(opened, { batch: 'L-7', ...month }),
    'affected by somebody in one month': () => affected(opened, { by: 'M. Ortiz', ...month }),
    'affected by a revision on one day': () =>
      affected(opened, { procedure: 'rebuild-one-spring', revision: 'C', from: day, to: day }),
    'learned of all years': () => learned(opened, {}),
    'learned of one month': () => learned(opened, month),
  };
  for (const [name, ask] of Object.entries(asked)) {
    ask();
    const values: number[] = [];
    for (let round = 0; round < 9; round++) values.push(await timeOf(async () => void ask()));
    yield answer(`${name}, ${jobs}`, values);
  }
  opened.close();
}

/** What reads the folder for something else, beside the same folder without the records. */
async function* besideIt(setting: Setting, workspace: string, jobs: string): AsyncIterable<Comparison> {
  const { folders, checkouts, brief } = setting;
  const without = folders.empty();
  const aside = join(folders.empty(), 'records');
  const records = join(workspace, 'records');
  // Copied without the records, which are many.
  renameSync(records, aside);
  cpSync(workspace, without, { recursive: true });
  renameSync(aside, records);
  mkdirSync(join(without, 'records'));
  const cache = { with: folders.empty(), without: folders.empty() };
  const rounds = { most: brief ? 5 : 9, seconds: 60, warm: 1 };
  const beside = 'without the records';
  const limits = [{ of: 'median', times: 1.2, than: beside }] as const;
  const works: Readonly<Record<string, readonly string[]>> = {
    check: ['check'],
    certificate: ['certificate', '3001', '--format', 'html', '--to', 'printed'],
    'the first question, and building the ledger': ['history', '1-1'],
  };
  for (const [name, args] of Object.entries(works)) {
    const isQuestion = args[0] === 'history';
    const run = (folder: string, kept: string): Promise<Used> =>
      ourCommand(setting, checkouts[0]!, folder, isQuestion ? folders.empty() : kept, ...args);
    if (isQuestion) {
      const used = await run(workspace, cache.with);
      yield { ...row, work: `${name}, ${jobs}: whole process`, measured: one([used.wall]), limits: [] };
      yield { ...row, unit: 'MB', work: `${name}, ${jobs}: most memory`, measured: one([used.memory]), limits: [] };
      continue;
    }
    yield {
      ...row,
      work: `${name} beside ${jobs} that are closed, with the cache: processor time`,
      measured: await sideBySide(
        [
          { name: 'Handtight', measure: async () => (await run(workspace, cache.with)).processor },
          { name: beside, measure: async () => (await run(without, cache.without)).processor },
        ],
        rounds,
      ),
      limits,
    };
  }
  const file = libraryFile('one-spring/procedure.rebuild');
  const path = `procedures/${file.path}`.replace('procedures/procedures', 'procedures');
  const started = async (folder: string, kept: string) => {
    const server = await OurServer.started(setting, checkouts[0]!, folder, { path, text: file.text }, kept);
    await server.stop();
    return server.firstFindings;
  };
  yield {
    ...row,
    work: `initialized to the findings of the open file beside ${jobs} that are closed`,
    measured: await sideBySide(
      [
        { name: 'Handtight', measure: () => started(workspace, cache.with) },
        { name: beside, measure: () => started(without, cache.without) },
      ],
      rounds,
    ),
    limits,
  };
}

const one = (values: readonly number[]) => [{ name: 'Handtight', spread: spreadOf(values) }];

/** Design: an answer within 20 ms after the start. */
const answer = (work: string, values: readonly number[]): Comparison => ({
  ...row,
  work,
  measured: one(values),
  limits: [{ of: 'median', most: 20 }],
});

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
