/** What a sheet is made of: the procedure or the job at a place of a document. */
import type { CheckResult } from '../../language/db/workspace.ts';
import type { Finding } from '../../language/model/diagnostic.ts';
import type { Job } from '../../language/model/job.ts';
import type { Procedure } from '../../language/model/procedure.ts';
import { contains } from '../../language/model/ranges.ts';
import type { Position } from '../../language/model/source.ts';
import type { DeclaredSymbol } from '../../language/semantics/symbols.ts';
import type { Library } from './document-store.ts';
import { canonicalUri } from './uris.ts';

/** Something that prints. Without a job the sheet is blank. */
export interface Subject {
  readonly procedure: Procedure;
  readonly job: Job | null;
  /** Findings that affect it: those of the procedure and, for a job, its own. */
  readonly findings: readonly Finding[];
  /** The declaration in the document. */
  readonly symbol: DeclaredSymbol;
}

/** A subject, or a sentence that says why there is none. */
export type FoundSubject =
  | { readonly kind: 'subject'; readonly subject: Subject }
  | { readonly kind: 'none'; readonly reason: string };

/** The procedure or job that holds the position; elsewhere the nearest above it, else the first of the file. */
export function subjectAt(library: Library, uri: string, position: Position | undefined): FoundSubject {
  const key = canonicalUri(uri);
  const result = library.check(uri);
  const printed = (result.symbols.get(key) ?? []).filter(({ kind }) => kind === 'procedure' || kind === 'job');
  if (printed.length === 0)
    return { kind: 'none', reason: 'There is no procedure and no job in this file: only they print.' };
  const holding = position === undefined ? undefined : printed.find(({ range }) => contains(range, position));
  const above = position === undefined ? undefined : printed.findLast(({ range }) => range.start.line <= position.line);
  const symbol = holding ?? above ?? printed[0]!;
  return subjectOf(result, key, symbol);
}

function subjectOf(result: CheckResult, uri: string, symbol: DeclaredSymbol): FoundSubject {
  const isHere = ({ source }: { source: { file: string; range: { start: Position } } }) =>
    source.file === uri && contains(symbol.range, source.range.start);
  if (symbol.kind === 'job') {
    const job = result.jobs.find(isHere);
    if (job === undefined) {
      return {
        kind: 'none',
        reason: `Job ${symbol.name} has no sheet yet: its procedure was not found, or could not be read.`,
      };
    }
    const own = result.findings.filter(isHere);
    return {
      kind: 'subject',
      subject: { procedure: job.procedure, job, findings: [...findingsOf(result, job.procedure), ...own], symbol },
    };
  }
  const found = result.procedures.find(({ procedure }) => isHere(procedure));
  if (found === undefined) {
    return {
      kind: 'none',
      reason: `Procedure ${symbol.name} has no sheet yet: its family or its shop was not found, or could not be read.`,
    };
  }
  return { kind: 'subject', subject: { procedure: found.procedure, job: null, findings: found.findings, symbol } };
}

function findingsOf(result: CheckResult, procedure: Procedure): readonly Finding[] {
  return (
    result.procedures.find(
      (entry) => entry.procedure.name === procedure.name && entry.procedure.source.file === procedure.source.file,
    )?.findings ?? []
  );
}
