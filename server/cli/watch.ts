/** `handtight check --watch`: checks again whenever a file changes, until it is stopped. */
import { basename, resolve } from 'node:path';
import { watch } from 'chokidar';
import pc from 'picocolors';
import type { Workspace } from '../../language/db/workspace.ts';
import { settingsAt } from '../host/files/find-files.ts';
import { isNamePassedOver, isRead } from '../host/files/which-files.ts';
import { type CheckOptions, checkOnce } from './check.ts';
import { worded } from './messages.ts';
import { onStop } from './on-stop.ts';
import { clearTerminal, say } from './say.ts';
import { UsageError } from './usage-error.ts';
import { keepResults } from './workspace.ts';

/** Pause after a change, ms: an editor that saves, or a branch that is switched, changes several files. */
const pause = 100;

/**
 * Never ends by itself. What was worked out is kept from one check to the next, so that a change costs what depends on it; the files are
 * found and read again each time, so that nothing is missed that came or went.
 */
export async function watchCommand(paths: readonly string[], options: CheckOptions): Promise<never> {
  // Names are looked up in this folder too, and settings may be above it.
  const settings = settingsAt('.');
  const roots = new Set(['.', ...paths, options.workspace ?? '.', settings ?? '.'].map((path) => resolve(path)));
  const watcher = watch([...roots], {
    ignoreInitial: true,
    ignored: (path, stats) =>
      !roots.has(resolve(path)) &&
      (isNamePassedOver(basename(path)) || (stats !== undefined && !stats.isDirectory() && !isRead(path))),
  });
  await new Promise<void>((done) => watcher.once('ready', () => done()));
  onStop(() => say('\n'));

  // A change that comes during a check counts.
  let changed = () => {};
  let isChanged = false;
  watcher.on('all', () => {
    isChanged = true;
    changed();
  });
  let known: Workspace | null = null;
  const check = async () => {
    clearTerminal();
    say(pc.dim(`${new Date().toTimeString().slice(0, 8)}  ${worded`checking`}\n`));
    const { workspace } = await checkOnce(paths, options, known);
    if (known === null) keepResults();
    known = workspace;
  };
  await check();
  for (;;) {
    say(pc.dim(`${worded`Watching for changes. Ctrl-C ends it.`}\n`));
    if (!isChanged)
      await new Promise<void>((done) => {
        changed = done;
      });
    await new Promise((done) => setTimeout(done, pause));
    isChanged = false;
    try {
      await check();
    } catch (error) {
      // A file that was named is gone, or all are: they may come back.
      if (!(error instanceof UsageError)) throw error;
      say(`${error.message}\n`);
    }
  }
}
