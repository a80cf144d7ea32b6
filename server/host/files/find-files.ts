import { type Dirent, existsSync, lstatSync } from 'node:fs';
import { readdir, readlink, realpath, stat } from 'node:fs/promises';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { settingsName } from '../../../language/config/settings-name.ts';
import { type Said, say } from '../../../language/say/say.ts';
import { whyUnread } from './read-text.ts';
import { listName, recordsFolder } from './record-names.ts';
import { isNamePassedOver, isRead, leftOutBy, mostFiles, tooManyFiles } from './which-files.ts';

/** Something that was found and cannot be read, and what to do about it. */
export interface Unread {
  readonly path: string;
  readonly message: Said;
}

/** What is at a path given by hand: its files, or why there are none. */
export type FoundFiles = { readonly files: readonly string[] } | { readonly problem: Said };

interface Place {
  readonly path: string;
  readonly real: string;
}

/** A folder that is being read already: others are while one is looked through. */
interface Folder extends Place {
  readonly entries: Promise<readonly Dirent[] | { readonly error: unknown }>;
}

/** Whether the settings leave a file or a folder out. */
export type IsExcluded = (path: string, kind: 'file' | 'folder') => boolean;

const nothing: IsExcluded = () => false;

/**
 * What is left out by patterns as in .gitignore.
 * @param folder that the patterns are from: nothing outside it is left out
 */
export function excludedBy(folder: string, patterns: readonly string[]): IsExcluded {
  if (patterns.length === 0) return nothing;
  const leavesOut = leftOutBy(patterns);
  return (path, kind) => leavesOut(relative(folder, resolve(path)).replaceAll('\\', '/'), kind);
}

/** A walk through a folder: what it has found, and where it has still to go. */
interface Walk {
  readonly files: Set<string>;
  readonly folders: Folder[];
  /** Real paths of folders that it was in, so that a loop of links has an end. */
  readonly seen: Set<string>;
  readonly links: string[];
  readonly isExcluded: IsExcluded;
}

/**
 * Finds the files of a workspace; the command and the editor use the same one. Links are followed, to files and to
 * folders, but no file is found twice: it is known by its real place, and the name that is no link comes first. One entry
 * that cannot be read costs itself and is kept in `unread`. Names that begin with a dot are the system's own.
 */
export class FileFinder {
  readonly unread: Unread[] = [];
  /** The path that a file was found under first, by its real one. */
  readonly #found = new Map<string, string>();

  /**
   * The files at a path: itself, or all below it that are not left out, sorted. One that was found before keeps its path.
   * What is left out and named by hand all the same is read.
   */
  async at(path: string, isExcluded: IsExcluded = nothing): Promise<FoundFiles> {
    try {
      const real = await realpath(path);
      if (!(await stat(real)).isDirectory()) return { files: [this.#pathOf({ path, real })] };
      const leaves = isExcluded(path, 'folder') ? nothing : isExcluded;
      return { files: (await this.#below(path, real, leaves)).sort(byName) };
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      return {
        problem:
          code === 'ENOENT' || code === 'ENOTDIR'
            ? say`${path} is not there. Check the spelling, or give a folder that has .rebuild files in it.`
            : say`${path} cannot be read: ${whyUnread(error)}`,
      };
    }
  }

  async #below(path: string, real: string, isExcluded: IsExcluded): Promise<string[]> {
    const walk: Walk = {
      files: new Set(),
      folders: [begun({ path, real })],
      seen: new Set([real]),
      links: [],
      isExcluded,
    };
    // A file is found by its own name where it has one below the folder, so links come last.
    for (;;) {
      const folder = walk.folders.shift();
      const link = folder === undefined ? walk.links.shift() : undefined;
      if (folder !== undefined) await this.#read(folder, walk);
      else if (link !== undefined) await this.#follow(link, walk);
      else return [...walk.files];
    }
  }

  async #read(folder: Folder, walk: Walk): Promise<void> {
    const entries = await folder.entries;
    if ('error' in entries)
      return this.#tell(folder.path, say`This folder could not be read: ${whyUnread(entries.error)}`);
    const [path, real] = [folderPrefix(folder.path), folderPrefix(folder.real)];
    // Of the thousands of files that an archive can have, none is read.
    const own = entries.filter((entry) => (isRead(entry.name) || !entry.isFile()) && !isNamePassedOver(entry.name));
    for (const entry of own.sort((a, b) => byName(a.name, b.name))) {
      const place = { path: path + entry.name, real: real + entry.name };
      if (entry.isSymbolicLink()) walk.links.push(place.path);
      else this.#take(place, entry, walk);
    }
  }

  async #follow(path: string, walk: Walk): Promise<void> {
    try {
      const real = await realpath(path);
      this.#take({ path, real }, await stat(real), walk);
    } catch (error) {
      // A link of another name may lead to anything.
      if (!isRead(path) || walk.isExcluded(path, 'file')) return;
      const to = await readlink(path).catch(() => 'nowhere');
      this.#tell(
        path,
        (error as NodeJS.ErrnoException).code === 'ENOENT'
          ? say`This is a link to ${to}, which is not there, so nothing is read. Correct the link, or delete it.`
          : say`This link could not be followed: ${whyUnread(error)}`,
      );
    }
  }

