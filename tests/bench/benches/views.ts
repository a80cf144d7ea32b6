import type { Bench } from '../bench.ts';
import { sideBySide } from '../measure/side-by-side.ts';
import { OurServer } from '../programs/our-server.ts';
import { editedPath, longPath, longProcedure, manyProcedures, type WorkloadFile } from '../workload/procedures.ts';

/** What is shown beside the text, and requested again after each keystroke. */
const shown = ['sheet', 'specs', 'drawing', 'state'] as const;

const sizes = [
  { steps: 100, files: () => manyProcedures(1), path: editedPath, most: 100 },
  { steps: 1000, files: () => longProcedure(1000), path: longPath, most: 20 },
] as const;

const views: Bench = {
  title: 'what is shown beside the text, right after an edit',
  async *run(setting) {
    const { folders, checkouts, quick } = setting;
    for (const { steps, files, path, most } of sizes) {
      const folder = folders.of(`views of ${steps}`, files);
      const file = files().find((one) => one.path === path) as WorkloadFile;
      const servers: OurServer[] = [];
      for (const checkout of checkouts)
        servers.push(await OurServer.started(setting, checkout, folder, file, folders.empty()));
      for (const view of shown)
        yield {
          kind: 'comparison',
          unit: 'ms',
          work: `${view} right after an edit, ${steps.toLocaleString('en')} steps`,
          measured: await sideBySide(
            servers.map((server) => ({ name: server.name, measure: () => server.viewAfterEdit(view) })),
            { most: quick ? most / 5 : most, seconds: quick ? 15 : 60, warm: 5 },
          ),
          limits: steps === 100 ? [{ of: 'p95', most: 100 }] : [],
        };
      for (const server of servers) await server.stop();
    }
  },
};
export default views;
