/** Runs one case after another where it can be stopped from outside. */
import { parentPort } from 'node:worker_threads';
import type { FuzzCase } from './case.ts';
import { failuresOf } from './targets.ts';

parentPort!.on('message', async (one: FuzzCase) => {
  const failures = await failuresOf(one, (target) => parentPort!.postMessage({ target }));
  parentPort!.postMessage({ failures });
});
