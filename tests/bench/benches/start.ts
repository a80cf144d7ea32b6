import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Bench } from '../bench.ts';
import { sideBySide } from '../measure/side-by-side.ts';
import { jsonServerName } from '../programs/json-server.ts';
import { environment } from '../programs/our-server.ts';
import { startServer } from '../programs/started.ts';
import { inTime } from '../programs/typist.ts';

const start: Bench = {
  title: 'from the start of the server’s process to its answer to `initialize`',
  async *run(setting) {
    const { folders, checkouts, peers, profiles, quick } = setting;
    const folder = folders.empty();
    const profiling = profiles === null ? [] : ['--cpu-prof', `--cpu-prof-dir=${profiles}`];
    const started = (name: string, args: readonly string[]) => ({
      name,
      async measure() {
        const begin = performance.now();
        const driver = startServer(args, environment(folder));
        await inTime('initialize', 60, driver.initialize(pathToFileURL(folder).href));
        const took = performance.now() - begin;
        await driver.stop();
        return took;
      },
    });
    yield {
      kind: 'comparison',
      unit: 'ms',
      work: 'start of the process to `initialize` answered',
      measured: await sideBySide(
        [
          ...checkouts.map(({ name, root }) => started(name, [...profiling, join(root, 'out/server.cjs')])),
          ...(peers === null ? [] : [started(jsonServerName, [peers.jsonServer])]),
        ],
        { most: quick ? 10 : 30, seconds: 60, warm: 3 },
      ),
      limits: [{ of: 'median', times: 1, than: jsonServerName }],
    };
  },
};
export default start;
