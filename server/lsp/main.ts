/** The language server's entry in Node. Bundled, what it loads is a file of its own, which a second start need not compile. */
import module from 'node:module';
import v8 from 'node:v8';

// Node 20 does not know how: there it only starts a little later.
module.enableCompileCache?.();

// An editor runs for days beside other programs: what a check leaves behind is collected soon, not when there is much of it.
v8.setFlagsFromString('--semi-space-growth-factor=1');
v8.setFlagsFromString('--heap-growing-percent=60');

void import('./node-main.ts');
