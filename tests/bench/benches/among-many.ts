import type { Bench, Setting } from '../bench.ts';
import { sideBySide } from '../measure/side-by-side.ts';
import { spreadOf } from '../measure/spread.ts';
import { OurServer } from '../programs/our-server.ts';
import { editedPath, manyProcedures, withSlips } from '../workload/procedures.ts';
import { memoryOf, questions } from './edit.ts';

const file = manyProcedures(1).find(({ path }) => path === editedPath)!;

const amongMany: Bench = {
  title: 'a folder of many procedures: first findings, edits and new names against a lone file, answers, memory',
  async *run(setting) {
    const { folders, checkouts, quick } = setting;
    const lone = await startIn(setting, 1, checkouts[0]!, folders.empty());
    for (const count of quick ? [100] : [1000, 5000]) {
      const many = `${count.toLocaleString('en')} procedures`;
      for (const checkout of checkouts) {
        const name = checkouts.length === 1 ? '' : ` (${checkout.name})`;
        const cache = folders.empty();
        const cold = await startIn(setting, count, checkout, cache);
        yield* startsOf(cold, `${many}, cold${name}`, 10_000);
        yield* editsOf(setting, lone, cold, `${many}${name}`);
        yield memoryOf([cold], `memory after these edits, ${many}${name}`, 300);
        await cold.stop();
        const cached = await startIn(setting, count, checkout, cache);
        yield* startsOf(cached, `${many}, with the cache${name}`, 2000);
        await cached.stop();
      }
    }
    await lone.stop();
  },
};
export default amongMany;

export function startIn(
  setting: Setting,
  count: number,
  checkout: Setting['checkouts'][number],
  cache: string,
): Promise<OurServer> {
  const { files, wrong } = withSlips(manyProcedures(count));
  return OurServer.started(
    setting,
    checkout,
    setting.folders.of(`${count} procedures`, () => files),
    file,
    cache,
    wrong,
  );
}

function* startsOf({ name, firstFindings, everything }: OurServer, work: string, most: number) {
  const once = (value: number) => [{ name, spread: spreadOf([value]) }];
  const row = { kind: 'comparison', unit: 'ms' } as const;
  const open = { ...row, work: `initialized to the findings of the open file, ${work}`, measured: once(firstFindings) };
  yield { ...open, limits: [{ of: 'median', most: 300 }] } as const;
  const all = { ...row, work: `initialized to all findings, ${work}`, measured: once(everything) };
  yield { ...all, limits: [{ of: 'median', most }] } as const;
}

async function* editsOf({ brief }: Setting, lone: OurServer, many: OurServer, size: string) {
  const measure = (alone: () => Promise<number>, among: () => Promise<number>) =>
    sideBySide(
      [
        { name: many.name, measure: among },
        { name: 'lone file', measure: alone },
      ],
      { most: brief ? 10 : 40, seconds: brief ? 15 : 60, warm: 3 },
    );
  const row = { kind: 'comparison', unit: 'ms', limits: [{ of: 'median', times: 1.5, than: 'lone file' }] } as const;
  yield {
    ...row,
    work: `edit to findings among ${size}`,
    measured: await measure(
      () => lone.edit(),
      () => many.edit(),
    ),
  };
  yield {
    ...row,
    work: `one new name among ${size}, against an edit of the lone file`,
    measured: await measure(
      () => lone.edit(),
      () => many.newName(),
    ),
  };
  for (const question of questions)
    yield {
      ...row,
      work: `${question} right after an edit among ${size}`,
      measured: await measure(
        () => lone.askAfterEdit(question),
        () => many.askAfterEdit(question),
      ),
      limits: [{ of: 'p95', most: 5 }],
    } as const;
}
