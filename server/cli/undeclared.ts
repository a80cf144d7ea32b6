import type { CheckResult } from '../../language/db/workspace.ts';
import { worded } from './messages.ts';

/** Why things that files declare, or seem to, have no sheet: what cannot be read must not be passed over in silence. */
export function undeclared(
  kinds: readonly ('job' | 'procedure')[],
  files: readonly string[],
  result: CheckResult,
): string[] {
  const made = new Set(
    [...result.jobs, ...result.procedures.map(({ procedure }) => procedure)].map(({ source }) =>
      placeOf(source.file, source.range.start),
    ),
  );
  return files.flatMap((file) => {
    const symbols = result.symbols.get(file) ?? [];
    if (symbols.length === 0) return result.diagnostics.some(isErrorIn(file)) ? [unreadFile(file)] : [];
    return symbols
      .filter(
        ({ kind, nameRange }) => kinds.some((wanted) => wanted === kind) && !made.has(placeOf(file, nameRange.start)),
      )
      .map(({ kind, name }) =>
        kind === 'job'
          ? worded`job ${name.replace(/"/gu, '')} is not printed: its procedure was not found, or could not be read. Run npx handtight check ${file} to see why.`
          : worded`procedure ${name.replace(/"/gu, '')} is not printed: its family or its shop was not found, or could not be read. Run npx handtight check ${file} to see why.`,
      );
  });
}

function placeOf(file: string, { line, character }: { readonly line: number; readonly character: number }): string {
  return `${line}:${character}:${file}`;
}

function isErrorIn(file: string) {
  return ({ severity, source }: CheckResult['diagnostics'][number]) => severity === 'error' && source.file === file;
}

function unreadFile(file: string): string {
  return worded`${file} is not printed: nothing in it can be read. Run npx handtight check ${file} to see why.`;
}
