/**
 * All `.rebuild` files of the workspace: what is on the disk, and over it what is open in the editor. Each folder of the
 * workspace is checked as a whole, once for each state, because names are visible across its files; what is open from
 * elsewhere is checked for itself.
 */
import { opendir } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { Checker, type CheckResult, type SourceFile } from '../../language/check.ts';
import { isRead } from '../workspace/find-files.ts';
import { type ReadText, readText } from '../workspace/read-text.ts';
import { canonicalUri, pathOfUri, uriOfPath } from './uris.ts';

/** Folders that hold no author's text, however many there are. */
const skippedFolders = new Set(['node_modules', 'out', 'dist']);

/** More files than any shop writes: a workspace at the root of a disk must not take the memory. */
const mostFiles = 10_000;

export class Library {
  readonly #disk = new Map<string, ReadText>();
  readonly #open = new Map<string, TextDocument>();
  /** Folders of the workspace, as URIs that end with a slash. */
  #folders: readonly string[] = [];
  /** By folder, or by the file where it stands outside of them. */
  readonly #worlds = new Map<string, World>();

  /** Reads every file below the folders; what was known of the disk before is forgotten. */
  async scan(folders: readonly string[]): Promise<void> {
    this.#disk.clear();
    this.#worlds.clear();
    this.#folders = folders.map((folder) => `${canonicalUri(folder).replace(/\/$/u, '')}/`);
    for (const folder of folders) {
      const path = pathOfUri(folder);
      if (path !== null) await this.#scanFolder(path);
    }
  }

  async #scanFolder(path: string): Promise<void> {
    let entries: { name: string; isDirectory(): boolean; isFile(): boolean }[];
    try {
      entries = [];
      for await (const entry of await opendir(path)) entries.push(entry);
    } catch {
      // A folder that may not be read, or that went while it was read, holds nothing to check.
      return;
    }
    for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      if (this.#disk.size >= mostFiles) return;
      const inside = join(path, entry.name);
      if (entry.isDirectory()) {
        if (!entry.name.startsWith('.') && !skippedFolders.has(entry.name)) await this.#scanFolder(inside);
      } else if (entry.isFile() && isRead(entry.name)) {
        this.#disk.set(uriOfPath(inside), await readText(inside));
      }
    }
  }

  /** Reads a file anew that came, changed or went. */
  async refresh(uri: string): Promise<void> {
    const path = pathOfUri(uri);
    if (path === null || !isRead(basename(path))) return;
    const read = await readText(path);
    if (read.kind === 'gone') this.#disk.delete(canonicalUri(uri));
    else this.#disk.set(canonicalUri(uri), read);
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

  /** Files that were found and could not be read, with the reason. */
  unreadable(): { readonly uri: string; readonly message: string }[] {
    return [...this.#disk].flatMap(([uri, read]) =>
      read.kind === 'unreadable' && !this.#open.has(uri) ? [{ uri, message: read.message }] : [],
    );
  }

  /** Texts that are checked together with a file, in the order of the URIs: the same files give the same findings. */
  files(uri: string): SourceFile[] {
    return this.#filesOf(this.#worldOf(uri));
  }

  /** The check of the files that a file is checked with, as they are now; worked out at most once for each state. */
  check(uri: string): CheckResult {
    return this.#checkOf(this.#worldOf(uri));
  }

  /** The checks of everything, each with the files that it speaks of. */
  checks(): { readonly result: CheckResult; readonly files: ReadonlySet<string> }[] {
    const uris = this.#uris();
    const worlds = new Set(uris.map((uri) => this.#worldOf(uri)));
    return [...worlds].map((world) => ({
      result: this.#checkOf(world),
      files: new Set(uris.filter((uri) => this.#worldOf(uri) === world)),
    }));
  }

  /** How many texts there are. */
  count(): number {
    return this.#uris().filter((uri) => this.text(uri) !== null).length;
  }

  #uris(): string[] {
    return [...new Set([...this.#disk.keys(), ...this.#open.keys()])].sort();
  }

  /** The innermost folder that holds a file; the file itself where none does. Without folders all is one. */
  #worldOf(uri: string): string {
    const key = canonicalUri(uri);
    const holding = this.#folders.filter((folder) => key.startsWith(folder));
    if (holding.length === 0) return this.#folders.length === 0 ? '' : key;
    return holding.reduce((inner, folder) => (folder.length > inner.length ? folder : inner));
  }

  /** A file from elsewhere sees the names of the workspace, and its own before them; nothing there sees it. */
  #filesOf(world: string): SourceFile[] {
    const isOutside = world !== '' && !this.#folders.includes(world);
    const uris = this.#uris().filter((uri) =>
      isOutside ? uri !== world && this.#folders.includes(this.#worldOf(uri)) : this.#worldOf(uri) === world,
    );
    return (isOutside ? [world, ...uris] : uris).flatMap((uri) => {
      const text = this.text(uri);
      return text === null ? [] : [{ uri, text }];
    });
  }

  #checkOf(key: string): CheckResult {
    const world = this.#worlds.get(key) ?? { checker: new Checker(), result: null };
    this.#worlds.set(key, world);
    world.result ??= world.checker.check(this.#filesOf(key));
    return world.result;
  }

  /** Forgets the checks that a file has a part in. */
  #changed(uri: string): void {
    const own = this.#worldOf(uri);
    const isInside = this.#folders.includes(own);
    for (const [key, world] of this.#worlds)
      if (key === own || (isInside && !this.#folders.includes(key))) world.result = null;
  }
}

/** Files that are checked together. */
interface World {
  /** Keeps the syntax trees of files that did not change: a keystroke parses one file. */
  readonly checker: Checker;
  result: CheckResult | null;
}
