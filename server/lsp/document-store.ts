/**
 * All `.rebuild` files of the workspace: what is on the disk, and over it what is open in the editor. Each folder of the
 * workspace is checked as a whole, once for each state, because names are visible across its files; what is open from
 * elsewhere is checked for itself.
 */
import { dirname, relative } from 'node:path';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { isSettings, readSettings, type SettingsFile } from '../../language/config/config.ts';
import { Checker, type CheckResult, type SourceFile } from '../../language/db/workspace.ts';
import type { Finding } from '../../language/model/diagnostic.ts';
import type { CheckedFiles } from '../host/files/content-hash.ts';
import { excludedBy, FileFinder, type IsExcluded, isPassedOver, isRead, settingsAt } from '../host/files/find-files.ts';
import { idleSettings, unreadFinding } from '../host/files/not-read.ts';
import { type ReadText, readText } from '../host/files/read-text.ts';
import { canonicalUri, pathOfUri, uriOfPath } from './uris.ts';

/** A folder of the workspace. */
interface Folder {
  /** Ends with a slash. */
  readonly uri: string;
  readonly path: string;
  /** Patterns of the settings, as they were saved, and what is left out by them. */
  readonly exclude: readonly string[];
  readonly isExcluded: IsExcluded;
}

/** Files that are checked together. */
interface World {
  /** Keeps the syntax trees of files that did not change: a keystroke parses one file. */
  readonly checker: Checker;
  result: CheckResult | null;
}

export class Library {
  #disk = new Map<string, ReadText>();
  readonly #open = new Map<string, TextDocument>();
  #folders: readonly Folder[] = [];
  /** What `#folderOf` has answered since the folders were read. */
  readonly #folderOfUri = new Map<string, Folder | undefined>();
  #last: Promise<void> = Promise.resolve();
  /** By folder, or by the file where it is outside all of them. */
  readonly #worlds = new Map<string, World>();

  /** Reads every file below the folders; what was known of the disk before is forgotten. */
  scan(folders: readonly string[]): Promise<void> {
    return this.#inTurn(() => this.#scan(folders));
  }

  /** Reads a file again that came, changed or went. Where the settings leave out other files than before, all are. */
  refresh(uri: string): Promise<void> {
    return this.#inTurn(() => this.#refresh(uri));
  }

