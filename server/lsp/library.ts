/**
 * All `.rebuild` files of the workspace: what is on the disk, and over it what is open in the editor. Each folder of the
 * workspace is checked as a whole, once for each state, because names are visible across its files; what is open from
 * elsewhere is checked for itself.
 */
import { relative } from 'node:path';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { Checker, type CheckResult, type SourceFile } from '../../language/check.ts';
import type { Finding } from '../../language/model/finding.ts';
import { isSettings, type SettingsFile } from '../../language/settings/settings.ts';
import type { CheckedFiles } from '../workspace/content-hash.ts';
import { FileFinder, isPassedOver, isRead, settingsAt } from '../workspace/find-files.ts';
import { idleSettings, unreadFinding } from '../workspace/not-read.ts';
import { type ReadText, readText } from '../workspace/read-text.ts';
import { canonicalUri, pathOfUri, uriOfPath } from './uris.ts';

/** A folder of the workspace. */
interface Folder {
  /** Ends with a slash. */
  readonly uri: string;
  readonly path: string;
}

/** Files that are checked together. */
interface World {
  /** Keeps the syntax trees of files that did not change: a keystroke parses one file. */
  readonly checker: Checker;
  result: CheckResult | null;
}

export class Library {
  readonly #disk = new Map<string, ReadText>();
  readonly #open = new Map<string, TextDocument>();
  #folders: readonly Folder[] = [];
  /** By folder, or by the file where it is outside all of them. */
  readonly #worlds = new Map<string, World>();

  /** Reads every file below the folders; what was known of the disk before is forgotten. */
  async scan(folders: readonly string[]): Promise<void> {
    this.#disk.clear();
    this.#worlds.clear();
    this.#folders = folders.flatMap((folder) => {
      const path = pathOfUri(folder);
      return path === null ? [] : [{ uri: `${canonicalUri(folder).replace(/\/$/u, '')}/`, path }];
    });
    const finder = new FileFinder();
    for (const { path: folder } of this.#folders) {
      const found = await finder.at(folder);
      if ('problem' in found) {
        this.#disk.set(uriOfPath(folder), { kind: 'unreadable', message: found.problem });
        continue;
      }
      for (const path of found.files) this.#disk.set(uriOfPath(path), await readText(path));
      // It may lie above the folder.
      const settings = settingsAt(folder);
      if (settings !== null) this.#disk.set(uriOfPath(settings), await readText(settings));
    }
    for (const { path, message } of finder.unread) this.#disk.set(uriOfPath(path), { kind: 'unreadable', message });
  }

  /** Reads a file again that came, changed or went. */
  async refresh(uri: string): Promise<void> {
    const path = pathOfUri(uri);
    if (path === null || !isRead(path)) return;
    // A file from elsewhere counts while it is open, and one in a folder that is passed over never does.
    const isKnown = this.#disk.has(canonicalUri(uri));
    if (isKnown || !this.#folders.every((folder) => isPassedOver(relative(folder.path, path)))) {
      const read = await readText(path);
      if (read.kind === 'gone') this.#disk.delete(canonicalUri(uri));
      else this.#disk.set(canonicalUri(uri), read);
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

  /** The innermost folder that holds a file. */
  #folderOf(uri: string): Folder | undefined {
    const holding = this.#folders.filter((folder) => uri.startsWith(folder.uri));
    return holding.length === 0
      ? undefined
      : holding.reduce((inner, folder) => (folder.uri.length > inner.uri.length ? folder : inner));
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
