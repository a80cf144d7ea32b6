/** Pushes diagnostics: each file's when they change, and an empty list when it has none left. */
import type { Connection, Diagnostic as LspDiagnostic } from 'vscode-languageserver';
import type { Diagnostic, Severity } from '../../language/model/diagnostic.ts';
import type { DocumentStore } from './document-store.ts';
import type { CheckedNotification } from './requests.ts';

/** Most diagnostics that are sent for one file: a file of another kind would flood the list of problems. */
const mostOfFile = 500;

export class Publisher {
  readonly #connection: Connection;
  readonly #store: DocumentStore;
  readonly #diagnosticOf: (diagnostic: Diagnostic) => LspDiagnostic;
  /** What was sent last, by client URI: nothing is sent twice. */
  readonly #sent = new Map<string, string>();

  constructor(connection: Connection, store: DocumentStore, diagnosticOf: (diagnostic: Diagnostic) => LspDiagnostic) {
    this.#connection = connection;
    this.#store = store;
    this.#diagnosticOf = diagnosticOf;
  }

  /** Checks, and sends what differs from what the client has. */
  publish(scope: 'workspace' | 'open'): CheckedNotification {
    const diagnostics = [
      ...this.#store
        .checks()
        .flatMap(({ result, files }) => result.diagnostics.filter(({ source }) => files.has(source.file))),
      ...this.#store.notRead(),
    ];
    const byFile = new Map<string, LspDiagnostic[]>();
    const add = (uri: string, diagnostic: LspDiagnostic) => {
      if (scope === 'open' && !this.#store.isOpen(uri)) return;
      const key = this.#store.clientUri(uri);
      const list = byFile.get(key) ?? [];
      byFile.set(key, list);
      if (list.length < mostOfFile) list.push(diagnostic);
    };
    for (const diagnostic of diagnostics) add(diagnostic.source.file, this.#diagnosticOf(diagnostic));

    for (const uri of this.#sent.keys()) if (!byFile.has(uri)) byFile.set(uri, []);
    for (const [uri, diagnostics] of byFile) {
      const text = JSON.stringify(diagnostics);
      if (this.#sent.get(uri) === text) continue;
      if (diagnostics.length === 0) this.#sent.delete(uri);
      else this.#sent.set(uri, text);
      const version = this.#store.document(uri)?.version;
      void this.#connection.sendDiagnostics({ uri, diagnostics, ...(version === undefined ? {} : { version }) });
    }
    const count = (severity: Severity) => diagnostics.filter((diagnostic) => diagnostic.severity === severity).length;
    return {
      files: this.#store.count(),
      errors: count('error'),
      warnings: count('warning'),
    };
  }
}
