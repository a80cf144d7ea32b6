/** The language server's entry in Node. Bundled, what it loads is a file of its own, which a second start need not compile. */
import module from 'node:module';

// Node 20 does not know how: there it only starts a little later.
module.enableCompileCache?.();

void import('./node-main.ts');
