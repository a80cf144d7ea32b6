/**
 * What the language server needs of the machine, or of the page, that it runs in. Files are known by their URI.
 * `node.ts` is a machine with a disk, `browser.ts` a worker of a browser.
 */
import type { Printed } from '../../language/db/printed-content.ts';
import type { CheckResult, Kept, SourceFile, Workspace } from '../../language/db/workspace.ts';
import type { FontFace } from '../../language/documents/renderers/index.ts';
import type { Sheet } from '../../language/documents/traveler/index.ts';
import type { Filling, Said } from '../../language/say/say.ts';

export interface Host {
  readonly files: Files;
  /** SHA-256 of a text in UTF-8, hex. */
  hash(text: string): Promise<string>;
  /** Fonts that an HTML page carries in itself. */
  fonts(): Promise<readonly FontFace[]>;
  /** What prints into a folder; null where there is no typesetter or no disk: pages can be shown, and not printed. */
  printer(folder: string): Printer | null;
  /** What an earlier session has found in the files of a folder; null: nothing is kept here. */
  results(folder: string): SessionResults | null;
  /** When units were here before, by the records of a folder; null: there are none here. */
  visits(folder: string): Visits | null;
  /** URI of the folder of the rules' pages, by area, that comes with the server; null: none does. */
  rulePages(): string | null;
}

/** What the records of closed jobs say of units that come in. None of it throws. */
export interface Visits {
  /** The last visit of each serial that was here before. */
  of(serials: readonly string[]): Promise<ReadonlyMap<string, KnownVisit>>;
}

export interface KnownVisit {
  readonly job: string;
  /** ISO date. */
  readonly closed: string;
  readonly customer: string | null;
  /** Why it came back then; null: it was no comeback. */
  readonly cause: string | null;
  /** What was found, fitted and read, in order: rows of the ledger. */
  readonly results: readonly Readonly<Record<string, string | number | null>>[];
}

/** Results that outlive a session. None of it throws. */
export interface SessionResults {
  /** What a workspace takes over. */
  readonly kept: Kept;
  /** Keeps what was worked out since, and lets go of what it has in memory. */
  keep(workspace: Pick<Workspace, 'database' | 'jobsOf'>): void;
  /**
   * Other threads for the work on some of the files; null where they are too few, or there are none.
   * @param files all of the workspace
   */
  threads(files: readonly SourceFile[], uris: readonly string[]): CheckThreads | null;
}

/** Threads that work out what is found in the files of a workspace. */
export interface CheckThreads {
  /** What is found is among the results of the session when it resolves. Never rejects: what is left undone is worked out there. */
  workOut(uris: readonly string[]): Promise<void>;
  end(): void;
}

export interface Files {
  /** One spelling for each file: editors write the same URI in several ways. */
  canonical(uri: string): string;
  /** A URI as a person knows the file. */
  shown(uri: string): string;
  /** All files of a workspace that are read, by name (`isRead`, `isPassedOver`) and by the settings. Never rejects. */
  find(folders: readonly string[]): Promise<FoundWorkspace>;
  /** Never rejects. What cannot be known to be there is gone. */
  read(uri: string): Promise<ReadText>;
}

/** A folder of a workspace. */
export interface FoundFolder {
  /** Canonical, with a slash at its end. */
  readonly uri: string;
  /** Patterns of the settings that are in force in it, as they were saved. */
  readonly exclude: readonly string[];
  /** Whether they leave out a file of the folder, by its canonical URI. */
  isExcluded(uri: string): boolean;
}

/** The files of a workspace, under their canonical URIs. */
export interface FoundWorkspace {
  /** Those of the folders that have files here. */
  readonly folders: readonly FoundFolder[];
  /** Settings that are in force in a folder may be above it. */
  readonly files: readonly string[];
  /** What was found and cannot be read, and what to do about it. */
  readonly unread: readonly { readonly uri: string; readonly message: Filling }[];
}

/** A file's text, or what to say about it. `gone`: it is no longer there. */
export type ReadText =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'unreadable'; readonly message: Filling }
  | { readonly kind: 'gone' };

export interface Printer {
  /** Writes a sheet as a PDF; or a sentence for a person where it cannot be written. */
  print(sheet: Sheet, to: PrintPlace): Promise<PrintedFile | { readonly problem: Filling }>;
}

export interface PrintPlace {
  /** URI of a folder; it is made if it is not there. */
  readonly folder: string;
  /** What is printed, of what workspace: no two sheets of it share a file. */
  readonly printed: Printed;
  readonly result: CheckResult;
  readonly draft: boolean;
}

export interface PrintedFile {
  readonly uri: string;
  /** What the person who prints should know, such as characters that no font has. */
  readonly notes: readonly Said[];
}
