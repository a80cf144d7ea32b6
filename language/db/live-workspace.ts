import { readSettings, type Settings, type SettingsFile } from '../config/config.ts';
import type { Diagnostic } from '../model/diagnostic.ts';
import { mayDeclare } from './declarations.ts';
import { Database } from './engine.ts';
import { Gathering } from './gathering.ts';
import { isIssuedFile } from './issued/format.ts';
import { LiveFindings } from './live-findings.ts';
import { buildQueries } from './queries.ts';
import { Snapshot } from './snapshot.ts';
import { Trees } from './trees.ts';
import { buildResult, byFile, type CheckResult, type Kept, lasting } from './workspace.ts';

/** Works out elsewhere what is found in the files of a workspace, and puts it into the store. */
export interface Helper {
  /** Something is being worked out: it is called for no other work until then. */
  readonly isWorking: boolean;
  /** Begins with files that are not known yet; false: they are too few. */
  begin(uris: readonly string[]): boolean;
}

const nowhere: readonly string[] = [];

/** The check of a procedure with as many lines would hold the answer to a question up for longer than a person notices. */
const longLines = 1_000;

/**
 * A workspace that is being edited. Its findings are brought up to date in small pieces of work, the files in hand first,
 * and questions are answered between the pieces: no answer waits for more files than it is about.
 */
export class LiveWorkspace {
  readonly database: Database;
  private readonly trees = new Trees();
  private readonly queries;
  private readonly gathering;
  private readonly findings;
  private readonly first: string | null;
  private readonly files = new Set<string>();
  /** Null: files came or went since. */
  private order: readonly string[] | null = [];
  /** Texts that are taken over when there is time; null: the file is gone. */
  private readonly incoming = new Map<string, string | null>();
  /** While files are read: which may declare a name, by kind and name. */
  private readonly declaring = new Map<string, readonly string[]>();
  /** Files in which something was found that is gone. */
  private readonly left = new Set<string>();
  private file: SettingsFile | null = null;
  private settings: Settings | null = null;
  private snapshot: CheckResult | null = null;
  /** Every file has been checked once: what is not used by now is not used at all. */
  private isWhole = false;
  /** There are files that have not even been read. */
  isLoading = false;
  /** For the first check of everything; null: it is done here. */
  helper: Helper | null = null;

  /**
   * @param first the file whose names count before those of the others, which are in the order of their names
   * @param kept what an earlier process worked out, and how it names a text; without it nothing is taken over
   */
  constructor(first: string | null = null, { digest, store }: Kept = {}) {
    this.first = first;
    this.database = new Database(digest, store);
    this.queries = buildQueries(this.database, this.trees, digest);
    this.gathering = new Gathering(this.queries);
    this.findings = new LiveFindings(this.queries);
  }

  /** Takes over the text of a file, null where it is gone: at once, or when there is time. Nothing is worked out. */
  edit(uri: string, text: string | null, when: 'at once' | 'in time') {
    // Of an issued revision nothing but the jobs that name it are judged: it is there before them.
    if (when === 'at once' || isIssuedFile(uri)) {
      this.incoming.delete(uri);
      this.put(uri, text);
    } else {
      this.incoming.set(uri, text);
      if (this.isLoading && text !== null)
        for (const key of mayDeclare(text)) this.declaring.set(key, [...(this.declaring.get(key) ?? []), uri]);
    }
  }

  /** Takes over the settings in force. True where the findings of all files may be others now. */
  configure(file: SettingsFile | null): boolean {
    const isSame = JSON.stringify(file) === JSON.stringify(this.file);
    if (isSame) return false;
    this.file = file;
    this.settings = file === null ? null : readSettings(file);
    this.snapshot = null;
    return true;
  }

  /** Answers to questions about the files as they are now; each is worked out when it is read. */
  get result(): CheckResult {
    this.arrange();
    this.snapshot ??= buildResult(new Snapshot(this.queries, this.gathering, this.uris, true), this.file);
    return this.snapshot;
  }

  /** The findings in a file as they were last worked out, by place. */
  findingsIn(uri: string): readonly Diagnostic[] {
    if (uri === this.file?.uri) return this.settings?.problems ?? [];
    return this.findings.in(uri, this.uris, this.settings?.severities ?? new Map());
  }

  /** The settings file in force. */
  get settingsUri(): string | null {
    return this.file?.uri ?? null;
  }

  /** The jobs that a file declares; null where it declares something else. */
  jobsOf(uri: string): readonly string[] | null {
    const { areJobs, declarations } = this.queries.heads(uri);
    return areJobs ? declarations.map(({ name }) => name) : null;
  }

  filesWithFindings(): Iterable<string> {
    return this.findings.files();
  }

