import { Workspace } from '../../../language/db/workspace.ts';
import type { Bench, Growth, Setting } from '../bench.ts';
import { processorTime } from '../measure/side-by-side.ts';
import { spreadOf } from '../measure/spread.ts';
import { ourCommand } from '../programs/command.ts';
import { jobFolder } from '../workload/jobs.ts';
import {
  longPath,
  longProcedure,
  oneTryRepairs,
  repairsPath,
  type WorkloadFile,
  withSlip,
} from '../workload/procedures.ts';
import { startIn } from './among-many.ts';
import { jobCommands } from './one-job.ts';

/** An exponent within noise of one. */
const linear = 1.15;
/** Of what must not depend on the size at all. */
const flat = 0.15;

type Points = Growth['points'];

const growth: Bench = {
  title: 'how the work grows with steps, files, jobs and one-try repairs: the exponent of each',
  inProcess: true,
  async *run(setting) {
    const { quick } = setting;
    const row = { kind: 'growth', unit: 'ms' } as const;

    const steps = quick ? [60, 300, 1000] : [60, 300, 1000, 3000, 10_000];
    const bySteps = checksOf(steps, longProcedure, longPath);
    yield { ...row, work: 'first check of one procedure', of: 'steps', points: bySteps.first, most: linear };
    yield { ...row, work: 'check after an edit of it', of: 'steps', points: bySteps.edit, most: linear };

    const repairs = quick ? [1, 5, 10] : [1, 5, 10, 20, 40];
    const byRepairs = checksOf(repairs, oneTryRepairs, repairsPath);
    yield { ...row, work: 'first check with one-try repairs', of: 'repairs', points: byRepairs.first, most: linear };

    const files = quick ? [1, 10, 100] : [1, 10, 100, 1000, 5000];
    const byFiles = await editsOf(setting, files);
    yield { ...row, work: 'edit over stdio', of: 'files', points: byFiles.edit, most: flat };
    yield { ...row, work: 'one new name over stdio', of: 'files', points: byFiles.newName, most: flat };
    yield { ...row, work: 'all findings after the start', of: 'files', points: byFiles.everything, most: linear };
    yield { ...row, unit: 'MB', work: 'memory of the server', of: 'files', points: byFiles.memory, most: linear };

    const jobs = quick ? [1, 10, 100, 1000] : [1, 10, 100, 1000, 10_000];
    for (const [name, args] of Object.entries(jobCommands)) {
      const points: { size: number; value: number }[] = [];
      for (const size of jobs) points.push({ size, value: await jobTime(setting, size, args) });
      yield { ...row, work: `${name} of one job`, of: 'jobs', points, most: flat };
    }
  },
};
export default growth;

/** Processor time of checks in this process, by size. */
function checksOf(sizes: readonly number[], filesOf: (size: number) => readonly WorkloadFile[], path: string) {
  const first: { size: number; value: number }[] = [];
  const edit: { size: number; value: number }[] = [];
  // Compilers settle before anything counts.
  for (const [turn, size] of [sizes[0]!, sizes[0]!, ...sizes].entries()) {
    const right = filesOf(size).map((file) => ({ uri: file.path, text: file.text }));
    const wrong = right.map((file) => (file.uri === path ? { ...file, text: withSlip(file.text) } : file));
    const fresh: number[] = [];
    const edits: number[] = [];
    // What is quick is done several times.
    while (fresh.length < 1 || (turn > 1 && fresh.length < 5 && fresh[0]! < 200)) {
      const workspace = new Workspace();
      const check = (files: typeof right) => processorTime(() => workspace.check(files).diagnostics.length);
      fresh.push(check(right));
      edits.push(check(wrong), check(right), check(wrong));
    }
    if (turn < 2) continue;
    first.push({ size, value: spreadOf(fresh).median });
    edit.push({ size, value: spreadOf(edits).median });
  }
  return { first, edit } satisfies Record<string, Points>;
}

/** What is measured of the server, by the number of procedures in its folder. */
async function editsOf(setting: Setting, sizes: readonly number[]) {
  const points = { edit: [], newName: [], everything: [], memory: [] } as Record<
    'edit' | 'newName' | 'everything' | 'memory',
    { size: number; value: number }[]
  >;
  for (const size of sizes) {
    const server = await startIn(setting, size, setting.checkouts[0]!, setting.folders.empty());
    const middle = async (act: () => Promise<number>) => {
      const times: number[] = [];
      const end = performance.now() + 30_000;
      while (times.length < 15 && performance.now() < end) times.push(await act());
      return spreadOf(times).median;
    };
    await middle(() => server.edit());
    points.edit.push({ size, value: await middle(() => server.edit()) });
    points.newName.push({ size, value: await middle(() => server.newName()) });
    points.everything.push({ size, value: server.everything });
    points.memory.push({ size, value: server.memory() });
    await server.stop();
  }
  return points;
}

async function jobTime(setting: Setting, count: number, args: readonly string[]): Promise<number> {
  const { folders, checkouts } = setting;
  const folder = folders.of(`${count} jobs`, () => jobFolder(count));
  const times: number[] = [];
  for (let time = 0; time < 3; time++)
    times.push((await ourCommand(setting, checkouts[0]!, folder, folders.empty(), ...args)).wall);
  return spreadOf(times).median;
}
