/** All that a sheet is made from, as a text: a hash of it names the content that was printed. */
import type { Job } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Range, Source } from '../model/source.ts';
import type { DeclaredSymbol } from '../semantics/symbols.ts';
import { toolsIn } from './issued/content.ts';
import { isIssuedFile } from './issued/format.ts';
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
export function printedContent(printed: Printed, checked: CheckedFiles): string {
  const { files, result } = checked;
  const textOf = (uri: string) => files.find((file) => file.uri === uri)?.text ?? '';
  const declarations = printedDeclarations(printed, checked).map(({ file, symbol }) => {
    const text = textOf(file);
    // Of the shop of today an issued revision has the tools alone.
    const isToolsAlone = isIssuedFile(printed.procedure.source.file) && symbol.kind === 'shop' && !isIssuedFile(file);
    const parts = isToolsAlone ? toolsIn(symbol) : [symbol];
    return JSON.stringify([symbol.kind, symbol.name, canonical(parts.map(({ range }) => cut(text, range)).join('\n'))]);
  });
  return JSON.stringify([declarations.sort(), settingsOf(printed, result)]);
}

/** What of the settings counts: those of the day of its issue, where a job is judged by an issued revision. */
function settingsOf({ job }: Printed, { judgedBy, sheet, severities }: CheckResult): readonly (string | null)[] {
  const issued = job === null ? null : judgedBy(job.name);
  const { word, kinds } = issued?.settings ?? sheet;
  const named = Object.entries(kinds).map((one) => one.join(' '));
  return [
    word,
    ...named.sort(),
    ...[...(issued?.settings.severities ?? severities)].map((one) => one.join(' ')).sort(),
  ];
}

/** A declaration where it is written. */
export interface WrittenDeclaration {
  readonly file: string;
  readonly symbol: DeclaredSymbol;
}

/** The declarations that a sheet is made from. */
function printedDeclarations(
  printed: Printed,
  { result }: Pick<CheckedFiles, 'result'>,
): readonly WrittenDeclaration[] {
  return [...linesOf([printed.procedure, printed.job])].flatMap(([file, lines]) =>
    (result.symbols.get(file) ?? [])
      .filter(({ range }) => [...lines].some((line) => range.start.line <= line && line <= range.end.line))
      .map((symbol) => ({ file, symbol })),
  );
}

/** The lines that all facts of a model were written on, by file. */
function linesOf(model: unknown): Map<string, Set<number>> {
  const lines = new Map<string, Set<number>>();
  for (const { file, range } of sourcesOf(model)) {
    const ofFile = lines.get(file) ?? new Set();
    lines.set(file, ofFile.add(range.start.line));
  }
  return lines;
}

/** Where all facts of a model were written. */
export function* sourcesOf(model: unknown): Generator<Source> {
  const seen = new Set<object>();
  const waiting: unknown[] = [model];
  for (let value = waiting.pop(); value !== undefined; value = waiting.pop()) {
    if (typeof value !== 'object' || value === null || seen.has(value)) continue;
    seen.add(value);
    if (isSource(value)) yield value;
    else waiting.push(...Object.values(value).filter((one) => one !== undefined));
  }
}

function isSource(value: object): value is Source {
  return 'file' in value && 'range' in value;
}

const lineEnd = /\r\n|\n|\r/u;

export function cut(text: string, { start, end }: Range): string {
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
