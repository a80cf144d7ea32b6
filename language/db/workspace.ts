import { analyzeFlow, type FlowAnalysis } from '../analysis/flow-analysis.ts';
import type { StepStates } from '../analysis/step-states.ts';
import { noSheetSettings, type Settings, type SettingsFile, type SheetSettings } from '../config/config.ts';
import { attempt } from '../diagnostics/not-checked.ts';
import type { Diagnostic } from '../model/diagnostic.ts';
import type { Family } from '../model/family.ts';
import type { Job } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Position } from '../model/source.ts';
import { say } from '../say/say.ts';
import type { Reference } from '../semantics/context.ts';
import { type Declared, kindOfId } from '../semantics/declaration-id.ts';
import type { ResolvedWorkspace } from '../semantics/resolved.ts';
import type { DeclaredSymbol, SearchedName } from '../semantics/symbols.ts';
import { Database, type Store } from './engine.ts';
import { Findings } from './findings.ts';
import { Gathering } from './gathering.ts';
import type { IssuedFile } from './issued/format.ts';
import { LazyMap, lazily } from './lazily.ts';
import { buildQueries } from './queries.ts';
import { Snapshot } from './snapshot.ts';
import { Trees } from './trees.ts';

/** A file as it was read or is being typed. */
export interface SourceFile {
  /** Its URI or path; findings carry it back. */
  readonly uri: string;
  /** Where `jobs` are known it may be read when it is needed. */
  readonly text: string;
  /** Names of the jobs that it declares, where it is known to declare nothing else. */
  readonly jobs?: readonly string[] | undefined;
}

export interface CheckedProcedure {
  readonly procedure: Procedure;
  /** The analysis of its paths, made again when it is read. */
  readonly flows: readonly FlowAnalysis[];
  /** What is known at each of its steps; kept until the procedure is another. */
  readonly states: StepStates | null;
  /** What is known up to the step of an index, without an analysis for what is typed behind it if there was one before. */
  readonly statesUpTo: (index: number) => StepStates | null;
  /** Those that are in the procedure. */
  readonly diagnostics: readonly Diagnostic[];
}

/** A job or a procedure as it is declared, whether or not it can be read. */
export interface DeclaredName {
  readonly name: string;
  /** Of a procedure. */
  readonly revision: string | null;
}

/** A declaration at the margin of a file. */
export interface DeclarationIn {
  readonly uri: string;
  /** As the outline calls it. */
  readonly kind: string;
  readonly name: string;
}

/** All that is found in a workspace; each part is worked out when it is read. */
export interface CheckResult {
  /** By file in the order given, then by place. */
  readonly diagnostics: readonly Diagnostic[];
  readonly procedures: readonly CheckedProcedure[];
  readonly jobs: readonly Job[];
  readonly resolved: ResolvedWorkspace;
  readonly references: readonly Reference[];
  /** Those of the names that are written in a file, or at a place in it. */
  readonly linksIn: (uri: string, at?: Position) => readonly Reference[];
  /** How sheets are printed in this workspace. */
  readonly sheet: SheetSettings;
  /** Language of what the command says; null: the workspace does not say. */
  readonly messages: Settings['messages'];
  /** Severities that the settings file changes, and the number of findings that it raised, lowered or turned off. */
  readonly severities: Settings['severities'];
  readonly restated: number;
  /** The outline of each file. */
  readonly symbols: ReadonlyMap<string, readonly DeclaredSymbol[]>;
  /** What can be searched for in each file. */
  readonly searched: ReadonlyMap<string, readonly SearchedName[]>;
  /** What all files declare at the margin, in order: known without their outlines. */
  readonly declarations: readonly DeclarationIn[];
  /** Names of all jobs and procedures. */
  readonly declared: { readonly jobs: readonly DeclaredName[]; readonly procedures: readonly DeclaredName[] };
  /** What is in one file and comes of what it declares, without a look at files that have no part in that. */
  readonly findingsIn: (uri: string) => readonly Diagnostic[];
  /** Those that are declared in a file, as far as they can be read. */
  readonly jobsIn: (uri: string) => readonly Job[];
  readonly proceduresIn: (uri: string) => readonly CheckedProcedure[];
  readonly familiesIn: (uri: string) => readonly Family[];
  /** Those of a name, or else in a file; the same. Null where there is none that can be read. */
  readonly jobOf: (nameOrUri: string) => Job | null;
  readonly procedureOf: (nameOrUri: string) => CheckedProcedure | null;
  /** The issued revisions of the workspace. */
  readonly issued: readonly IssuedFile[];
  /** The issued revision that a job names and is judged by; null: the sources. */
  readonly judgedBy: (nameOrUri: string) => IssuedFile | null;
}

