import pc from 'picocolors';
import { Workspace } from '../../language/db/workspace.ts';
import { type ImportedResult, missingLines, resultLine, withLines } from '../../language/drafting/imported.ts';
import { fullMessage } from '../../language/model/diagnostic.ts';
import type { Job, Unit } from '../../language/model/job.ts';
import { readQuantity } from '../../language/quantities/read-quantity.ts';
import { listed } from '../../language/say/say.ts';
import { type BenchRow, cell, dayIn, type Mapping, RowError, readMapping, readRows } from './bench-file.ts';
import { closedIn } from './closed.ts';
import { diffOf, type FixedFile, writeFixed } from './fix.ts';
import { findingText, worded } from './messages.ts';
import { note, say, tell } from './say.ts';
import { type CliWorkspace, openQuietly } from './workspace.ts';

export interface ImportOptions {
  /** File that says what is in which column. */
  readonly mapping: string;
  /** Writes; else what would be written is shown. */
  readonly write: boolean;
  readonly workspace: string;
  /** Folder of the records: a closed job takes nothing more. */
  readonly records: string;
}

/**
 * Takes the results of a test bench into their jobs. Exit code: 0 they are written, or shown; 1 a row cannot be taken in,
 * and nothing was written.
 */
export async function importCommand(path: string, options: ImportOptions): Promise<number> {
  const mapping = readMapping(options.mapping);
  const rows = readRows(path, mapping);
  const workspace = await openQuietly([options.workspace]);
  const closed = await closedIn(options.records);
  const wrong: string[] = [];
  const units = new Map<Unit, { readonly job: Job; readonly lines: string[] }>();
  for (const row of rows) {
    try {
      const { job, unit, results } = readRow(row, mapping, workspace);
      if (closed.has(job.name))
        throw new RowError(worded`Job ${job.name} is closed. What is written into it now is on no certificate.`);
      const { lines } = units.get(unit) ?? { lines: [] };
      units.set(unit, { job, lines: [...lines, ...results.map(resultLine)] });
    } catch (error) {
      if (!(error instanceof RowError)) throw error;
      wrong.push(`${worded`line ${row.line}`}: ${error.message}`);
    }
  }
  const { changed, count } = inFiles(units, workspace);
  if (wrong.length === 0) wrong.push(...newErrors(changed, workspace));
  if (wrong.length > 0) {
    tell(`${pc.red(worded`Nothing was taken in from ${path}.`)}\n${wrong.map((line) => `  ${line}\n`).join('')}`);
    return 1;
  }
  const results = count === 1 ? worded`1 result` : worded`${count} results`;
  if (count === 0) {
    say(`${rows.length === 0 ? worded`There is no row in ${path}.` : worded`All of it is in the jobs already.`}\n`);
    return 0;
  }
  if (!options.write) {
    say(diffOf(changed));
    note(worded`This is what would be written: ${results}. With --write it is.`);
    return 0;
  }
  await writeFixed(changed);
  say(changed.map(({ file, count: own }) => `${pc.green(worded`written`)}  ${file}: ${own}\n`).join(''));
  return 0;
}

interface ReadRow {
  readonly job: Job;
  readonly unit: Unit;
  readonly results: readonly ImportedResult[];
}

function readRow(row: BenchRow, mapping: Mapping, { result }: CliWorkspace): ReadRow {
  if (row.isTooLong)
    throw new RowError(
      worded`The row has more cells than there are heads, so what is in which column is not known. A separator inside a cell belongs in quotes.`,
    );
  const name = cell(row, mapping.job);
  const job = name === null ? null : result.jobOf(name);
  if (job === null)
    throw new RowError(name === null ? worded`No job is named.` : worded`There is no job ${name} here.`);
  const place = cell(row, mapping.unit);
  const serial = cell(row, mapping.serial);
  const found = job.units.filter(
    (unit) => (place === null || unit.place === place) && (serial === null || unit.serial === serial),
  );
  const [unit, second] = found;
  const called = [
    place === null ? [] : [worded`place ${place}`],
    serial === null ? [] : [worded`serial ${serial}`],
  ].flat();
  if (unit === undefined || second !== undefined || called.length === 0)
    throw new RowError(
      called.length === 0
        ? worded`Neither place nor serial says which unit this is.`
        : unit === undefined
          ? worded`Job ${job.name} has no unit with ${listed(called)}.`
          : worded`Job ${job.name} has more than one unit with ${listed(called)}.`,
    );
  const by = plain(cell(row, mapping.by));
  const day = cell(row, mapping.on);
  const on = day === null ? null : dayIn(day, mapping);
  const results = mapping.results.flatMap(({ test, point, place: at, value, unit: measure, tool, asFound }) => {
    const text = cell(row, value);
    const of = cell(row, test);
    if (text === null || of === null) return [];
    const measured = cell(row, measure);
    const names = { test: named(of), point: named(cell(row, point)), tool: named(cell(row, tool)) };
    const where = cell(row, at);
    if (where !== null && !/^[\p{L}][\p{L}\d_-]*(?: \d+)?$|^\d+$/u.test(where))
      throw new RowError(worded`“${where}” is no place.`);
    return [
      {
        asFound,
        ...names,
        test: names.test!,
        place: where,
        value: measured === null ? (plain(text) ?? '') : figure(text, measured, mapping),
        unit: measured,
        by,
        on,
      },
    ];
  });
  return { job, unit, results };
}

