/** Which files of a workspace are read: the same in the command, in the editor, and wherever the editor runs. */
import ignore from 'ignore';
import { settingsName } from '../../../language/config/settings-name.ts';
import { type Said, say } from '../../../language/say/say.ts';

/** Folders that hold no author's text, however many there are. */
const skipped = new Set(['node_modules', 'out', 'dist']);

/** More files than any shop writes: a workspace at the root of a disk must not take the memory. */
export const mostFiles = 50_000;

/** The message at the first file beyond them. */
export const tooManyFiles: Said = say`This file and those after it are not read: there are more than ${mostFiles} in this workspace. Open or name a smaller folder.`;

/** A file that was there, and is not when it is read. */
export const goneText: Said = say`It is no longer there.`;

/** A path, from the folder that is walked, that the walk would not reach: a watcher reports changes there all the same. */
export function isPassedOver(path: string): boolean {
  return path.split(/[\\/]/u).some(isNamePassedOver);
}

export function isNamePassedOver(name: string): boolean {
  return name.startsWith('.') || skipped.has(name);
}

/** A file's name says whether it is read: procedures, and the settings of a workspace. */
export function isRead(path: string): boolean {
  const name = path.replace(/^.*[\\/]/u, '');
  return !name.startsWith('.') && (name.endsWith('.rebuild') || name === settingsName);
}

/**
 * What is left out by patterns as in .gitignore, by the path below the folder that they are for: nothing outside it.
 * Uppercase and lowercase letters are different everywhere, whatever the disk does.
 */
export function leftOutBy(patterns: readonly string[]): (below: string, kind: 'file' | 'folder') => boolean {
  const left = ignore({ ignorecase: false }).add(patterns);
  return (below, kind) => ignore.isPathValid(below) && left.ignores(kind === 'folder' ? `${below}/` : below);
}
