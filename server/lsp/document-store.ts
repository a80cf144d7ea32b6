/**
 * All `.rebuild` files of the workspace: what is on the disk, and over it what is open in the editor. Each folder of the
 * workspace is checked as a whole, because names are visible across its files; what is open from elsewhere is checked for
 * itself.
 */
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { SettingsFile } from '../../language/config/config.ts';
import { isSettings, settingsName } from '../../language/config/settings-name.ts';
import { LiveWorkspace } from '../../language/db/live-workspace.ts';
import type { CheckedFiles } from '../../language/db/printed-content.ts';
import type { CheckResult, SourceFile } from '../../language/db/workspace.ts';
import type { Snapshot } from '../../language/ide/snapshot.ts';
import type { Diagnostic } from '../../language/model/diagnostic.ts';
import { idleSettings, unreadFinding } from '../host/files/not-read.ts';
import { goneText, isPassedOver, isRead } from '../host/files/which-files.ts';
import type { Files, FoundFolder, FoundWorkspace, ReadText, SessionResults } from '../host/host.ts';
import { FirstCheck } from './first-check.ts';
import { readingOrder } from './reading-order.ts';

/** Files that are read at the same time while a workspace is opened. */
const readAtOnce = 32;

/** Who brings the findings up to date. */
export interface Listener {
  /** Something is another than it was when the work began. */
  readonly restart: () => void;
  /** There is more to work on. */
  readonly resume: () => void;
}

export class DocumentStore {
  readonly #files: Files;
  readonly #results: (folder: string) => SessionResults | null;
  readonly #listener: Listener;
  #disk = new Map<string, ReadText>();
  readonly #open = new Map<string, TextDocument>();
  /** Open files, the one edited last first. */
  #recent: readonly string[] = [];
  #folders: readonly FoundFolder[] = [];
  /** What `#folderOf` has answered since the folders were read. */
  readonly #folderOfUri = new Map<string, string | undefined>();
  #last: Promise<void> = Promise.resolve();
  /** By folder, or by the file where it is outside all of them. Without folders all is one. */
  readonly #worlds = new Map<string, LiveWorkspace>();
  /** What earlier sessions found, of the worlds that are folders. */
  readonly #kept = new Map<string, SessionResults>();
  readonly #checks = new Set<FirstCheck>();
  #isLoading = false;
  /** What is found in files that are not read, and whether it has to be looked at again. */
  #notRead: ReadonlyMap<string, Diagnostic> = new Map();
  #isDiskChanged = false;
  /** Files whose findings may be others now for another reason than their text. */
  readonly #changed = new Set<string>();

  /** @param results of an earlier session in a folder */
  constructor(files: Files, listener: Listener, results: (folder: string) => SessionResults | null = () => null) {
    this.#files = files;
    this.#listener = listener;
    this.#results = results;
  }