/** Parses and checks a workspace of files, with the settings file that is in force. Pure; never throws. */
export function checkFiles(files: readonly SourceFile[], settings: SettingsFile | null = null): CheckResult {
  return new Workspace().check(files, settings);
}

/** What is worked out file by file. */
export const byFile: readonly string[] = ['said in', 'result in'];

/** What a workspace takes over from others. */
export interface Kept {
  /** Names a text: another name for another text. */
  readonly digest?: ((text: string) => string) | undefined;
  /** Results that were named with it. */
  readonly store?: Store | undefined;
}

/** Keeps what was computed between checks: one for each editor or watch. An edit costs what depends on it. */
export class Workspace {
  readonly database: Database;
  private readonly trees = new Trees();
  private readonly queries;
  private readonly gathering;
  private uris: readonly string[] = [];

  /** @param kept what an earlier process worked out, and how it names a text; without it nothing is taken over */
  constructor({ digest, store }: Kept = {}) {
    this.database = new Database(digest, store);
    this.queries = buildQueries(this.database, this.trees, digest);
    this.gathering = new Gathering(this.queries);
  }

  /** The server and the command line call this one function; only presentation differs. */
  check(files: readonly SourceFile[], settings: SettingsFile | null = null): CheckResult {
    const result = buildResult(this.snapshot(files).complete(), settings);
    this.trees.trim();
    this.database.sweep(() => this.isRead());
    return result;
  }

  /**
   * The same result, for one question about a large workspace: what nobody reads is never worked out. It describes these
   * files as long as no others are checked.
   */
  open(files: readonly SourceFile[], settings: SettingsFile | null = null): CheckResult {
    return buildResult(this.snapshot(files), settings);
  }

  /** Takes files over, so that parts of what is found in them can be worked out. */
  take(files: readonly SourceFile[]) {
    this.update(files);
  }

  /** The jobs that a file declares; null where it declares something else. */
  jobsOf(uri: string): readonly string[] | null {
    const { unreadFiles, heads } = this.queries;
    const known = unreadFiles.peek('')?.get(uri)?.jobs;
    if (known !== undefined) return known;
    const { areJobs, declarations } = heads(uri);
    return areJobs ? declarations.map(({ name }) => name) : null;
  }

  /** Those of the files whose findings are neither known nor in the store. */
  missing(): string[] {
    return this.uris.filter((uri) => byFile.some((query) => !this.database.isReady(query, uri)));
  }

  /** Works out what is found in some of the files: with that of all of them, the rest is quick. */
  workOut(uris: readonly string[]) {
    const { saidIn, resultIn, unitsIn, idsIn, tests } = this.queries;
    for (const uri of uris) {
      saidIn(uri);
      resultIn(uri);
      unitsIn(uri);
      for (const id of idsIn(uri)) if (kindOfId(id) === 'Procedure') tests(id);
      this.trees.trim();
    }
  }

  /** What each check reads of the files that are there. */
  private isRead(): (query: string, key: string) => boolean {
    const keys = new Set(['', ...this.uris, ...this.uris.flatMap((uri) => this.queries.idsIn(uri))]);
    return (query, key) => lasting.has(query) && keys.has(key);
  }

  private snapshot(files: readonly SourceFile[]): Snapshot {
    this.update(files);
    return new Snapshot(this.queries, this.gathering, this.uris);
  }

