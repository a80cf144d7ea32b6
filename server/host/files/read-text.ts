/** Reads a file of the disk. What is not text is reported by the check, the same in the editor and on the command line. */
import { readFileSync, type Stats, statSync } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { settingsName } from '../../../language/config/settings-name.ts';
import { type Filling, type Said, say } from '../../../language/say/say.ts';
import type { ReadText } from '../host.ts';

const megabyte = 1024 * 1024;

/** Longest file that is read into memory, in bytes; the parser has a lower limit of its own, in characters. */
const longestFile = 64 * megabyte;
const longestSettings = megabyte;

/** Reads a file as UTF-8, without the byte order mark that some editors put before it. Never throws. */
export async function readText(path: string): Promise<ReadText> {
  try {
    return problemOf(path, await stat(path)) ?? textOf(await readFile(path, 'utf8'));
  } catch (error) {
    return whyNot(error);
  }
}

/** The same in one go: of thousands of small files most of the time would be waiting. */
export function readTextNow(path: string): ReadText {
  try {
    return problemOf(path, statSync(path)) ?? textOf(readFileSync(path, 'utf8'));
  } catch (error) {
    return whyNot(error);
  }
}

function problemOf(path: string, at: Stats): ReadText | null {
  const isSettings = path.endsWith(settingsName);
  if (!at.isFile()) {
    return unreadable(
      at.isDirectory()
        ? say`This is a folder, not a file, so it is not read. Rename it, or take it away.`
        : say`This is a pipe, a socket or a device, not a file, so it is not read. Rename it, or take it away.`,
    );
  }
  if (at.size <= (isSettings ? longestSettings : longestFile)) return null;
  const size = say`This file has ${Math.round(at.size / megabyte)} MB and was not read.`;
  return unreadable(
    isSettings
      ? say`${size} Settings take a few lines: check that this is the right file.`
      : say`${size} Put its declarations into several files.`,
  );
}

function textOf(text: string): ReadText {
  return { kind: 'text', text: text.replace(/^\uFEFF/u, '') };
}

function whyNot(error: unknown): ReadText {
  const { code } = error as NodeJS.ErrnoException;
  if (code === 'ENOENT' || code === 'ENOTDIR') return { kind: 'gone' };
  return unreadable(say`This file could not be read: ${whyUnread(error)}`);
}

function unreadable(message: Said): ReadText {
  return { kind: 'unreadable', message };
}

/** Why the system does not give a file or a folder, in plain words, and what to do. */
export function whyUnread(error: unknown): Filling {
  const { code, message } = error as NodeJS.ErrnoException;
  switch (code) {
    case 'EACCES':
    case 'EPERM':
      return say`no permission. Ask its owner for permission to read it, or move it out of the folder.`;
    case 'ELOOP':
      return say`it is a link that leads back to itself. Correct the link, or delete it.`;
    case 'ENAMETOOLONG':
      return say`its name is longer than the system allows. Give it a shorter one.`;
    case 'EBUSY':
      return say`another program has it open. Close it there.`;
    case 'EMFILE':
    case 'ENFILE':
      return say`too many files are open on this machine. Close some programs and try again.`;
    case 'EIO':
      return say`the disk or the network did not answer. See whether it is connected, and try again.`;
    default:
      return `${message ?? String(error)}.`;
  }
}
