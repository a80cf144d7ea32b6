/** All that a sheet is made from, as a text: a hash of it names the content that was printed. */
import type { Job } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Range, Source } from '../model/source.ts';
import type { CheckResult, SourceFile } from './workspace.ts';

/** What a sheet is printed for. Without a job it is blank. */
export interface Printed {
  readonly procedure: Procedure;
  readonly job: Job | null;
}

/** A workspace as it was checked. */
export interface CheckedFiles {
  readonly files: readonly SourceFile[];
  readonly result: CheckResult;
}

/**
 * A text that is the same as long as a sheet says the same; the command, the editor and the link on the sheet use a hash of it.
 *
 * What a sheet is made from is read off the model: every fact in it carries the place where it was written, and each declaration
 * that holds such a place counts whole: procedure, family, shop, job, and wherever steps come from, which are sequences of
 * any file and the procedures that it is `like`. So nothing that prints can be forgotten here, and what is beside it in
 * the same files does not count. Nor do the names and the order of the files, line ends, remarks, blank lines and the
 * width of blank space: they print nowhere. A line break does, since it can part one statement from the next.
 *
 * Of the settings count the words for the sheet and for kinds of part, and the severities, which say what is printed as open. Language and paper
 * do not: they can be chosen for each print, and the sheet says the same.
 */
export function printedContent(printed: Printed, { files, result }: CheckedFiles): string {
  const textOf = (file: string) => files.find(({ uri }) => uri === file)?.text ?? '';
  const declarations = [...linesOf([printed.procedure, printed.job])].flatMap(([file, lines]) =>
    (result.symbols.get(file) ?? [])
      .filter(({ range }) => [...lines].some((line) => range.start.line <= line && line <= range.end.line))
      .map(({ kind, name, range }) => [kind, name, canonical(cut(textOf(file), range))]),
  );
  const { word, kinds } = result.sheet;
  const named = Object.entries(kinds).map((one) => one.join(' '));
  const settings = [word, ...named.sort(), ...[...result.severities].map((one) => one.join(' ')).sort()];
  return JSON.stringify([declarations.map((one) => JSON.stringify(one)).sort(), settings]);
}

/** The lines that all facts of a model were written on, by file. */
function linesOf(model: unknown): Map<string, Set<number>> {
  const lines = new Map<string, Set<number>>();
  const seen = new Set<object>();
  const waiting: unknown[] = [model];
  for (let value = waiting.pop(); value !== undefined; value = waiting.pop()) {
    if (typeof value !== 'object' || value === null || seen.has(value)) continue;
    seen.add(value);
    if (isSource(value)) {
      const ofFile = lines.get(value.file) ?? new Set();
      lines.set(value.file, ofFile.add(value.range.start.line));
    } else waiting.push(...Object.values(value).filter((one) => one !== undefined));
  }
  return lines;
}

function isSource(value: object): value is Source {
  return 'file' in value && 'range' in value;
}

const lineEnd = /\r\n|\n|\r/u;

function cut(text: string, { start, end }: Range): string {
  const lines = text.split(lineEnd).slice(start.line, end.line + 1);
  const last = lines.length - 1;
  return lines
    .map((line, index) => line.slice(index === 0 ? start.character : 0, index === last ? end.character : undefined))
    .join('\n');
}

/** A text without what prints nowhere. Words in quotes are kept as they are. */
export function canonical(text: string): string {
  return text
    .split(lineEnd)
    .map((line) =>
      line.replace(/("[^"]*"?)|\/\/.*|[ \t\u00a0\u202f\ufeff]+/gu, (_, quoted?: string) => quoted ?? ' ').trim(),
    )
    .filter((line) => line !== '')
    .join('\n');
}