  #take(place: Place, kind: { isDirectory(): boolean; isFile(): boolean }, walk: Walk) {
    if (walk.isExcluded(place.path, kind.isDirectory() ? 'folder' : 'file')) return;
    if (kind.isDirectory()) {
      if (walk.seen.has(place.real)) return;
      walk.seen.add(place.real);
      walk.folders.push(begun(place));
    } else if (isRead(place.path)) {
      if (!kind.isFile()) this.#tell(place.path, noFile);
      else if (this.#found.size < mostFiles || this.#found.has(place.real)) walk.files.add(this.#pathOf(place));
      else if (!this.unread.some(({ message }) => message === tooManyFiles)) this.#tell(place.path, tooManyFiles);
    }
  }

  #pathOf({ path, real }: Place): string {
    const known = this.#found.get(real) ?? path;
    this.#found.set(real, known);
    return known;
  }

  #tell(path: string, message: Said) {
    if (!this.unread.some((one) => one.path === path)) this.unread.push({ path, message });
  }
}

function begun(place: Place): Folder {
  // It has records only, and may have a hundred thousand of them.
  if (basename(place.path) === recordsFolder && existsSync(join(place.path, listName)))
    return { ...place, entries: Promise.resolve([]) };
  return { ...place, entries: readdir(place.path, { withFileTypes: true }).catch((error: unknown) => ({ error })) };
}

/** What `join` puts before a name in a folder, once for thousands of names. */
function folderPrefix(folder: string): string {
  return join(folder, 'x').slice(0, -1);
}

const noFile = say`This is a pipe, a socket or a device, not a file, so it is not read. Move it out of the folder.`;

/** By code unit: the same on every machine, whatever its language. */
function byName(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/**
 * The one settings file that is in force: that of the folder that the command is run in, or that the editor has open; where
 * it has none, of the nearest folder above. Null where there is none.
 */
export function settingsAt(folder: string): string | null {
  for (let at = resolve(folder); ; at = dirname(at)) {
    const path = join(at, settingsName);
    if (lstatSync(path, { throwIfNoEntry: false }) !== undefined) return path;
    if (dirname(at) === at) return null;
  }
}

/** A path below the current folder that is written as it is shown. */
const shown = /^(?:[^./\\:][^/\\:]*\/)*[^./\\:][^/\\:]*$/u;

/** A path as it is shown and kept in records: from the current folder, with forward slashes. */
export function shownPath(path: string): string {
  if (shown.test(path)) return path;
  const near = relative(process.cwd(), resolve(path));
  return (near.startsWith('..') ? resolve(path) : near).replaceAll('\\', '/');
}
