import type { Bench } from '../bench.ts';
import { sideBySide } from '../measure/side-by-side.ts';
import { ourCommand } from '../programs/command.ts';
import { askedJob, jobFolder } from '../workload/jobs.ts';

/** The commands that a shop waits for, by name. */
export const jobCommands: Readonly<Record<string, readonly string[]>> = {
  certificate: ['certificate', askedJob, '--format', 'html'],
  shim: ['shim', askedJob],
  print: ['print', askedJob, '--format', 'html'],
};

const oneJob: Bench = {
  title: 'the whole process of certificate, shim and print for one job among many, against the job alone',
  async *run(setting) {
    const { folders, checkouts, quick, brief } = setting;
    for (const count of quick ? [1000] : [1000, 10_000]) {
      const alone = folders.of('1 job', () => jobFolder(1));
      const among = folders.of(`${count} jobs`, () => jobFolder(count));
      for (const [name, args] of Object.entries(jobCommands))
        for (const how of ['cold', 'with the cache']) {
          const measured = (checkout: (typeof checkouts)[number], folder: string, label: string) => {
            const kept = folders.empty();
            return {
              name: label,
              async measure() {
                const cache = how === 'cold' ? folders.empty() : kept;
                return (await ourCommand(setting, checkout, folder, cache, ...args)).wall;
              },
            };
          };
          yield {
            kind: 'comparison',
            unit: 'ms',
            work: `${name} of one job among ${count.toLocaleString('en')}, ${how}`,
            measured: await sideBySide(
              [
                ...checkouts.map((checkout) => measured(checkout, among, checkout.name)),
                measured(checkouts[0]!, alone, 'the job alone'),
              ],
              { most: brief ? 5 : 9, seconds: brief ? 20 : 60, warm: 1 },
            ),
            limits: [{ of: 'median', times: 1.3, than: 'the job alone' }],
          };
        }
    }
  },
};
export default oneJob;
