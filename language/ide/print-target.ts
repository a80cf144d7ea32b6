/** What is printed from a place of a file: a procedure, or a job by one. */
import type { CheckResult } from '../db/workspace.ts';
import type { Diagnostic } from '../model/diagnostic.ts';
import type { Family } from '../model/family.ts';
import type { Job } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import { contains } from '../model/ranges.ts';
import type { Position } from '../model/source.ts';
import { type Said, say } from '../say/say.ts';
import type { DeclaredSymbol } from '../semantics/symbols.ts';
import { outlinesWith } from './declared.ts';

/** Something that prints. Without a job the sheet is blank. */
export interface PrintTarget {
  readonly procedure: Procedure;
  readonly job: Job | null;
  /** Findings that affect it: those of the procedure and, for a job, its own. */
  readonly diagnostics: readonly Diagnostic[];
  /** The declaration in its file. */
  readonly symbol: DeclaredSymbol;
}

/** Something that is drawn: a family before any procedure uses it, or what prints. */
export type DrawnTarget = { readonly family: Family; readonly symbol: DeclaredSymbol } | PrintTarget;

/** A target, or a sentence that says why there is none. */
export type FoundTarget = Found<PrintTarget>;
export type Found<T> =
  | { readonly kind: 'target'; readonly target: T }
  | { readonly kind: 'none'; readonly reason: Said };

/** The procedure or job that holds the position; elsewhere the nearest above it, else the first of the file. */
export function printTargetAt(result: CheckResult, file: string, position?: Position): FoundTarget {
  const printed = (result.symbols.get(file) ?? []).filter(({ kind }) => kind === 'procedure' || kind === 'job');
  if (printed.length === 0)
    return { kind: 'none', reason: say`There is no procedure and no job in this file: only they print.` };
  return targetOf(result, file, nearestTo(position, printed)!);
}

/** The family, procedure or job that holds the position; elsewhere the nearest above it, else the first of the file. */
export function drawnTargetAt(result: CheckResult, file: string, position?: Position): Found<DrawnTarget> {
  const drawn = ['family', 'procedure', 'job'];
  const symbol = nearestTo(
    position,
    (result.symbols.get(file) ?? []).filter(({ kind }) => drawn.includes(kind)),
  );
  if (symbol === undefined)
    return {
      kind: 'none',
      reason: say`There is no family in this file, and no procedure for one: only they are drawn.`,
    };
  if (symbol.kind !== 'family') return targetOf(result, file, symbol);
  const family = result.familiesIn(file).find(({ name }) => name === symbol.name);
  if (family === undefined) return { kind: 'none', reason: say`Family ${symbol.name} could not be read yet.` };
  if (family.parts.length === 0)
    return { kind: 'none', reason: say`Family ${symbol.name} has no parts yet. Write “part body "Body"” to begin.` };
  return { kind: 'target', target: { family, symbol } };
}

function nearestTo(position: Position | undefined, all: readonly DeclaredSymbol[]): DeclaredSymbol | undefined {
  const holding = position === undefined ? undefined : all.find(({ range }) => contains(range, position));
  const above = position === undefined ? undefined : all.findLast(({ range }) => range.start.line <= position.line);
  return holding ?? above ?? all[0];
}

function targetOf(result: CheckResult, file: string, symbol: DeclaredSymbol): FoundTarget {
  const isHere = ({ source }: { source: { file: string; range: { start: Position } } }) =>
    source.file === file && contains(symbol.range, source.range.start);
  if (symbol.kind === 'job') {
    const job = result.jobsIn(file).find(isHere);
    if (job === undefined) {
      return {
        kind: 'none',
        reason: say`Job ${symbol.name} has no sheet yet: its procedure was not found, or could not be read.`,
      };
    }
    const own = result.findingsIn(file).filter(isHere);
    return {
      kind: 'target',
      target: { procedure: job.procedure, job, diagnostics: [...findingsOf(result, job.procedure), ...own], symbol },
    };
  }
  const found = result.proceduresIn(file).find(({ procedure }) => isHere(procedure));
  if (found === undefined) {
    return {
      kind: 'none',
      reason: say`Procedure ${symbol.name} has no sheet yet: its family or its shop was not found, or could not be read.`,
    };
  }
  return { kind: 'target', target: { procedure: found.procedure, job: null, diagnostics: found.diagnostics, symbol } };
}

function findingsOf(result: CheckResult, procedure: Procedure): readonly Diagnostic[] {
  const found = result.procedureOf(procedure.name);
  return found?.procedure.source.file === procedure.source.file ? found.diagnostics : [];
}

/** What a procedure or a job is called where it is shown to the lead. */
export function titleOf({ symbol }: Pick<PrintTarget, 'symbol'>): string {
  return symbol.title === '' ? symbol.name : symbol.title;
}

/** Why what a printed sheet names is not found. */
export function notFoundHere({ procedure, job }: { readonly procedure: string; readonly job: string }): Said {
  return job === ''
    ? say`No procedure of this workspace is called ${procedure}. Open the folder that the sheet was printed from, and scan or click again.`
    : say`No job of this workspace is called ${job}. Open the folder that the sheet was printed from, and scan or click again.`;
}

/** Where what a printed sheet names is declared now. */
export interface PrintedFrom {
  readonly file: string;
  readonly position: Position;
  /** What prints there; null: it has no sheet at the moment, or its sheet is of another procedure. */
  readonly target: PrintTarget | null;
}

/**
 * Finds what a printed sheet was made from, by the names on it; null: it is not there.
 * @param job name of the job; empty: the sheet was blank
 * @param files files that it may be in
 */
export function printedFrom(
  result: CheckResult,
  { procedure, job }: { readonly procedure: string; readonly job: string },
  files: ReadonlySet<string>,
): PrintedFrom | null {
  const [kind, name] = job === '' ? ['procedure', procedure] : ['job', job];
  for (const [file, symbols] of outlinesWith(result, (one) => one.kind === kind && one.name === name)) {
    const symbol = symbols.find((one) => one.kind === kind && one.name === name);
    if (symbol === undefined || !files.has(file)) continue;
    const found = targetOf(result, file, symbol);
    const target = found.kind === 'target' && found.target.procedure.name === procedure ? found.target : null;
    return { file, position: symbol.nameRange.start, target };
  }
  return null;
}
