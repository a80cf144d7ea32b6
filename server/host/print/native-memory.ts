import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/** Documents after which the memory of those before is given back. */
const documents = 8;
let made = 0;

/**
 * Has the memory of typeset documents given back now and then. They live outside of what the collector of Node weighs:
 * it sees sixty small handles and waits, while they hold a gigabyte. What it frees goes at the next turn of the event loop.
 */
export function documentMade(): void {
  made += 1;
  if (made % documents !== 0) return;
  setFlagsFromString('--expose-gc');
  (runInNewContext('gc') as () => void)();
}
