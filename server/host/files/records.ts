/** A folder of records of closed jobs, and the list of them: each record is written once, and never again. */
import { createHash } from 'node:crypto';
import {
  closeSync,
  existsSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { recordEnding } from '../../../language/archive/record.ts';
import { fileKey, nameDigits } from '../print/file-name.ts';
import { partFile, removeLeft, WriteError } from '../print/write.ts';
import { listName } from './record-names.ts';

/** SHA-256 of the bytes of a file, hex. */
export function fileHash(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/** Name of the records of a job, without issue and ending; no other job has it. */
export function recordBase(job: string): string {
  const key = fileKey(job);
  return key === job ? job : `${key}-${nameDigits(job)}`;
}

export function recordName(job: string, issue: number): string {
  return `${recordBase(job)}-${issue}${recordEnding}`;
}

/** Names of the records in a folder, sorted; none where there is no folder. */
export function recordNames(folder: string): string[] {
  try {
    return readdirSync(folder)
      .filter((name) => name.endsWith(recordEnding) && !name.startsWith('.'))
      .sort();
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
    throw error;
  }
}

/** What the list says: the hash of each record by its name. A line that breaks off is none. */
export function readList(folder: string): ReadonlyMap<string, string> {
  const path = join(folder, listName);
  if (!existsSync(path)) return new Map();
  const lines = readFileSync(path, 'utf8').matchAll(/^([0-9a-f]{64}) {2}(\S.*)$/gmu);
  return new Map([...lines].map(([, hash, name]) => [name!, hash!]));
}

/** Lines of the list that are none: what was edited, or broke off. */
export function strayLines(folder: string): number {
  const path = join(folder, listName);
  if (!existsSync(path)) return 0;
  const lines = readFileSync(path, 'utf8').split('\n');
  return lines.filter((line) => line !== '' && !/^[0-9a-f]{64} {2}\S.*$/u.test(line)).length;
}

/**
 * Writes a record that is not there yet, whole or not at all. False: there is one of this name already, and it stays.
 * Throws a WriteError.
 */
export function writeRecordFile(folder: string, name: string, text: string): boolean {
  const path = join(folder, name);
  const beside = partFile(folder);
  try {
    mkdirSync(folder, { recursive: true });
    if (existsSync(path)) return false;
    removeLeft(folder);
    try {
      writeFileSync(beside, text, { flag: 'wx', flush: true, mode: 0o444 });
      return takeName(beside, path);
    } finally {
      rmSync(beside, { force: true });
    }
  } catch (error) {
    throw new WriteError(path, error as NodeJS.ErrnoException);
  }
}

/** Gives a file its name, unless another has taken it: of two that close at once one is the first. */
function takeName(beside: string, path: string): boolean {
  try {
    linkSync(beside, path);
    return true;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'EEXIST') return false;
    // A disk without links: there nobody else may close at the same moment.
    if (code !== 'EPERM' && code !== 'ENOTSUP' && code !== 'ENOSYS' && code !== 'EOPNOTSUPP') throw error;
    if (existsSync(path)) return false;
    renameSync(beside, path);
    return true;
  }
}

/** Enters a record in the list, in one write at its end. Throws a WriteError. */
export function enterInList(folder: string, name: string, bytes: Uint8Array): void {
  const path = join(folder, listName);
  try {
    const before = existsSync(path) ? readFileSync(path, 'utf8') : '';
    const file = openSync(path, 'a');
    try {
      // Behind a line that broke off another begins.
      writeSync(file, `${before === '' || before.endsWith('\n') ? '' : '\n'}${fileHash(bytes)}  ${name}\n`);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
  } catch (error) {
    throw new WriteError(path, error as NodeJS.ErrnoException);
  }
}