  /** One reading after the other: an older one must not go over a newer one. */
  #inTurn(reading: () => Promise<void>): Promise<void> {
    const done = this.#last.then(reading);
    this.#last = done.catch(() => {});
    return done;
  }

  async #scan(uris: readonly string[]): Promise<void> {
    const disk = new Map<string, ReadText>();
    const folders: Folder[] = [];
    const finder = new FileFinder();
    for (const uri of uris) {
      const path = pathOfUri(uri);
      if (path === null) continue;
      // The settings may be above the folder.
      const settings = settingsAt(path);
      if (settings !== null) disk.set(uriOfPath(settings), await readText(settings));
      const exclude = await excludedIn(path);
      const isExcluded = excludedBy(settings === null ? path : dirname(settings), exclude);
      folders.push({ uri: `${canonicalUri(uri).replace(/\/$/u, '')}/`, path, exclude, isExcluded });
      const found = await finder.at(path, isExcluded);
      if ('problem' in found) disk.set(uriOfPath(path), { kind: 'unreadable', message: found.problem });
      else for (const one of found.files) disk.set(uriOfPath(one), await readText(one));
    }
    for (const { path, message } of finder.unread) disk.set(uriOfPath(path), { kind: 'unreadable', message });
    this.#disk = disk;
    this.#folders = folders;
    this.#worlds.clear();
    this.#folderOfUri.clear();
  }

  async #refresh(uri: string): Promise<void> {
    const path = pathOfUri(uri);
    if (path === null || !isRead(path)) return;
    if (isSettings(uri))
      for (const folder of this.#folders)
        if ((await excludedIn(folder.path)).join('\n') !== folder.exclude.join('\n'))
          return this.#scan(this.#folders.map((one) => one.uri));
    // A file from elsewhere counts while it is open, and one that is left out never does.
    const key = canonicalUri(uri);
    if (this.#disk.has(key) || this.#folderOf(key) !== undefined) {
      const read = await readText(path);
      if (read.kind === 'gone') this.#disk.delete(key);
      else this.#disk.set(key, read);
    }
    this.#changed(uri);
  }

  /** What the editor holds goes over what is on the disk. */
  open(document: TextDocument): void {
    this.#open.set(canonicalUri(document.uri), document);
    this.#changed(document.uri);
  }

  /** From here on the disk's text holds; a file that is gone from the disk is gone. */
  close(document: TextDocument): void {
    this.#open.delete(canonicalUri(document.uri));
    this.#changed(document.uri);
    this.#worlds.delete(canonicalUri(document.uri));
  }

  /** The open document of a URI in any spelling. */
  document(uri: string): TextDocument | undefined {
    return this.#open.get(canonicalUri(uri));
  }

  /** Text of a file, open or on the disk. */
  text(uri: string): string | null {
    const key = canonicalUri(uri);
    const open = this.#open.get(key);
    if (open !== undefined) return open.getText();
    const read = this.#disk.get(key);
    return read?.kind === 'text' ? read.text : null;
  }

  /** The client's own spelling of a URI of the index. */
  clientUri(uri: string): string {
    return this.#open.get(uri)?.uri ?? uri;
  }

  isOpen(uri: string): boolean {
    return this.#open.has(canonicalUri(uri));
  }

  /** Files that were found and are not read, each with the reason. */
  notRead(): Finding[] {
    const inForce = new Set(this.#folders.map((folder) => this.#settingsOf(folder)?.uri));
    return this.#uris().flatMap((uri) => {
      if (inForce.has(uri)) return [];
      const read = this.#open.has(uri) ? undefined : this.#disk.get(uri);
      if (read?.kind === 'unreadable') return [unreadFinding(uri, read.message)];
      if (!isSettings(uri)) return [];
      const instead = this.#settingsOf(this.#folderOf(uri) ?? this.#folders[0])?.uri;
      return [idleSettings(uri, instead === undefined ? null : (pathOfUri(instead) ?? instead))];
    });
  }

  /** Texts that are checked together with a file, in the order of the URIs: the same files give the same findings. */
  files(uri: string): SourceFile[] {
    return this.#filesOf(this.#worldOf(uri));
  }

  /** The check of the files that a file is checked with, as they are now; worked out at most once for each state. */
  check(uri: string): CheckResult {
    return this.#checkOf(this.#worldOf(uri));
  }

  /** The same, with the texts that it was made from. */
  checked(uri: string): CheckedFiles {
    return { files: this.files(uri), result: this.check(uri) };
  }

  /** The checks of everything, each with the files whose findings it gives. */
  checks(): { readonly result: CheckResult; readonly files: ReadonlySet<string> }[] {
    const byWorld = new Map<string, Set<string>>();
    for (const uri of this.#uris()) {
      const world = this.#worldOf(uri);
      byWorld.set(world, (byWorld.get(world) ?? new Set()).add(uri));
    }
    // Settings may be in force in several folders; what is wrong with them is reported once.
    const settings = new Set<string>();
    return [...byWorld].map(([world, files]) => {
      const uri = this.#settingsIn(world)?.uri;
      if (uri !== undefined && !settings.has(uri)) files.add(uri);
      if (uri !== undefined) settings.add(uri);
      return { result: this.#checkOf(world), files };
    });
  }

  /** How many texts there are to check. */
  count(): number {
    return this.#uris().filter((uri) => !isSettings(uri) && this.text(uri) !== null).length;
  }

  #uris(): string[] {
    return [...new Set([...this.#disk.keys(), ...this.#open.keys()])].sort();
  }

  /** The innermost folder that holds a file, unless it is left out there: then it is a file from elsewhere. */
  #folderOf(uri: string): Folder | undefined {
    if (this.#folderOfUri.has(uri)) return this.#folderOfUri.get(uri);
    const holding = this.#folders.filter((folder) => uri.startsWith(folder.uri));
    const inner = holding.sort((a, b) => b.uri.length - a.uri.length)[0];
    const path = pathOfUri(uri);
    const isLeftOut =
      inner !== undefined &&
      path !== null &&
      (isPassedOver(relative(inner.path, path)) || inner.isExcluded(path, 'file'));
    const found = isLeftOut ? undefined : inner;
    this.#folderOfUri.set(uri, found);
    return found;
  }

  /** The folder that holds a file; the file itself where none does. Without folders all is one. */
  #worldOf(uri: string): string {
    const key = canonicalUri(uri);
    return this.#folderOf(key)?.uri ?? (this.#folders.length === 0 ? '' : key);
  }

  /** A file from elsewhere sees the names of the workspace, and its own before them; nothing there sees it. */
  #filesOf(world: string): SourceFile[] {
    const isOutside = world !== '' && this.#folders.every(({ uri }) => uri !== world);
    const uris = this.#uris().filter((uri) =>
      isOutside ? uri !== world && this.#folderOf(uri) !== undefined : this.#worldOf(uri) === world,
    );
    return (isOutside ? [world, ...uris] : uris).flatMap((uri) => {
      const text = isSettings(uri) ? null : this.text(uri);
      return text === null ? [] : [{ uri, text }];
    });
  }

  /** The settings for a check: a file from elsewhere is checked with those of the first folder. */
  #settingsIn(world: string): SettingsFile | null {
    return this.#settingsOf(this.#folders.find(({ uri }) => uri === world) ?? this.#folders[0]);
  }

  /** The settings file in force in a folder: its own, or the nearest above it. */
  #settingsOf(folder: Folder | undefined): SettingsFile | null {
    if (folder === undefined) return null;
    const path = settingsAt(folder.path, (one) => this.#disk.has(uriOfPath(one)) || this.#open.has(uriOfPath(one)));
    if (path === null) return null;
    const uri = uriOfPath(path);
    const text = this.text(uri);
    if (text !== null) return { uri, text };
    const read = this.#disk.get(uri);
    return { uri, unreadable: read?.kind === 'unreadable' ? read.message : 'It is no longer there.' };
  }

  #checkOf(key: string): CheckResult {
    const world = this.#worlds.get(key) ?? { checker: new Checker(), result: null };
    this.#worlds.set(key, world);
    world.result ??= world.checker.check(this.#filesOf(key), this.#settingsIn(key));
    return world.result;
  }

  /** Forgets the checks that a file has a part in. */
  #changed(uri: string): void {
    const own = this.#worldOf(uri);
    const isFolder = (key: string) => this.#folders.some((folder) => folder.uri === key);
    for (const [key, world] of this.#worlds)
      if (key === own || isSettings(uri) || (isFolder(own) && !isFolder(key))) world.result = null;
  }
}

/** The patterns of the settings in force in a folder, as they are on the disk. */
async function excludedIn(folder: string): Promise<readonly string[]> {
  const path = settingsAt(folder);
  const read = path === null ? null : await readText(path);
  return path === null || read?.kind !== 'text' ? [] : readSettings({ uri: uriOfPath(path), text: read.text }).exclude;
}
