/** Which files of a workspace are read: the same in the command, in the editor, and wherever the editor runs. */
import { settingsName } from '../../../language/config/config.ts';

/** Folders that hold no author's text, however many there are. */
const skipped = new Set(['node_modules', 'out', 'dist']);

/** More files than any shop writes: a workspace at the root of a disk must not take the memory. */
export const mostFiles = 10_000;

/** Said of the first file beyond them. */
export const tooManyFiles = `This file and those after it are not read: there are more than ${mostFiles} in this workspace. Open or name a smaller folder.`;

/** A path, from the folder that is walked, that the walk would not come to: it tells of a change of a file the same. */
export function isPassedOver(path: string): boolean {
  return path.split(/[\\/]/u).some((name) => name.startsWith('.') || skipped.has(name));
}

/** A file's name says whether it is read: procedures, and the settings of a workspace. */
export function isRead(path: string): boolean {
  const name = path.replace(/^.*[\\/]/u, '');
  return !name.startsWith('.') && (name.endsWith('.rebuild') || name === settingsName);
}
