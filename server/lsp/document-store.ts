/**
 * All `.rebuild` files of the workspace: what is on the disk, and over it what is open in the editor. Each folder of the
 * workspace is checked as a whole, once for each state, because names are visible across its files; what is open from
 * elsewhere is checked for itself.
 */
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { isSettings, type SettingsFile, settingsName } from '../../language/config/config.ts';
import type { CheckedFiles } from '../../language/db/printed-content.ts';
import { Checker, type CheckResult, type SourceFile } from '../../language/db/workspace.ts';
import type { Snapshot } from '../../language/ide/snapshot.ts';
import type { Finding } from '../../language/model/diagnostic.ts';
import { idleSettings, unreadFinding } from '../host/files/not-read.ts';
import { isPassedOver, isRead } from '../host/files/which-files.ts';
import type { Files, ReadText } from '../host/host.ts';

/** Files that are checked together. */
interface World {
  /** Keeps the syntax trees of files that did not change: a keystroke parses one file. */
  readonly checker: Checker;
  result: CheckResult | null;
}

export class DocumentStore {
  readonly #files: Files;
  readonly #disk = new Map<string, ReadText>();
  readonly #open = new Map<string, TextDocument>();
  /** URIs of the workspace's folders, each with a slash at its end. */
  #folders: readonly string[] = [];
  /** By folder, or by the file where it is outside all of them. */
  readonly #worlds = new Map<string, World>();

  constructor(files: Files) {
    this.#files = files;
  }

  /** Reads every file below the folders; what was known of the disk before is forgotten. */
  async scan(folders: readonly string[]): Promise<void> {
    this.#disk.clear();
    this.#worlds.clear();
    const found = await this.#files.find(folders);
    this.#folders = found.folders.map((uri) => `${uri.replace(/\/$/u, '')}/`);
    for (const uri of found.files) this.#disk.set(uri, await this.#files.read(uri));
    for (const { uri, message } of found.unread) this.#disk.set(uri, { kind: 'unreadable', message });
  }

  /** Reads a file again that came, changed or went. */
  async refresh(uri: string): Promise<void> {
    if (!isRead(uri)) return;
    const key = this.canonical(uri);
    // A file from elsewhere counts while it is open, and one in a folder that is passed over never does.
    const isFound = (folder: string) => key.startsWith(folder) && !isPassedOver(key.slice(folder.length));
    if (this.#disk.has(key) || this.#folders.some(isFound)) {
      const read = await this.#files.read(key);
      if (read.kind === 'gone') this.#disk.delete(key);
      else this.#disk.set(key, read);
    }
    this.#changed(uri);
  }

  /** What the editor holds goes over what is on the disk. */
  open(document: TextDocument): void {
    this.#open.set(this.canonical(document.uri), document);
    this.#changed(document.uri);
  }

  /** From here on the disk's text holds; a file that is gone from the disk is gone. */
  close(document: TextDocument): void {
    this.#open.delete(this.canonical(document.uri));
    this.#changed(document.uri);
    this.#worlds.delete(this.canonical(document.uri));
  }

  /** The open document of a URI in any spelling. */
  document(uri: string): TextDocument | undefined {
    return this.#open.get(this.canonical(uri));
  }

  /** Text of a file, open or on the disk. */
  text(uri: string): string | null {
    const key = this.canonical(uri);
    const open = this.#open.get(key);
    if (open !== undefined) return open.getText();
    const read = this.#disk.get(key);
    return read?.kind === 'text' ? read.text : null;
  }

  /** The spelling of a URI that findings and symbols have. */
  canonical(uri: string): string {
    return this.#files.canonical(uri);
  }

  /** The client's own spelling of a URI of the index. */
  clientUri(uri: string): string {
    return this.#open.get(uri)?.uri ?? uri;
  }

  isOpen(uri: string): boolean {
    return this.#open.has(this.canonical(uri));
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
      return [idleSettings(uri, instead === undefined ? null : this.#files.shown(instead))];
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

  /** The same, to answer questions from. */
  snapshot(uri: string): Snapshot {
    return { result: this.check(uri), textOf: (file) => this.text(file) };
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
  #folderOf(uri: string): string | undefined {
    const holding = this.#folders.filter((folder) => uri.startsWith(folder));
    return holding.sort((one, other) => other.length - one.length)[0];
  }

  /** The folder that holds a file; the file itself where none does. Without folders all is one. */
  #worldOf(uri: string): string {
    const key = this.canonical(uri);
    return this.#folderOf(key) ?? (this.#folders.length === 0 ? '' : key);
  }

  /** A file from elsewhere sees the names of the workspace, and its own before them; nothing there sees it. */
  #filesOf(world: string): SourceFile[] {
    const isOutside = world !== '' && !this.#folders.includes(world);
    const uris = this.#uris().filter((uri) =>
      isOutside ? uri !== world && this.#folderOf(uri) !== undefined : this.#worldOf(uri) === world,
    );
    return (isOutside ? [world, ...uris] : uris).flatMap((uri) => {
      const text = isSettings(uri) ? null : this.text(uri);
      return text === null ? [] : [{ uri, text }];
    });
  }

  /** The settings that a check goes by: a file from elsewhere is checked by those of the first folder. */
  #settingsIn(world: string): SettingsFile | null {
    return this.#settingsOf(this.#folders.includes(world) ? world : this.#folders[0]);
  }

  /** The settings file in force in a folder: its own, or the nearest above it. */
  #settingsOf(folder: string | undefined): SettingsFile | null {
    for (let at = folder; at !== undefined; at = above(at)) {
      const uri = `${at}${settingsName}`;
      const text = this.text(uri);
      if (text !== null) return { uri, text };
      const read = this.#disk.get(uri);
      if (read?.kind === 'unreadable') return { uri, unreadable: read.message };
      if (read !== undefined) return { uri, unreadable: 'It is no longer there.' };
    }
    return null;
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
    const isFolder = (key: string) => this.#folders.includes(key);
    for (const [key, world] of this.#worlds)
      if (key === own || isSettings(uri) || (isFolder(own) && !isFolder(key))) world.result = null;
  }
}

/** The folder around one, with a slash at its end; undefined for the outermost. */
function above(folder: string): string | undefined {
  return /^(.*[^/]\/|[^/]*\/{3})[^/]+\/$/u.exec(folder)?.[1];
}
