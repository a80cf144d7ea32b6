import type { Bench, Comparison, Limit } from '../bench.ts';
import { sideBySide } from '../measure/side-by-side.ts';
import { spreadOf } from '../measure/spread.ts';
import { JsonServer, jsonServerName } from '../programs/json-server.ts';
import { OurServer } from '../programs/our-server.ts';
import type { Question, Typist } from '../programs/typist.ts';
import { editedPath, longPath, longProcedure, manyProcedures, type WorkloadFile } from '../workload/procedures.ts';

const atJson = (times: number, of: Limit['of'] = 'median'): Limit => ({ of, times, than: jsonServerName });
export const questions: readonly Question[] = ['completion', 'hover', 'definition'];

const sizes = [
  { steps: 100, files: () => manyProcedures(1), path: editedPath, most: 100, mostMemory: 120 },
  { steps: 10_000, files: () => longProcedure(10_000), path: longPath, most: 20, mostMemory: null },
] as const;

const edit: Bench = {
  title: 'one procedure: edit to findings, what is asked right after an edit, memory after the edits',
  async *run(setting) {
    const { folders, checkouts, peers, brief } = setting;
    for (const { steps, files, path, most, mostMemory } of sizes) {
      const folder = folders.of(`one of ${steps}`, files);
      const file = files().find((one) => one.path === path) as WorkloadFile;
      const bytes = Buffer.byteLength(file.text);
      const ours: OurServer[] = [];
      for (const checkout of checkouts)
        ours.push(await OurServer.started(setting, checkout, folder, file, folders.empty()));
      const all: Typist[] = [...ours];
      if (peers !== null) all.push(await JsonServer.started(peers, folders.empty(), bytes));
      const size = `${steps.toLocaleString('en')} steps, ${(bytes / 1000).toFixed(0)} kB`;
      const measure = (act: (typist: Typist) => Promise<number>, typists = all) =>
        sideBySide(
          typists.map((typist) => ({ name: typist.name, measure: () => act(typist) })),
          { most: brief ? most / 5 : most, seconds: brief ? 15 : 60, warm: 5 },
        );
      const row = { kind: 'comparison', unit: 'ms' } as const;
      const before = all.map((typist) => typist.processorTime());
      let rounds = 0;
      yield {
        ...row,
        work: `edit to findings, ${size}`,
        measured: await measure((typist) => {
          if (typist === ours[0]) rounds++;
          return typist.edit();
        }),
        limits: steps === 100 ? [atJson(1), atJson(3, 'p95')] : [atJson(1)],
      };
      // The system counts it in steps of 10 ms: too coarse for one edit.
      const processor = all.map((typist, index) => (typist.processorTime() - before[index]!) / rounds);
      yield {
        ...row,
        work: `edit to findings, ${size}: processor time of the server, mean`,
        measured: all.map(({ name }, index) => ({ name, spread: spreadOf([processor[index]!]) })),
        limits: [],
      };
      for (const question of questions)
        yield {
          ...row,
          work: `${question} right after an edit, ${size}`,
          // JSON has no definitions to go to.
          measured: await measure((typist) => typist.askAfterEdit(question), question === 'definition' ? ours : all),
          limits: [{ of: 'p95', most: 5 }],
        };
      yield memoryOf(all, `memory after these edits, ${size}`, mostMemory);
      for (const typist of all) await typist.stop();
    }
  },
};
export default edit;

/** Resident memory of servers as they are now. */
export function memoryOf(servers: readonly Typist[], work: string, most: number | null): Comparison {
  const measured = servers.map((server) => ({ name: server.name, spread: spreadOf([server.memory()]) }));
  return { kind: 'comparison', unit: 'MB', work, measured, limits: most === null ? [] : [{ of: 'median', most }] };
}