  /** Takes the files over: what is new, changed or gone. */
  private update(files: readonly SourceFile[]) {
    const { texts, unreadFiles, files: order } = this.queries;
    const uris = files.map(({ uri }) => uri);
    const unread = new Map<string, SourceFile>();
    for (const file of files) {
      const { uri, jobs } = file;
      if (jobs === undefined) texts.set(uri, file.text);
      else unread.set(uri, file);
    }
    if (unread.size > 0 || unreadFiles.peek('') !== undefined) unreadFiles.set('', unread);
    if (uris.length === this.uris.length && uris.every((uri, index) => uri === this.uris[index])) return;
    const now = new Set(uris);
    for (const uri of this.uris) if (!now.has(uri)) this.forget(uri);
    this.uris = [...now];
    order.set('', this.uris);
  }

  private forget(uri: string) {
    this.queries.texts.delete(uri);
    this.trees.drop(uri);
    this.gathering.forget(uri);
  }
}

/** Queries that are read from outside, and whose results are kept while their file is there. */
export const lasting: ReadonlySet<string> = new Set([
  'parsed',
  'index',
  'problems from',
  'reads in',
  'used from',
  'units in',
  'step states',
  'findings from',
]);

/** Answers, each worked out when it is read. */
export function buildResult(snapshot: Snapshot, settings: SettingsFile | null): CheckResult {
  const diagnostics = new Findings(snapshot, settings);
  const procedures = new Map<string, CheckedProcedure>();
  const checked = (id: string): CheckedProcedure | null => {
    const model = snapshot.procedure(id);
    if (model === null) return null;
    const procedure = () => snapshot.located(model);
    const known =
      procedures.get(id) ??
      lazily<CheckedProcedure>({
        procedure,
        flows: () => attempt(say`the check of its steps`, model.source, [], () => analyzeFlow(procedure())) ?? [],
        states: () => snapshot.stepStates(id),
        statesUpTo: () => (index) => snapshot.statesUpTo(id, index) ?? snapshot.stepStates(id),
        diagnostics: () => diagnostics.on(id, procedure()),
      });
    procedures.set(id, known);
    return known;
  };
  const idsIn = (uri: string, kind: Declared) => (snapshot.has(uri) ? snapshot.idsIn(uri, kind) : []);
  /** The first of a name, or else of a file. */
  const first = <T>(kind: 'Job' | 'Procedure', nameOrUri: string, make: (id: string) => T | null): T | null => {
    const named = snapshot.idsOf(kind, nameOrUri);
    const ids = named.length > 0 ? named : idsIn(nameOrUri, kind);
    for (const id of ids) {
      const made = make(id);
      if (made !== null) return made;
    }
    return null;
  };
  const result: CheckResult = lazily<CheckResult>({
    diagnostics: () => diagnostics.all(),
    procedures: () => snapshot.ids('Procedure').flatMap((id) => checked(id) ?? []),
    jobs: () => snapshot.ids('Job').flatMap((id) => snapshot.job(id) ?? []),
    references: () => snapshot.links(),
    linksIn: () => (uri, at) => snapshot.linksIn(uri, at),
    resolved: () => snapshot.resolved(result.jobs, result.references),
    sheet: () => diagnostics.settings?.sheet ?? noSheetSettings,
    messages: () => diagnostics.settings?.messages ?? null,
    severities: () => diagnostics.settings?.severities ?? new Map(),
    restated: () => diagnostics.restated(),
    symbols: () => new LazyMap(snapshot.uris, (uri) => snapshot.symbols(uri)),
    searched: () => new LazyMap(snapshot.uris, (uri) => snapshot.searched(uri)),
    declarations: () => snapshot.declarations(),
    declared: () => ({ jobs: snapshot.declared('Job'), procedures: snapshot.declared('Procedure') }),
    findingsIn: () => (uri) => diagnostics.in(uri),
    jobsIn: () => (uri) => idsIn(uri, 'Job').flatMap((id) => snapshot.job(id) ?? []),
    proceduresIn: () => (uri) => idsIn(uri, 'Procedure').flatMap((id) => checked(id) ?? []),
    familiesIn: () => (uri) => idsIn(uri, 'Family').flatMap((id) => snapshot.family(id) ?? []),
    jobOf: () => (nameOrUri) => first('Job', nameOrUri, (id) => snapshot.job(id)),
    procedureOf: () => (nameOrUri) => first('Procedure', nameOrUri, checked),
    issued: () => snapshot.issues(),
    judgedBy: () => (nameOrUri) => first('Job', nameOrUri, (id) => snapshot.issueOf(id)),
  });
  return result;
}
