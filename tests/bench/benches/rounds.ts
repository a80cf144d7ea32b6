import type { Bench } from '../bench.ts';
import { startIn } from './among-many.ts';

const rounds: Bench = {
  title: 'memory of the server over a thousand rounds of open, edit and close',
  async *run(setting) {
    const { checkouts, folders, quick } = setting;
    for (const checkout of checkouts) {
      const server = await startIn(setting, 10, checkout, folders.empty());
      const points: { size: number; value: number }[] = [];
      const step = quick ? 20 : 100;
      for (let size = step; size <= step * 10; size += step) {
        for (let round = 0; round < step; round++) {
          await server.edit();
          await server.reopen();
        }
        points.push({ size, value: server.memory() });
      }
      await server.stop();
      // The first rounds fill what is kept; from there on it has to be flat.
      yield {
        kind: 'growth',
        work: `memory over rounds of open, edit and close (${checkout.name})`,
        of: 'rounds',
        unit: 'MB',
        points,
        most: 0.1,
      };
    }
  },
};
export default rounds;
