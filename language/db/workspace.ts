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
import { findingsOf } from '../diagnostics/engine.ts';
import { attempt, internalError } from '../diagnostics/not-checked.ts';
import type { Finding } from '../model/diagnostic.ts';
import type { Job } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Position } from '../model/source.ts';
import type { Link } from '../semantics/context.ts';
import { type Resolved, resolve } from '../semantics/resolve.ts';
import { type DeclaredSymbol, symbolsOf } from '../semantics/symbols.ts';
import type { File } from '../syntax/generated/ast.ts';
import { type Parsed, parse, type SyntaxProblem } from '../syntax/parse.ts';
import { hiddenSigns, textProblem } from '../syntax/text-problem.ts';
import { Memory, worldOf } from './cache.ts';

/** A file as it was read or is being typed. */
export interface SourceFile {
  /** Its URI or path; findings carry it back. */
  readonly uri: string;
  readonly text: string;
}

export interface CheckedProcedure {
  readonly procedure: Procedure;
  readonly replays: readonly Replay[];
  /** Those that are in the procedure. */
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

interface ParsedSource {
  readonly text: string;
  readonly ast: File;
  readonly problems: readonly SyntaxProblem[];
  /** For the parse after an edit; null: the text is none. */
  readonly parsed: Parsed | null;
}

/** Parses and checks a workspace of files, with the settings file that is in force. Pure; never throws. */
export function checkFiles(files: readonly SourceFile[], settings: SettingsFile | null = null): CheckResult {
  return new Checker().check(files, settings);
}

/** Keeps syntax trees, and the results of procedures, between checks: one for each editor or watch. */
export class Checker {
  private parsed = new Map<string, ParsedSource>();
  private readonly memory = new Memory();

  /** The server and the command line call this one function; only presentation differs. */
  check(files: readonly SourceFile[], settingsFile: SettingsFile | null = null): CheckResult {
    const settings = settingsFile === null ? [] : [readSettings(settingsFile)];
    const severities = new Map(settings.flatMap((one) => [...one.severities]));
    const now = new Map<string, ParsedSource>();
    for (const file of files) {
      const known = this.parsed.get(file.uri);
      now.set(file.uri, known?.text === file.text ? known : parsedSource(file.text, known?.parsed ?? null));
    }
    this.parsed = now;
    const trees = files.map((file) => ({ uri: file.uri, ast: now.get(file.uri)!.ast }));
    const resolved = resolve(trees);
    const unmade = resolved.defects.map(({ what, source, error }) => internalError(what, source, error));
    const symbols = new Map(trees.map(({ uri, ast }) => [uri, symbolsOf(ast)]));
    const world = worldOf(symbols, (file) => now.get(file)?.text);
    const replays = new Map<Procedure, readonly Replay[]>();
    const syntax = [
      ...settings.flatMap(({ problems }) => problems),
      ...files.flatMap((file) => now.get(file.uri)!.problems.map((problem) => syntaxFinding(file.uri, problem))),
    ];
    const { all: found, byProcedure } = findingsOf(resolved, (procedure, work) => {
      let outcome = this.memory.recall(procedure, world);
      if (outcome === null) {
        const defects: Finding[] = [];
        const made = attempt('the check of its steps', procedure.source, defects, () => replay(procedure)) ?? [];
        const { findings, used } = work(made);
        outcome = { replays: made, findings: [...findings, ...defects], used };
        this.memory.keep(procedure, outcome, world);
      }
      replays.set(procedure, outcome.replays);
      return outcome;
    });
    // The settings file is not among the files: it comes before them.
    const order = new Map(files.map((file, index) => [file.uri, index]));
    const told = [...withSeverities([...syntax, ...found, ...unmade], severities)];
    const findings = told.sort(
      (a, b) =>
        (order.get(a.source.file) ?? -1) - (order.get(b.source.file) ?? -1) ||
        a.source.range.start.line - b.source.range.start.line ||
        a.source.range.start.character - b.source.range.start.character,
    );
    return {
      findings,
      procedures: resolved.procedures.map((procedure) => ({
        procedure,
        replays: replays.get(procedure)!,
        findings: withSeverities(
          [...[...syntax, ...unmade].filter((finding) => standsIn(finding, procedure)), ...byProcedure.get(procedure)!],
          severities,
        ),
      })),
      jobs: resolved.jobs,
      resolved,
      links: resolved.links,
      sheet: settings[0]?.sheet ?? noSheetSettings,
      severities,
      restated: found.filter(({ rule, severity }) => (severities.get(rule) ?? severity) !== severity).length,
      symbols,
    };
  }
}

function parsedSource(text: string, before: Parsed | null): ParsedSource {
  const problem = textProblem(text);
  if (problem !== null)
    return { text, ast: { $type: 'File', declarations: [] } as unknown as File, problems: [problem], parsed: null };
  const parsed = parse(text, before);
  const { ast, problems } = parsed;
  // What cannot be seen is named as such, not as a word without a meaning.
  const hidden = hiddenSigns(text);
  const seen = problems.filter(({ range }) => !hidden.some((sign) => samePlace(sign.range.start, range.start)));
  return { text, ast, problems: [...seen, ...hidden], parsed };
}

function samePlace(one: Position, other: Position): boolean {
  return one.line === other.line && one.character === other.character;
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
