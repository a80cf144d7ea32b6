import { randomUUID } from 'node:crypto';
import {
  accessSync,
  chmodSync,
  constants,
  existsSync,
  mkdirSync,
  readdirSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { english, joined, type Said, say } from '../../../language/say/say.ts';

/** A file could not be written. The message names it and says what to do. */
export class WriteError extends Error {
  readonly file: string;
  readonly said: Said;

  constructor(file: string, cause: NodeJS.ErrnoException, option: string | null = '--to') {
    const said = say`Cannot write ${file}: ${option === null ? remedyInPlace(cause) : remedy(cause, option)}`;
    super(english(said), { cause });
    this.name = 'WriteError';
    this.file = file;
    this.said = said;
  }
}

/**
 * Writes a file whole or not at all: into a file beside it, which then takes its name. Makes the folder if it is not
 * there. Throws a WriteError and leaves what was there before; `option` is the one that another place is given with; null: it
 * has to be this file. A file that was there keeps its mode.
 */
export function writeWhole(file: string, content: string | Uint8Array, option: string | null = '--to'): void {
  let beside: string | null = null;
  try {
    makeFolder(dirname(file));
    const target = targetOf(file);
    if (target.kind === 'device') writeFileSync(file, content);
    else {
      removeLeft(dirname(target.path));
      beside = partFile(dirname(target.path));
      writeFileSync(beside, content, { flag: 'wx', flush: true });
      if (target.mode !== null) chmodSync(beside, target.mode & 0o7777);
      renameSync(beside, target.path);
    }
  } catch (error) {
    if (beside !== null) removed(beside);
    throw new WriteError(file, error as NodeJS.ErrnoException, option);
  }
}

/** Name of a file that is being written: nothing that begins with a dot is read. */
export function partFile(folder: string): string {
  return join(folder, `.${randomUUID()}.part`);
}

/** ms: no file takes so long to write. */
const hour = 3_600_000;

/** Removes what writing left in a folder when it was killed. */
export function removeLeft(folder: string): void {
  for (const name of readdirSync(folder)) {
    if (!/^\.[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}\.part$/u.test(name)) continue;
    const path = join(folder, name);
    const at = statSync(path, { throwIfNoEntry: false });
    if (at !== undefined && Date.now() - at.mtimeMs > hour) removed(path);
  }
}

/**
 * What a name stands for. A link is kept, and the file that it leads to takes the content. A device (`/dev/stdout`) is
 * written into: a file put in its place would break the machine. A file that its owner has made read-only is meant to stay.
 */
function targetOf(file: string): {
  readonly kind: 'file' | 'device';
  readonly path: string;
  readonly mode: number | null;
} {
  const at = statSync(file, { throwIfNoEntry: false });
  if (at === undefined) return { kind: 'file', path: file, mode: null };
  if (!at.isFile() && !at.isDirectory()) return { kind: 'device', path: file, mode: null };
  if (at.isFile()) accessSync(file, constants.W_OK);
  return { kind: 'file', path: realpathSync(file), mode: at.mode };
}

/**
 * Makes a folder and those above it, one at a time: the recursive way of Node never comes back where the system makes
 * no folders (`/proc`).
 */
function makeFolder(folder: string): void {
  if (existsSync(folder)) return;
  const above = dirname(folder);
  if (above !== folder) makeFolder(above);
  try {
    mkdirSync(folder);
  } catch (error) {
    // Another print may have made it just now.
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
  }
}

/** Takes away what was begun. What went wrong before is what the person must hear of, not this. */
function removed(file: string): void {
  try {
    rmSync(file, { force: true });
  } catch {
    // The folder is gone, or is a file: there is nothing to take away.
  }
}

/** What went wrong in plain words, and what to do. */
function remedy(cause: NodeJS.ErrnoException, option: string): Said {
  switch (cause.code) {
    case 'ENOSPC':
    case 'EDQUOT':
      return say`the disk is full. Make room, or give another folder with ${option}.`;
    case 'EACCES':
    case 'EPERM':
      return say`no permission. Give a folder that you may write to with ${option}; or, where the file is read-only or open in a reader, release it.`;
    case 'EROFS':
      return say`the disk is read-only. Give another folder with ${option}.`;
    case 'EBUSY':
      return say`another program has it open. Close it and print again.`;
    case 'ENOENT':
      return say`the folder cannot be made there. Give another folder with ${option}.`;
    case 'ENOTDIR':
    case 'EEXIST':
      return say`there is a file where a folder is needed. Give another folder with ${option}.`;
    case 'EISDIR':
    case 'ENOTEMPTY':
      return say`a folder of that name is in the way. Take it away, or give another folder with ${option}.`;
    case 'ENAMETOOLONG':
      return say`the name is too long. Give a shorter folder with ${option}.`;
    default:
      return joined([cause.message, ''], '.');
  }
}

/** The same for a file that can be in no other place. */
function remedyInPlace(cause: NodeJS.ErrnoException): Said {
  switch (cause.code) {
    case 'ENOSPC':
    case 'EDQUOT':
      return say`the disk is full. Make room and run the command again.`;
    case 'EACCES':
    case 'EPERM':
      return say`no permission. Let its owner give you the right to write to it and to its folder.`;
    case 'EROFS':
      return say`the disk is read-only. Copy the files to another one and work there.`;
    case 'EBUSY':
      return say`another program has it open. Close it there and run the command again.`;
    default:
      return joined([cause.message, ''], '.');
  }
}