  /** Keeps what was worked out for the next session. */
  keep(): void {
    for (const [key, workspace] of this.#worlds) this.#kept.get(key)?.keep(workspace);
  }

  /** More is about to come: files are still being read, or checked by other threads. */
  get isWaiting(): boolean {
    return this.#isLoading || [...this.#worlds.values()].some(({ helper }) => helper?.isWorking === true);
  }

  /** Lets go of what other threads are working on. */
  stop(): void {
    for (const check of this.#checks) check.end();
    this.#checks.clear();
  }

  /** Reads every file below the folders; what was known of the disk before is forgotten. */
  scan(folders: readonly string[]): Promise<void> {
    this.#isLoading = true;
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
    for (const uri of this.filesWithFindings()) this.#changed.add(uri);
    this.#folders = folders;
    this.#folderOfUri.clear();
    this.stop();
    this.#worlds.clear();
    this.#kept.clear();
    this.#disk = new Map(unread.map(({ uri, message }) => [uri, { kind: 'unreadable', message }]));
    this.#isLoading = true;
    const order = readingOrder(files, [...this.#open.keys()]);
    for (let at = 0; at < order.length; at += readAtOnce) {
      const uris = order.slice(at, at + readAtOnce);
      const texts = await Promise.all(uris.map((uri) => this.#files.read(uri)));
      for (const [index, uri] of uris.entries()) this.#put(uri, texts[index]!);
      this.#listener.resume();
    }
    this.#isLoading = false;
    for (const workspace of this.#worlds.values()) workspace.isLoading = false;
    this.#listener.restart();
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
    if (!this.#disk.has(key) && this.#folderOf(key) === undefined) return;
    this.#put(key, await this.#files.read(key));
    this.#listener.restart();
  }

  /** What is on the disk. */
  #put(uri: string, read: ReadText) {
    if (read.kind === 'gone') this.#disk.delete(uri);
    else this.#disk.set(uri, read);
    this.#isDiskChanged = true;
    if (!this.#open.has(uri)) this.#edited(uri, 'in time');
  }

  /** What the editor holds goes over what is on the disk. */
  open(document: TextDocument): void {
    const uri = this.canonical(document.uri);
    if (!this.#open.has(uri)) {
      this.#isDiskChanged = true;
      this.#changed.add(uri);
    }
    this.#open.set(uri, document);
    this.#recent = [uri, ...this.#recent.filter((other) => other !== uri)];
    this.#edited(uri, 'at once');
    this.#listener.restart();
  }

  /** From here on the disk's text holds; a file that is gone from the disk is gone. */
  close(document: TextDocument): void {
    const uri = this.canonical(document.uri);
    this.#open.delete(uri);
    this.#recent = this.#recent.filter((other) => other !== uri);
    this.#isDiskChanged = true;
    this.#changed.add(uri);
    this.#worlds.delete(uri);
    this.#edited(uri, 'at once');
    this.#listener.restart();
  }

  /** Hands a file's text to the workspaces that it is part of. */
  #edited(uri: string, when: 'at once' | 'in time') {
    if (isSettings(uri)) {
      for (const [key, workspace] of this.#worlds) this.#configure(key, workspace);
      return;
    }
    const own = this.#worldOf(uri);
    const text = this.text(uri);
    for (const [key, workspace] of this.#worlds)
      if (key === own || (this.#isFolder(own) && !this.#isFolder(key))) workspace.edit(uri, text, when);
  }

  #configure(key: string, workspace: LiveWorkspace) {
    const before = workspace.settingsUri;
    if (!workspace.configure(this.#settingsIn(key))) return;
    for (const uri of [before, workspace.settingsUri, ...workspace.filesWithFindings()])
      if (uri !== null) this.#changed.add(uri);
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

  /** Texts that are checked together with a file, in the order of the URIs: the same files give the same findings. */
  files(uri: string): SourceFile[] {
    return this.#filesOf(this.#worldOf(this.canonical(uri)));
  }

  /**
   * The files that a file is checked with, as they are now, to answer questions from: what is read is worked out. What
   * comes of other files is in it as it was found last. It is for use until the next edit.
   */
  check(uri: string): CheckResult {
    return this.#world(this.#worldOf(this.canonical(uri))).result;
  }

  /** The same, with the texts that it was made from. */
  checked(uri: string): CheckedFiles {
    return { files: this.files(uri), result: this.check(uri) };
  }

  /** The same, to answer questions from. */
  snapshot(uri: string): Snapshot {
    return this.#snapshotOf(this.#worldOf(this.canonical(uri)));
  }

  /** The folder of the workspace that a file is in; null: none. */
  folderOf(uri: string): string | null {
    return this.#folderOf(this.canonical(uri)) ?? null;
  }

  /** What questions about the whole workspace are answered from: one for each of its folders. */
  snapshots(): Snapshot[] {
    const folders = this.#folders.map(({ uri }) => uri);
    return (folders.length === 0 ? [''] : folders).map((key) => this.#snapshotOf(key));
  }

  #snapshotOf(key: string): Snapshot {
    return {
      result: this.#world(key).result,
      findingsIn: (file) => this.findingsIn(file),
      textOf: (file) => this.text(file),
    };
  }

  /** The checks of everything, each with the files whose findings it gives. */
  checks(): { readonly result: CheckResult; readonly files: ReadonlySet<string> }[] {
    return this.#keys().map((key) => ({
      result: this.#world(key).result,
      files: new Set(this.#filesOf(key).flatMap(({ uri }) => (this.#worldOf(uri) === key ? [uri] : []))),
    }));
  }

  /** The findings in a file, as they were last worked out. */
  findingsIn(uri: string): readonly Diagnostic[] {
    const found = isSettings(uri)
      ? [...this.#worlds.values()].find(({ settingsUri }) => settingsUri === uri)?.findingsIn(uri)
      : this.#worlds.get(this.#worldOf(uri))?.findingsIn(uri);
    const notRead = this.#unread().get(uri);
    return [...(found ?? []), ...(notRead === undefined ? [] : [notRead])];
  }

  /** Has the findings that come of an open file worked out now. */
  bringUpToDate(uri: string): void {
    const key = this.canonical(uri);
    for (const changed of this.#world(this.#worldOf(key)).refresh(key)) this.#changed.add(changed);
  }

  filesWithFindings(): Set<string> {
    const worlds = [...this.#worlds.values()];
    return new Set([
      ...worlds.flatMap((workspace) => [...workspace.filesWithFindings()]),
      ...worlds.flatMap(({ settingsUri }) => settingsUri ?? []),
      ...this.#unread().keys(),
    ]);
  }

  /**
   * Brings the findings of everything up to date, a piece at a time, the open files first. Each piece gives the files in
   * which findings may be others now.
   */
  *work(): Generator<readonly string[]> {
    yield this.#takeChanged();
    for (const key of this.#keys()) {
      const open = this.#recent.filter((uri) => !isSettings(uri) && this.#worldOf(uri) === key);
      const isOutside = this.#isOutside(key);
      for (const changed of this.#world(key).work(open))
        yield isOutside ? changed.filter((uri) => uri === key) : changed;
    }
    yield this.#takeChanged();
  }

  #takeChanged(): string[] {
    // While files are read they have the findings that they had.
    if (this.#isLoading) return [];
    this.#unread();
    const changed = [...this.#changed];
    this.#changed.clear();
    return changed;
  }

  /** How many texts there are to check. */
  count(): number {
    return this.#uris().filter((uri) => !isSettings(uri) && this.text(uri) !== null).length;
  }

  /** Files that were found and are not read, each with the reason. */
  #unread(): ReadonlyMap<string, Diagnostic> {
    if (this.#isLoading || !this.#isDiskChanged) return this.#notRead;
    const inForce = new Set(this.#folders.map(({ uri }) => this.#settingsOf(uri)?.uri));
    const now = new Map(
      this.#uris().flatMap((uri): [string, Diagnostic][] => {
        if (inForce.has(uri)) return [];
        const read = this.#open.has(uri) ? undefined : this.#disk.get(uri);
        if (read?.kind === 'unreadable') return [[uri, unreadFinding(uri, read.message)]];
        if (!isSettings(uri)) return [];
        const instead = this.#settingsOf(this.#folderOf(uri) ?? this.#folders[0]?.uri)?.uri;
        return [[uri, idleSettings(uri, instead === undefined ? null : this.#files.shown(instead))]];
      }),
    );
    for (const uri of [...this.#notRead.keys(), ...now.keys()]) this.#changed.add(uri);
    this.#notRead = now;
    this.#isDiskChanged = false;
    return now;
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

  #isOutside(world: string): boolean {
    return world !== '' && !this.#isFolder(world);
  }

  /** The folder that holds a file; the file itself where none does. Without folders all is one. */
  #worldOf(uri: string): string {
    return this.#folderOf(uri) ?? (this.#folders.length === 0 ? '' : uri);
  }

  /** What is checked, the folder of the file that was edited last first. */
  #keys(): string[] {
    const open = this.#recent.filter((uri) => !isSettings(uri)).map((uri) => this.#worldOf(uri));
    return [...new Set([...open, ...this.#folders.map(({ uri }) => uri)])];
  }

  #world(key: string): LiveWorkspace {
    const known = this.#worlds.get(key);
    if (known !== undefined) return known;
    const results = this.#isFolder(key) ? this.#results(key) : null;
    if (results !== null) this.#kept.set(key, results);
    const made = new LiveWorkspace(this.#isOutside(key) ? key : null, results?.kept);
    this.#worlds.set(key, made);
    made.isLoading = this.#isLoading;
    if (results !== null && this.#isLoading) this.#checks.add(this.#firstCheck(key, made, results));
    made.configure(this.#settingsIn(key));
    for (const { uri, text } of this.#filesOf(key)) made.edit(uri, text, this.#open.has(uri) ? 'at once' : 'in time');
    if (made.settingsUri !== null) this.#changed.add(made.settingsUri);
    return made;
  }

  #firstCheck(key: string, workspace: LiveWorkspace, results: SessionResults): FirstCheck {
    const check = new FirstCheck(
      workspace,
      results,
      () => this.#filesOf(key),
      () => this.#listener.restart(),
    );
    workspace.helper = check;
    return check;
  }

  /** A file from elsewhere sees the names of the workspace, and its own before them; nothing there sees it. */
  #filesOf(world: string): SourceFile[] {
    const isOutside = this.#isOutside(world);
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
      if (read !== undefined) return { uri, unreadable: goneText };
    }
    return null;
  }
}

/** The folder around one, with a slash at its end; undefined for the outermost. */
function above(folder: string): string | undefined {
  return /^(.*[^/]\/|[^/]*\/{3})[^/]+\/$/u.exec(folder)?.[1];
}