  /**
   * Brings the findings up to date, a piece of work at a time. Each gives the files in which findings are others now. It may
   * be left at any point, and started again after an edit: what is done is kept.
   * @param open files in hand, the most urgent first
   */
  *work(open: readonly string[]): Generator<readonly string[]> {
    yield this.takeLeft();
    for (const uri of open) {
      yield* this.prepare(uri);
      yield this.refresh(uri);
    }
    if (this.isLoading && this.helper !== null) return;
    for (const uri of this.incoming.keys()) {
      this.takeOver(uri);
      if (this.files.has(uri)) this.queries.heads(uri);
      this.trees.trim();
      yield [];
    }
    this.arrange();
    yield this.takeLeft();
    if (this.isLoading) return;
    this.declaring.clear();
    if (this.helper !== null && !(yield* this.isHelped(this.helper))) return;
    for (const uri of this.uris) {
      // What an earlier process kept is taken over whole.
      if (!isIssuedFile(uri) && !this.database.isReady('said in', uri))
        for (const id of this.queries.idsIn(uri)) {
          this.queries.reported(id);
          yield [];
        }
      this.gathering.read(uri);
      yield [];
      // While it is at hand, what was lowered of it is looked at. What is alike is checked faster than in pieces.
      yield* this.prepare(uri, open.includes(uri) ? 0 : longLines);
      this.gathering.check(uri);
      this.trees.trim();
      yield this.isWhole ? [] : this.findings.refresh(uri, false);
    }
    this.settle();
    for (const uri of open) yield this.refresh(uri);
    this.isWhole = true;
    for (const uri of this.uris) yield this.findings.refresh(uri, true);
    this.database.sweep(() => this.isRead());
  }

  /** Has files checked elsewhere that are not known, once. True when that is done, or there is too little to do. */
  private *isHelped(helper: Helper): Generator<readonly string[], boolean> {
    if (helper.isWorking) return false;
    const missing: string[] = [];
    for (const uri of this.uris) {
      if (byFile.some((query) => !this.database.isReady(query, uri))) missing.push(uri);
      yield [];
    }
    if (this.helper === helper && helper.begin(missing)) return false;
    this.helper = null;
    return true;
  }

  private get uris(): readonly string[] {
    this.order ??= [...this.files].sort(
      (a, b) => Number(b === this.first) - Number(a === this.first) || (a < b ? -1 : a > b ? 1 : 0),
    );
    return this.order;
  }

  /** Works ahead what comes of one file, so that nothing waits for a long procedure. */
  private *prepare(uri: string, from = 0): Generator<readonly string[]> {
    this.arrange();
    if (this.isHeldBack(uri)) return;
    for (const _ of this.queries.prepare(uri, from)) yield nowhere;
  }

  /** Brings up to date what comes of one file, and gives the files in which findings are others now. */
  refresh(uri: string): readonly string[] {
    this.arrange();
    return this.isHeldBack(uri) ? [] : this.findings.refresh(uri, this.isWhole);
  }

  /** A name that is missing may be in a file that has not been read: nothing is blamed for that. */
  private isHeldBack(uri: string): boolean {
    const isPart = this.isLoading || this.declaring.size > 0;
    return !this.files.has(uri) || (isPart && this.isWaiting(uri));
  }

  /** Whether a name that a file needs is still missing after all files that may declare it have been taken over. */
  private isWaiting(uri: string): boolean {
    for (;;) {
      for (const id of this.queries.idsIn(uri)) this.queries.reported(id);
      const { missing } = this.queries;
      const wanted = [...missing]
        .flatMap((key) => this.declaring.get(key) ?? [])
        .filter((one) => this.incoming.has(one));
      if (wanted.length === 0) return missing.size > 0;
      for (const one of wanted) this.takeOver(one);
      this.arrange();
    }
  }

  private settle() {
    this.gathering.settle();
    this.snapshot = null;
  }

  private takeOver(uri: string) {
    const text = this.incoming.get(uri);
    this.incoming.delete(uri);
    if (text !== undefined) this.put(uri, text);
  }

  private takeLeft(): string[] {
    const left = [...this.left];
    this.left.clear();
    return left;
  }

  private put(uri: string, text: string | null) {
    this.snapshot = null;
    if (text !== null) {
      this.queries.texts.set(uri, text);
      if (this.files.has(uri)) return;
      this.files.add(uri);
    } else {
      if (!this.files.delete(uri)) return;
      this.queries.texts.delete(uri);
      this.trees.drop(uri);
      this.gathering.forget(uri);
      for (const file of this.findings.forget(uri)) this.left.add(file);
    }
    this.order = null;
  }

  private arrange() {
    this.queries.files.set('', this.uris);
  }

  /** What is read of the files that are there. */
  private isRead(): (query: string, key: string) => boolean {
    const keys = new Set(['', ...this.uris, ...this.uris.flatMap((uri) => this.queries.idsIn(uri))]);
    return (query, key) => lasting.has(query) && keys.has(key);
  }
}
