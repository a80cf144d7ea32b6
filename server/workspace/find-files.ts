import { lstatSync, readdirSync, statSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { settingsName } from '../../language/settings/settings.ts';

/** Folders that hold no author's text. */
const skipped = new Set(['node_modules', 'out', 'dist']);

/** What stands at a path given by hand: its files, or why there are none. */
export type FoundFiles = { readonly files: readonly string[] } | { readonly problem: string };

/** The `.rebuild` files at a path: itself, or all below it. Links to folders are not followed. */
export function filesAt(path: string): FoundFiles {
  try {
    if (statSync(path).isDirectory()) return { files: below(path) };
    return { files: [path] };
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    return {
      problem:
        code === 'ENOENT'
          ? `${path} is not there. Check the spelling, or give a folder that has .rebuild files in it.`
          : `${path} cannot be read (${code}).`,
    };
  }
}

function below(folder: string): string[] {
  return readdirSync(folder)
    .sort()
    .flatMap((name) => {
      const path = join(folder, name);
      const stat = lstatSync(path, { throwIfNoEntry: false });
      if (stat?.isDirectory()) return name.startsWith('.') || skipped.has(name) ? [] : below(path);
      return stat !== undefined && isRead(name) ? [path] : [];
    });
}

/** A file's name says whether it is read: procedures, and the settings of a workspace. */
export function isRead(name: string): boolean {
  return name.endsWith('.rebuild') || name === settingsName;
}

/** A path as it is shown and kept in records: from the current folder, with forward slashes. */
export function shownPath(path: string): string {
  const near = relative(process.cwd(), resolve(path));
  return (near.startsWith('..') ? resolve(path) : near).replaceAll('\\', '/');
}
