import { isIssuedFile } from '../../language/db/issued/format.ts';
import type { CheckResult } from '../../language/db/workspace.ts';
import type { Diagnostic } from '../../language/model/diagnostic.ts';
import type { Position, Range } from '../../language/model/source.ts';
import type { Target } from './targets.ts';

/**
 * The findings that affect a sheet: on its procedure, and in the file of its job, except those in another
 * declaration there. A slip between declarations may have cost any of them something.
 */
export function findingsOn({ procedure, job }: Target, result: CheckResult): Diagnostic[] {
  // What was found in an issued revision was dealt with at its issue.
  const issued = isIssuedFile(procedure.source.file);
  const ofProcedure = issued ? [] : result.procedureOf(procedure.name)!.diagnostics;
  if (job === null) return [...ofProcedure];
  const { file, range } = job.source;
  const others = (result.symbols.get(file) ?? []).filter((symbol) => !holds(symbol.range, range.start));
  const own = result
    .findingsIn(file)
    .filter(({ source }) => !others.some((other) => holds(other.range, source.range.start)));
  return [...ofProcedure, ...own.filter((diagnostic) => !ofProcedure.includes(diagnostic))];
}

function holds({ start, end }: Range, at: Position): boolean {
  return !before(at, start) && before(at, end);
}

function before(one: Position, other: Position): boolean {
  return one.line < other.line || (one.line === other.line && one.character < other.character);
}
