import { type Replay, replay } from '../analysis/flow-analysis.ts';
import {
  isSettings,
  noSheetSettings,
  readSettings,
  type Settings,
  type SettingsFile,
  type SheetSettings,
  withSeverities,
} from '../config/config.ts';
import { touches } from '../diagnostics/engine.ts';
import { attempt } from '../diagnostics/not-checked.ts';
import type { Finding } from '../model/diagnostic.ts';
import type { Job } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Link } from '../semantics/context.ts';
import type { Resolved } from '../semantics/resolved.ts';
import type { DeclaredSymbol } from '../semantics/symbols.ts';
import type { SyntaxProblem } from '../syntax/parse.ts';
import { Database } from './engine.ts';
import { lazily } from './lazily.ts';
import { queriesOf } from './queries.ts';
import { Snapshot } from './snapshot.ts';
import { Trees } from './trees.ts';

/** A file as it was read or is being typed. */
export interface SourceFile {
  /** Its URI or path; findings carry it back. */
  readonly uri: string;
  readonly text: string;
}

export interface CheckedProcedure {
  readonly procedure: Procedure;
  /** The analysis of its paths, made again when it is asked for. */
  readonly replays: readonly Replay[];
  /** Those that stand in the procedure. */
  readonly findings: readonly Finding[];
}

export interface CheckResult {
  /** By file in the order given, then by place. */
  readonly findings: readonly Finding[];
  readonly procedures: readonly CheckedProcedure[];
  readonly jobs: readonly Job[];
  readonly resolved: Resolved;
  readonly links: readonly Link[];
  /** How sheets are printed in this workspace. */
  readonly sheet: SheetSettings;
  /** Severities that the settings file changes, and the number of findings that it raised, lowered or turned off. */
  readonly severities: Settings['severities'];
  readonly restated: number;
  /** The outline of each file. */
  readonly symbols: ReadonlyMap<string, readonly DeclaredSymbol[]>;
}

/** Parses and checks a workspace of files, with the settings file that is in force. Pure; never throws. */
export function checkFiles(files: readonly SourceFile[], settings: SettingsFile | null = null): CheckResult {
  return new Checker().check(files, settings);
}

/** Keeps what was computed between checks: one for each editor or watch. An edit costs what depends on it. */
export class Checker {
  readonly database = new Database();
  private readonly trees = new Trees();
  private readonly queries = queriesOf(this.database, this.trees);
  private uris: readonly string[] = [];

  /** The server and the command line call this one function; only presentation differs. */
  check(files: readonly SourceFile[], settingsFile: SettingsFile | null = null): CheckResult {
    this.update(files);
    const snapshot = new Snapshot(this.queries, this.uris);
    this.trees.trim();
    this.database.sweep(lasting);
    return resultOf(snapshot, settingsFile === null ? null : readSettings(settingsFile));
  }

  /** Takes the files over: what is new, changed or gone. */
  private update(files: readonly SourceFile[]) {
    const { texts, files: order } = this.queries;
    const uris = files.map(({ uri }) => uri);
    for (const { uri, text } of files) texts.set(uri, text);
    if (uris.length === this.uris.length && uris.every((uri, index) => uri === this.uris[index])) return;
    const now = new Set(uris);
    for (const uri of this.uris) if (!now.has(uri)) this.forget(uri);
    this.uris = [...now];
    order.set('', this.uris);
  }

  private forget(uri: string) {
    this.queries.texts.delete(uri);
    this.trees.drop(uri);
  }
}

/** Queries that are asked from outside, and whose results are kept while their file is there. */
const lasting: ReadonlySet<string> = new Set(['parsed', 'declared', 'model', 'told', 'concessions', 'findings from']);

function resultOf(snapshot: Snapshot, settings: Settings | null): CheckResult {
  const severities = settings?.severities ?? new Map();
  const all = (findings: readonly Finding[]) => findings.map((finding) => snapshot.located(finding));
  const syntax = [
    ...(settings?.problems ?? []),
    ...snapshot.files.flatMap(({ uri, parsed }) => parsed.problems.map((problem) => syntaxFinding(uri, problem))),
  ];
  const from = (part: 'common' | 'idle' | 'unmade') => snapshot.files.flatMap(({ found }) => all(found[part]));
  const [common, idle, unmade] = [from('common'), from('idle'), from('unmade')];
  const own = new Map(
    snapshot.files.flatMap(({ found }) => found.own.map(({ id, findings }) => [id, all(findings)] as const)),
  );
  const found = [...common, ...[...own.values()].flat(), ...idle];
  const procedures = snapshot.procedures().map(({ id, model }) =>
    lazily<CheckedProcedure>({
      procedure: () => snapshot.located(model),
      replays: () => attempt('the check of its steps', model.source, [], () => replay(snapshot.located(model))) ?? [],
      findings: () => {
        const procedure = snapshot.located(model);
        return withSeverities(
          [
            ...[...syntax, ...unmade].filter((finding) => standsIn(finding, procedure)),
            ...common.filter((finding) => touches(finding, procedure)),
            ...own.get(id)!,
            ...idle.filter((finding) => touches(finding, procedure)),
          ],
          severities,
        );
      },
    }),
  );
  const result: CheckResult = lazily<CheckResult>({
    findings: () =>
      inOrder(
        withSeverities([...syntax, ...found, ...unmade], severities),
        snapshot.files.map(({ uri }) => uri),
      ),
    procedures: () => procedures,
    jobs: () => snapshot.jobs(),
    links: () => snapshot.links(),
    resolved: () => snapshot.resolved(result.jobs, result.links),
    sheet: () => settings?.sheet ?? noSheetSettings,
    severities: () => severities,
    restated: () => found.filter(({ rule, severity }) => (severities.get(rule) ?? severity) !== severity).length,
    symbols: () => new Map(snapshot.files.map(({ uri, parsed }) => [uri, parsed.symbols])),
  });
  return result;
}

/** By file, then by place. The settings file is not among the files: it comes before them. */
function inOrder(findings: readonly Finding[], uris: readonly string[]): Finding[] {
  const order = new Map(uris.map((uri, index) => [uri, index]));
  return [...findings].sort(
    (a, b) =>
      (order.get(a.source.file) ?? -1) - (order.get(b.source.file) ?? -1) ||
      a.source.range.start.line - b.source.range.start.line ||
      a.source.range.start.character - b.source.range.start.character,
  );
}

function syntaxFinding(file: string, problem: SyntaxProblem): Finding {
  return { rule: 'syntax', severity: 'error', message: problem.message, source: { file, range: problem.range } };
}

/**
 * A slip anywhere in the files of a procedure may have cost it a step: its sheet waits until it is fixed. So may one in the
 * settings, where the shop can have raised a warning to an error.
 */
function standsIn(finding: Finding, procedure: Procedure): boolean {
  const { file } = finding.source;
  return isSettings(file) || procedure.files.includes(file);
}
