/** What a feature of the editor needs of the server: each is in a file of its own, and `features.ts` lists them. */
import type { Connection, Location, Diagnostic as LspDiagnostic } from 'vscode-languageserver';
import type { Reader } from '../../language/ide/problem.ts';
import type { Snapshot } from '../../language/ide/snapshot.ts';
import type { Diagnostic } from '../../language/model/diagnostic.ts';
import type { Source } from '../../language/model/source.ts';
import type { Visits } from '../host/host.ts';
import type { DocumentStore } from './document-store.ts';
import type { InitializationOptions, Settings } from './requests.ts';

/** One session with a client. */
export interface Session {
  readonly connection: Connection;
  readonly store: DocumentStore;
  /** As they are now. */
  readonly settings: () => Settings;
  readonly options: InitializationOptions;
  /** Who reads what is said: in the language that is set, else in that of the editor. */
  readonly reader: () => Reader;
  /** URI of the page of a rule; null where it has none. */
  readonly pageOf: (rule: string) => string | null;
  /** What the records of a folder say of units that come in; null: there are none. */
  readonly visits: (folder: string) => Visits | null;
  readonly diagnosticOf: (diagnostic: Diagnostic) => LspDiagnostic;
}

/** What it can do is announced in `capabilities.ts`, before it is loaded. */
export interface Feature {
  register(session: Session): void;
}

/** A question about a document: the checked workspace and the file as that calls it. */
export function asked({ store }: Session, uri: string): { readonly snapshot: Snapshot; readonly file: string } {
  return { snapshot: store.snapshot(uri), file: store.canonical(uri) };
}

export function locationOf({ store }: Session, { file, range }: Source): Location {
  return { uri: store.clientUri(file), range };
}
