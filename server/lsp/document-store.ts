/**
 * All `.rebuild` files of the workspace: what is on the disk, and over it what is open in the editor. Each folder of the
 * workspace is checked as a whole, once for each state, because names are visible across its files; what is open from
 * elsewhere is checked for itself.
 */
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { isSettings, type SettingsFile, settingsName } from '../../language/config/config.ts';
import type { CheckedFiles } from '../../language/db/printed-content.ts';
import { type CheckResult, type SourceFile, Workspace } from '../../language/db/workspace.ts';
import type { Snapshot } from '../../language/ide/snapshot.ts';
import type { Diagnostic } from '../../language/model/diagnostic.ts';
import { idleSettings, unreadFinding } from '../host/files/not-read.ts';
import { isPassedOver, isRead } from '../host/files/which-files.ts';
import type { Files, FoundFolder, FoundWorkspace, ReadText, SessionResults } from '../host/host.ts';

/** Files that are checked together. */
interface World {
  /** Keeps the syntax trees of files that did not change: a keystroke parses one file. */
  readonly checker: Workspace;
  readonly results: SessionResults | null;
  result: CheckResult | null;
}

export class DocumentStore {
  readonly #files: Files;
  readonly #results: (folder: string) => SessionResults | null;
  #disk = new Map<string, ReadText>();
  readonly #open = new Map<string, TextDocument>();
  #folders: readonly FoundFolder[] = [];
  /** What `#folderOf` has answered since the folders were read. */
  readonly #folderOfUri = new Map<string, string | undefined>();
  #last: Promise<void> = Promise.resolve();
  /** By folder, or by the file where it is outside all of them. */
  readonly #worlds = new Map<string, World>();

  /** @param results of an earlier session in a folder */
  constructor(files: Files, results: (folder: string) => SessionResults | null = () => null) {
    this.#files = files;
    this.#results = results;
  }

  /** Keeps what was worked out for the next session. */
  keep(): void {
    for (const { checker, results } of this.#worlds.values()) results?.keep(checker);
  }

  /** Reads every file below the folders; what was known of the disk before is forgotten. */
  scan(folders: readonly string[]): Promise<void> {
    return this.#inTurn(async () => this.#take(await this.#files.find(folders)));
  }

  /** Reads a file again that came, changed or went. Where the settings leave out other files than before, all are. */
  refresh(uri: string): Promise<void> {
    return this.#inTurn(() => this.#refresh(uri));
  }

  /** One reading after the other: an older one must not replace a newer one. */
  #inTurn(reading: () => Promise<void>): Promise<void> {
    const done = this.#last.then(reading);
    this.#last = done.catch(() => {});
    return done;
  }

  async #take({ folders, files, unread }: FoundWorkspace): Promise<void> {
    const disk = new Map<string, ReadText>();
    for (const uri of files) disk.set(uri, await this.#files.read(uri));
    for (const { uri, message } of unread) disk.set(uri, { kind: 'unreadable', message });
    this.#disk = disk;
    this.#folders = folders;
    this.#worlds.clear();
    this.#folderOfUri.clear();
  }

  async #refresh(uri: string): Promise<void> {
    if (!isRead(uri)) return;
    const key = this.canonical(uri);
    if (isSettings(key)) {
      const found = await this.#files.find(this.#folders.map((folder) => folder.uri));
      const patterns = (folders: readonly FoundFolder[]) => JSON.stringify(folders.map(({ exclude }) => exclude));
      if (patterns(found.folders) !== patterns(this.#folders)) return this.#take(found);
    }
    // A file from elsewhere counts while it is open, and one that is left out never does.
    if (this.#disk.has(key) || this.#folderOf(key) !== undefined) {
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
  notRead(): Diagnostic[] {
    const inForce = new Set(this.#folders.map(({ uri }) => this.#settingsOf(uri)?.uri));
    return this.#uris().flatMap((uri) => {
      if (inForce.has(uri)) return [];
      const read = this.#open.has(uri) ? undefined : this.#disk.get(uri);
      if (read?.kind === 'unreadable') return [unreadFinding(uri, read.message)];
      if (!isSettings(uri)) return [];
      const instead = this.#settingsOf(this.#folderOf(uri) ?? this.#folders[0]?.uri)?.uri;
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

  /** The innermost folder that holds a file, unless it is left out there: then it is a file from elsewhere. */
  #folderOf(uri: string): string | undefined {
    if (this.#folderOfUri.has(uri)) return this.#folderOfUri.get(uri);
    const holding = this.#folders.filter((folder) => uri.startsWith(folder.uri));
    const inner = holding.sort((one, other) => other.uri.length - one.uri.length)[0];
    const isLeftOut = inner !== undefined && (isPassedOver(uri.slice(inner.uri.length)) || inner.isExcluded(uri));
    const found = isLeftOut ? undefined : inner?.uri;
    this.#folderOfUri.set(uri, found);
    return found;
  }

  #isFolder(world: string): boolean {
    return this.#folders.some(({ uri }) => uri === world);
  }

  /** The folder that holds a file; the file itself where none does. Without folders all is one. */
  #worldOf(uri: string): string {
    const key = this.canonical(uri);
    return this.#folderOf(key) ?? (this.#folders.length === 0 ? '' : key);
  }

  /** A file from elsewhere sees the names of the workspace, and its own before them; nothing there sees it. */
  #filesOf(world: string): SourceFile[] {
    const isOutside = world !== '' && !this.#isFolder(world);
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
    return this.#settingsOf(this.#isFolder(world) ? world : this.#folders[0]?.uri);
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
    const world = this.#worlds.get(key) ?? this.#newWorld(key);
    this.#worlds.set(key, world);
    world.result ??= world.checker.check(this.#filesOf(key), this.#settingsIn(key));
    return world.result;
  }

  #newWorld(key: string): World {
    const results = this.#isFolder(key) ? this.#results(key) : null;
    return { checker: new Workspace(results?.kept), results, result: null };
  }

  /** Forgets the checks that a file has a part in. */
  #changed(uri: string): void {
    const own = this.#worldOf(uri);
    for (const [key, world] of this.#worlds)
      if (key === own || isSettings(uri) || (this.#isFolder(own) && !this.#isFolder(key))) world.result = null;
  }
}

/** The folder around one, with a slash at its end; undefined for the outermost. */
function above(folder: string): string | undefined {
  return /^(.*[^/]\/|[^/]*\/{3})[^/]+\/$/u.exec(folder)?.[1];
}
