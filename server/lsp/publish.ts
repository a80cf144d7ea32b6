/** Pushes diagnostics: each file's when they change, and an empty list when it has none left. */
import type { Connection, Diagnostic as LspDiagnostic } from 'vscode-languageserver';
import type { Diagnostic, Severity } from '../../language/model/diagnostic.ts';
import type { DocumentStore } from './document-store.ts';
import type { CheckedNotification } from './requests.ts';
import type { Typing } from './typing.ts';

/** Most diagnostics that are sent for one file: a file of another kind would flood the list of problems. */
const mostOfFile = 500;

/** What the client has of a file. */
interface Sent {
  /** As the client spells it. */
  readonly uri: string;
  readonly text: string;
  readonly diagnostics: readonly LspDiagnostic[];
}

export class Publisher {
  readonly #connection: Connection;
  readonly #store: DocumentStore;
  readonly #typing: Typing;
  readonly #diagnosticOf: (diagnostic: Diagnostic) => LspDiagnostic;
  /** What was sent last: nothing is sent twice. */
  readonly #sent = new Map<string, Sent>();
  readonly #found = new Map<string, { readonly errors: number; readonly warnings: number }>();
  scope: 'workspace' | 'open' = 'workspace';
  /** Something is not shown yet because its word is being typed. */
  isHolding = false;

  constructor(
    connection: Connection,
    store: DocumentStore,
    typing: Typing,
    diagnosticOf: (diagnostic: Diagnostic) => LspDiagnostic,
  ) {
    this.#connection = connection;
    this.#store = store;
    this.#typing = typing;
    this.#diagnosticOf = diagnosticOf;
  }

  /** Sends the findings in a file, if they differ from what the client has. */
  publish(uri: string): void {
    const found = this.#store.findingsIn(uri);
    const count = (severity: Severity) => found.filter((diagnostic) => diagnostic.severity === severity).length;
    if (found.length === 0) this.#found.delete(uri);
    else this.#found.set(uri, { errors: count('error'), warnings: count('warning') });
    const isShown = this.scope === 'workspace' || this.#store.isOpen(uri);
    const all = isShown ? found.slice(0, mostOfFile).map(this.#diagnosticOf) : [];
    this.#send(uri, this.#finished(uri, all));
  }

  /** The same for all files that anything was found in, or is now. */
  publishAll(): void {
    for (const uri of new Set([...this.#sent.keys(), ...this.#store.filesWithFindings()])) this.publish(uri);
  }

  /** Counts over all files. */
  counts(): CheckedNotification {
    let [errors, warnings] = [0, 0];
    for (const found of this.#found.values()) {
      errors += found.errors;
      warnings += found.warnings;
    }
    return { files: this.#store.count(), errors, warnings };
  }

  /** Without what is new at the word that is being typed. */
  #finished(uri: string, all: readonly LspDiagnostic[]): readonly LspDiagnostic[] {
    const as = this.#store.clientUri(uri);
    if (this.#typing.uri !== as) return all;
    const before = this.#sent.get(uri)?.diagnostics ?? [];
    const isKnown = ({ code, message }: LspDiagnostic) =>
      before.some((one) => one.code === code && one.message === message);
    const finished = all.filter((one) => !this.#typing.isAt(as, one.range) || isKnown(one));
    this.isHolding = finished.length < all.length;
    return finished;
  }

  #send(uri: string, diagnostics: readonly LspDiagnostic[]): void {
    const as = this.#store.clientUri(uri);
    const before = this.#sent.get(uri);
    // The client knows the file by another name since it was opened or closed.
    if (before !== undefined && before.uri !== as) {
      this.#sent.delete(uri);
      void this.#connection.sendDiagnostics({ uri: before.uri, diagnostics: [] });
    }
    const text = diagnostics.length === 0 ? '' : JSON.stringify(diagnostics);
    if ((this.#sent.get(uri)?.text ?? '') === text) return;
    if (diagnostics.length === 0) this.#sent.delete(uri);
    else this.#sent.set(uri, { uri: as, text, diagnostics });
    const version = this.#store.document(uri)?.version;
    void this.#connection.sendDiagnostics({
      uri: as,
      diagnostics: [...diagnostics],
      ...(version === undefined ? {} : { version }),
    });
  }
}
