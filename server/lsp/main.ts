/** The language server's entry in Node. Bundled, what it loads is a file of its own, which a second start need not compile. */
import module from 'node:module';
import { PerformanceObserver } from 'node:perf_hooks';
import v8 from 'node:v8';

// Node 20 does not know how: there it only starts a little later.
module.enableCompileCache?.();

// An editor runs for days beside other programs: what a check leaves behind is collected soon, not when there is much of it.
v8.setFlagsFromString('--semi-space-growth-factor=1');
v8.setFlagsFromString('--heap-growing-percent=60');

/**
 * Room for what is new, bytes: half of what one edit makes and drops again. With V8's first megabyte it is collected several
 * times in an edit, and what is still in use then goes to where collecting is slow; V8 alone would take up to sixteen.
 */
const roomForNew = 1.5e6;
/** While all is loaded and checked for the first time most of what is new stays: room would not help, and never be given back. */
const startingTime = 2_000;

function keepRoomForNew() {
  const room = v8.getHeapSpaceStatistics().find(({ space_name }) => space_name === 'new_space')?.space_size ?? 0;
  v8.setFlagsFromString(`--semi-space-growth-factor=${room < roomForNew ? 2 : 1}`);
}
setTimeout(() => new PerformanceObserver(keepRoomForNew).observe({ entryTypes: ['gc'] }), startingTime).unref();

void import('./node-main.ts');
