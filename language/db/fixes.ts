/** Safe fixes, of one file for the editor and of many for the command. */

import { fitted } from '../diagnostics/edits.ts';
import type { Diagnostic, Edit, Fix } from '../model/diagnostic.ts';
import { touches } from '../model/ranges.ts';
import type { Position } from '../model/source.ts';
import { isProblemCode } from '../syntax/problem-code.ts';
import type { CheckResult, SourceFile } from './workspace.ts';

/**
 * The safe fixes of what is found in a file, without those that overlap one before. While something cannot be read, only
 * that is fixed: what seems to be missing may be in it.
 */
export function safeFixes(diagnostics: readonly Diagnostic[], file: string): readonly Fix[] {
  const here = diagnostics.filter(({ source }) => source.file === file);
  const first = here.filter(({ rule }) => isProblemCode(rule) || rule === 'unknown-name');
  const fixes: Fix[] = [];
  for (const { fix } of first.length > 0 ? first : here) {
    if (fix?.safe !== true || fix.edits.some((edit) => edit.source.file !== file)) continue;
    const taken = fixes.flatMap(({ edits }) => edits);
    if (!fix.edits.some((edit) => taken.some((other) => touches(edit.source.range, other.source.range))))
      fixes.push(fix);
  }
  return fixes;
}

/** A text with edits made in it. They do not overlap. */
export function edited(text: string, edits: readonly Edit[]): string {
  const starts = [0, ...[...text.matchAll(/\r\n|\n|\r/gu)].map(({ 0: end, index }) => index + end.length)];
  const offset = ({ line, character }: Position) => (starts[line] ?? text.length) + character;
  return edits
    .map((edit) => fitted(text, edit))
    .map(({ source: { range }, text: put }) => ({ start: offset(range.start), end: offset(range.end), put }))
    .sort((a, b) => b.start - a.start)
    .reduce((now, { start, end, put }) => now.slice(0, start) + put + now.slice(end), text);
}

/** Most rounds of fixing. A fix brings nothing new, so that few are needed: what cannot be read, then the rest. */
export const mostRounds = 20;

/** The result of fixing. */
export interface FixResult {
  readonly files: readonly SourceFile[];
  /** What is found now. */
  readonly result: CheckResult;
  /** How many fixes were applied, by file. */
  readonly counts: ReadonlyMap<string, number>;
  /** False where there was still something to fix after the last round. */
  readonly isSettled: boolean;
}

/**
 * Applies the safe fixes of files, and of what is found after that, until there is none.
 * @param mayFix whether a finding's fix is wanted
 */
export function fixFiles(
  before: { readonly files: readonly SourceFile[]; readonly result: CheckResult },
  check: (files: readonly SourceFile[]) => CheckResult,
  mayFix: (diagnostic: Diagnostic) => boolean,
): FixResult {
  let { files, result } = before;
  const counts = new Map<string, number>();
  for (let round = 0; ; round++) {
    const diagnostics = result.diagnostics.map((diagnostic) =>
      mayFix(diagnostic) ? diagnostic : withoutFix(diagnostic),
    );
    const byFile = new Map<string, Diagnostic[]>();
    for (const diagnostic of diagnostics) {
      const { file } = diagnostic.source;
      const same = byFile.get(file);
      if (same === undefined) byFile.set(file, [diagnostic]);
      else same.push(diagnostic);
    }
    const fixes = new Map(files.map(({ uri }) => [uri, safeFixes(byFile.get(uri) ?? [], uri)]));
    const isSettled = [...fixes.values()].every(({ length }) => length === 0);
    if (isSettled || round === mostRounds) return { files, result, counts, isSettled };
    files = files.map((file) => {
      const own = fixes.get(file.uri)!;
      if (own.length === 0) return file;
      counts.set(file.uri, (counts.get(file.uri) ?? 0) + own.length);
      return {
        uri: file.uri,
        text: edited(
          file.text,
          own.flatMap(({ edits }) => edits),
        ),
      };
    });
    result = check(files);
  }
}

function withoutFix({ fix: _, ...diagnostic }: Diagnostic): Diagnostic {
  return diagnostic;
}
