/**
 * All `.rebuild` files of the workspace: what is on the disk, and over it what is open in the editor. Checked as a whole,
 * once for each state, because names are visible across files.
 */
import { relative } from 'node:path';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { Checker, type CheckResult } from '../../language/check.ts';
import type { Finding } from '../../language/model/finding.ts';
import { isSettings, type SettingsFile } from '../../language/settings/settings.ts';
import type { CheckedFiles } from '../workspace/content-hash.ts';
import { FileFinder, isPassedOver, isRead, settingsAt } from '../workspace/find-files.ts';
import { idleSettings, unreadFinding } from '../workspace/not-read.ts';
import { type ReadText, readText } from '../workspace/read-text.ts';
import { canonicalUri, pathOfUri, uriOfPath } from './uris.ts';

export class Library {
  readonly #disk = new Map<string, ReadText>();
  readonly #open = new Map<string, TextDocument>();
  /** Keeps the syntax trees of files that did not change: a keystroke parses one file. */
  readonly #checker = new Checker();
  #checked: CheckResult | null = null;
  #folders: readonly string[] = [];

  /** Reads every file below the folders; what was known of the disk before is forgotten. */
  async scan(folders: readonly string[]): Promise<void> {
    this.#disk.clear();
    this.#folders = folders.flatMap((folder) => pathOfUri(folder) ?? []);
    const finder = new FileFinder();
    for (const folder of this.#folders) {
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
    this.#checked = null;
  }

  /** Reads a file anew that came, changed or went. */
  async refresh(uri: string): Promise<void> {
    const path = pathOfUri(uri);
    if (path === null || !isRead(path)) return;
    // A file from elsewhere counts while it is open, and one in a folder that is passed over never does.
    if (!this.#disk.has(canonicalUri(uri)) && this.#folders.every((one) => isPassedOver(relative(one, path)))) {
      this.#checked = null;
      return;
    }
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

  /** Files that were found and are not read, each with the reason. */
  notRead(): Finding[] {
    const inForce = this.#settings()?.uri ?? null;
    const uris = [...new Set([...this.#disk.keys(), ...this.#open.keys()])].sort();
    return uris.flatMap((uri) => {
      if (uri === inForce) return [];
      const read = this.#open.has(uri) ? undefined : this.#disk.get(uri);
      if (read?.kind === 'unreadable') return [unreadFinding(uri, read.message)];
      return isSettings(uri) ? [idleSettings(uri, inForce === null ? null : (pathOfUri(inForce) ?? inForce))] : [];
    });
  }

  /** The settings file in force: that of the first folder that has one, or has one above it. */
  #settings(): SettingsFile | null {
    const isThere = (path: string) => this.#disk.has(uriOfPath(path)) || this.#open.has(uriOfPath(path));
    for (const folder of this.#folders) {
      const path = settingsAt(folder, isThere);
      if (path === null) continue;
      const uri = uriOfPath(path);
      const text = this.text(uri);
      const read = this.#disk.get(uri);
      if (text !== null) return { uri, text };
      return { uri, unreadable: read?.kind === 'unreadable' ? read.message : 'It is no longer there.' };
    }
    return null;
  }

  /** Every text, in the order of the URIs: the same files give the same findings in the same order. */
  files(): { readonly uri: string; readonly text: string }[] {
    const uris = new Set([...this.#disk.keys(), ...this.#open.keys()]);
    return [...uris].sort().flatMap((uri) => {
      const text = isSettings(uri) ? null : this.text(uri);
      return text === null ? [] : [{ uri, text }];
    });
  }

  /** The check of all files as they are now; worked out at most once for each state. */
  check(): CheckResult {
    this.#checked ??= this.#checker.check(this.files(), this.#settings());
    return this.#checked;
  }

  /** The check and the texts that it was made from. */
  checked(): CheckedFiles {
    return { files: this.files(), result: this.check() };
  }
}
