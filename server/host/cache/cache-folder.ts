/** Where results are kept between runs: in the user's cache folder, never in the workspace. Nothing here throws. */
import { randomUUID } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import envPaths from 'env-paths';

const day = 24 * 60 * 60 * 1000;

/** What was not used for so long goes. */
const longestUnused = 60 * day;
/** Beyond this the oldest go. */
const mostBytes = 512 * 1024 * 1024;

/** Null: nothing is kept. `HANDTIGHT_CACHE` names another folder, or says `off`. */
export function cacheFolder(): string | null {
  const named = process.env.HANDTIGHT_CACHE;
  if (named === 'off') return null;
  return named === undefined || named === '' ? envPaths('handtight', { suffix: '' }).cache : resolve(named);
}

/** In signs of one byte each; null where there is none, or it cannot be read. */
export function readKept(folder: string, name: string): string | null {
  try {
    const path = join(folder, name);
    const text = readFileSync(path, 'latin1');
    const now = new Date();
    if (now.getTime() - statSync(path).mtimeMs > day) utimesSync(path, now, now);
    return text;
  } catch {
    return null;
  }
}

/** Writes a file whole or not at all, and lets go what is too old or too much. */
export function writeKept(folder: string, name: string, text: string): void {
  const beside = join(folder, `${name}.${randomUUID()}.part`);
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    writeFileSync(beside, text, { encoding: 'latin1', flag: 'wx', mode: 0o600 });
    renameSync(beside, join(folder, name));
    sweep(folder);
  } catch {
    // A folder that cannot be written, or a full disk: the next run works it out again.
    remove(beside);
  }
}

function sweep(folder: string) {
  const now = Date.now();
  const files = readdirSync(folder).flatMap((name) => {
    const at = statSync(join(folder, name), { throwIfNoEntry: false });
    return at?.isFile() ? [{ path: join(folder, name), time: at.mtimeMs, size: at.size }] : [];
  });
  let bytes = 0;
  for (const { path, time, size } of files.sort((a, b) => b.time - a.time)) {
    bytes += size;
    const isLeft = path.endsWith('.part') && now - time > day;
    if (isLeft || now - time > longestUnused || bytes > mostBytes) remove(path);
  }
}

function remove(path: string) {
  try {
    rmSync(path, { force: true });
  } catch {
    // It is tried again the next time.
  }
}
