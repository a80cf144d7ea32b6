/**
 * The main job from one command: checks the library, prints the demo jobs' travelers and the certificate of the
 * one that is done, and shows the check of one deliberately flawed procedure. Everything goes through the command line that a shop would use.
 */

import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import pc from 'picocolors';

const library = 'procedures';
const flawed = join(library, 'flawed');
const to = 'traveler';

/** Folders and files of the library without the flawed one. */
const sound = readdirSync(library, { withFileTypes: true })
  .map((entry) => join(library, entry.name))
  .filter(
    (path) => path !== flawed && (path.endsWith('.rebuild') || existsSync(join(path, '.'))) && !path.endsWith('.md'),
  );

const jobs = readdirSync(join(library, 'jobs')).map((name) => join(library, 'jobs', name));

say('1. The library is checked');
run(['check', ...sound], 0);

say('2. The demo jobs are printed: travelers for the bench, as PDF and as HTML');
run(['print', ...jobs, '--format', 'pdf,html', '--to', to, '--workspace', library], 0);

say('3. The certificate of the job that is done is printed for the customer');
// Made out on a day of its own, so that it is the same whatever the clock of the machine says.
run(['certificate', '2198', '--today', '2026-10-20', '--format', 'pdf,html', '--to', to, '--workspace', library], 0);

say('4. The job is closed, its record is verified, and the ledger is asked about a unit of it');
// In a folder of its own: what is issued and closed belongs to a shop, not to the library.
const shop = join(to, 'shop');
const records = join(shop, 'records');
rmSync(shop, { recursive: true, force: true });
run(['new', 'samples', shop], 0);
run(['issue', 'rebuild-one-spring', '--today', '2026-10-06', '--workspace', shop], 0);
run(['close', '2198', '--today', '2026-10-20', '--workspace', shop, '--to', records], 0);
run(['verify', records], 0);
run(['history', '2198', '--records', records], 0);

say('5. A procedure with mistakes in it is checked (they are meant: this is what the checker says)');
run(['check', flawed, '--workspace', join(library, 'shop.rebuild')], 1);

say('Done');
console.log(`The travelers and the certificate are in ${pc.bold(resolve(to))}:`);
for (const name of readdirSync(to).sort()) console.log(`  ${join(resolve(to), name)}`);
console.log(
  `\nOpen one of them. Then look at ${join(library, 'first/first.rebuild')} and the README's first ten minutes.`,
);

function say(words: string) {
  console.log(`\n${pc.bold(words)}\n`);
}

/** Runs the built command; stops the demo where it does not end as it should. */
function run(args: readonly string[], wanted: number) {
  console.log(pc.dim(`npx handtight ${args.join(' ')}\n`));
  const { status } = spawnSync(process.execPath, ['out/handtight.mjs', ...args], { stdio: 'inherit' });
  if (status === wanted) return;
  console.error(pc.red(`\nThis should have ended with ${wanted} and ended with ${status}.`));
  process.exit(1);
}