/** A figure as the language writes it. */
function figure(text: string, unit: string, { decimal }: Mapping): string {
  const number = decimal === ',' ? text.replace(',', '.') : text;
  const read = /^[-−]?\d+(?:\.\d+)?$/u.test(number) ? readQuantity(`${number.replace(/^[-−]/u, '')} ${unit}`) : null;
  if (read === null || !('quantity' in read))
    throw new RowError(
      worded`“${text} ${unit}” is no figure with a unit. The mapping says under decimal which sign it has.`,
    );
  return number;
}

function named<T extends string | null>(name: T): T {
  if (name !== null && !/^\p{L}[\p{L}\d_-]*$/u.test(name))
    throw new RowError(worded`“${name}” is no name of the job. Say under words what it is called there.`);
  return name;
}

function plain(text: string | null): string | null {
  if (text !== null && (/["\r\n]/u.test(text) || text.length > 200))
    throw new RowError(worded`“${text}” does not fit into quotes: it has quotes in it, or is too long.`);
  return text;
}

/** What becomes of the files, without what is in them already. */
function inFiles(
  units: ReadonlyMap<Unit, { readonly job: Job; readonly lines: readonly string[] }>,
  { files, result }: CliWorkspace,
): { readonly changed: FixedFile[]; readonly count: number } {
  const changed = new Map<string, FixedFile>();
  // From the last one up, so that those above stay where they are.
  const fromBelow = [...units].sort(([one], [other]) => other.source.range.start.line - one.source.range.start.line);
  for (const [unit, { lines }] of fromBelow) {
    const { file, range } = unit.source;
    const text = changed.get(file)?.after ?? files.find(({ uri }) => uri === file)?.text ?? '';
    const whole = (result.symbols.get(file) ?? [])
      .flatMap(({ children }) => children)
      .find(({ kind, nameRange }) => kind === 'unit' && nameRange.start.line === range.start.line);
    if (whole === undefined) continue;
    const { start, end } = whole.range;
    const own = text
      .split('\n')
      .slice(start.line, end.line + 1)
      .join('\n');
    const more = missingLines(own, lines);
    if (more.length === 0) continue;
    changed.set(file, {
      file,
      before: files.find(({ uri }) => uri === file)?.text ?? '',
      after: withLines(text, whole.range, more),
      count: (changed.get(file)?.count ?? 0) + more.length,
    });
  }
  const all = [...changed.values()];
  return { changed: all, count: all.reduce((sum, one) => sum + one.count, 0) };
}

/** What would be wrong once it is written, and is not now: a result is judged as if it had been typed. */
function newErrors(changed: readonly FixedFile[], { files, settings, result }: CliWorkspace): string[] {
  if (changed.length === 0) return [];
  const after = new Workspace().open(
    files.map((file) => ({ uri: file.uri, text: changed.find((one) => one.file === file.uri)?.after ?? file.text })),
    settings,
  );
  return changed.flatMap(({ file }) => {
    const errors = (of: typeof result) => of.findingsIn(file).filter(({ severity }) => severity === 'error');
    const before = new Set(errors(result).map(fullMessage));
    return errors(after).flatMap((one) => (before.has(fullMessage(one)) ? [] : [`${file}: ${findingText(one)}`]));
  });
}
