/**
 * All `.rebuild` files of the workspace: what is on the disk, and over it what is open in the editor. Checked as a whole,
 * once for each state, because names are visible across files.
 */
import { opendir } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { Checker, type CheckResult } from '../../language/check.ts';
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
  /** Keeps the syntax trees of files that did not change: a keystroke parses one file. */
  readonly #checker = new Checker();
  #checked: CheckResult | null = null;

  /** Reads every file below the folders; what was known of the disk before is forgotten. */
  async scan(folders: readonly string[]): Promise<void> {
    this.#disk.clear();
    for (const folder of folders) {
      const path = pathOfUri(folder);
      if (path !== null) await this.#scanFolder(path);
    }
    this.#checked = null;
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
    this.#checked = null;
  }

  /** What the editor holds goes over what is on the disk. */
  open(document: TextDocument): void {
    this.#open.set(canonicalUri(document.uri), document);
    this.#checked = null;
  }

  /** From here on the disk's text holds; a file that is gone from the disk is gone. */
  close(document: TextDocument): void {
    this.#open.delete(canonicalUri(document.uri));
    this.#checked = null;
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

  /** Every text, in the order of the URIs: the same files give the same findings in the same order. */
  files(): { readonly uri: string; readonly text: string }[] {
    const uris = new Set([...this.#disk.keys(), ...this.#open.keys()]);
    return [...uris].sort().flatMap((uri) => {
      const text = this.text(uri);
      return text === null ? [] : [{ uri, text }];
    });
  }

  /** The check of all files as they are now; worked out at most once for each state. */
  check(): CheckResult {
    this.#checked ??= this.#checker.check(this.files());
    return this.#checked;
  }
}
