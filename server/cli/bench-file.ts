/** The file of a test bench, and the mapping that says what is in it: both are checked where they come in. */
import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import * as z from 'zod';
import { whyUnread } from '../host/files/read-text.ts';
import { worded } from './messages.ts';
import { UsageError } from './usage-error.ts';

/** `"Gauge"`: the column of that name. `is`: the same in each row. `words`: what the bench calls it → what the job calls it. */
const field = z.union([
  z.string().min(1),
  z.strictObject({ column: z.string().min(1), words: z.record(z.string(), z.string()).optional() }),
  z.strictObject({ is: z.string() }),
]);

const days = {
  'year-month-day': /^(?<year>\d{4})-(?<month>\d\d)-(?<day>\d\d)/u,
  'day.month.year': /^(?<day>\d{1,2})\.(?<month>\d{1,2})\.(?<year>\d{4})/u,
  'month/day/year': /^(?<month>\d{1,2})\/(?<day>\d{1,2})\/(?<year>\d{4})/u,
} as const;

const mappingSchema = z
  .strictObject({
    separator: z.string().length(1).default(','),
    decimal: z.enum(['.', ',']).default('.'),
    days: z.enum(['year-month-day', 'day.month.year', 'month/day/year']).default('year-month-day'),
    job: field,
    /** Place in the set. */
    unit: field.optional(),
    serial: field.optional(),
    by: field.optional(),
    on: field.optional(),
    results: z
      .array(
        z.strictObject({
          test: field,
          point: field.optional(),
          place: field.optional(),
          value: field,
          /** Of the value; none: it is pass, fail, or what a `record` takes. */
          unit: field.optional(),
          tool: field.optional(),
          asFound: z.boolean().default(false),
        }),
      )
      .min(1),
  })
  .refine(({ unit, serial }) => unit !== undefined || serial !== undefined, {
    path: ['unit'],
    message: 'unit',
  });

export type Mapping = z.output<typeof mappingSchema>;
type Field = z.output<typeof field>;

/** A row of the file, with the line that it begins on. */
export interface BenchRow {
  readonly line: number;
  readonly cells: Readonly<Record<string, string>>;
  /** It has more cells than there are heads. */
  readonly isTooLong?: boolean;
}

/** Throws a UsageError. */
export function readMapping(path: string): Mapping {
  let value: unknown;
  try {
    value = JSON.parse(read(path));
  } catch (error) {
    if (error instanceof UsageError) throw error;
    throw new UsageError(worded`${path} is no JSON: ${(error as Error).message}`);
  }
  const mapping = mappingSchema.safeParse(value);
  if (mapping.success) return mapping.data;
  const [issue] = mapping.error.issues;
  if (issue?.code === 'custom')
    throw new UsageError(
      worded`${path} does not say which unit a row is of: give unit (its place in the set) or serial.`,
    );
  const at = issue?.path.length ? `${issue.path.join('.')}: ` : '';
  throw new UsageError(
    worded`${path} cannot be used: ${`${at}${issue?.message}`}. npx handtight help import has an example.`,
  );
}

const cellSchema = z.union([z.string(), z.number(), z.boolean(), z.null()]);
const objectSchema = z.record(z.string(), cellSchema);

/** The rows of a CSV or NDJSON file. Throws a UsageError that names the line. */
export function readRows(path: string, mapping: Mapping): BenchRow[] {
  const text = read(path).replace(/^\uFEFF/u, '');
  return /\.(?:ndjson|jsonl)$/iu.test(path) ? ndjsonRows(path, text) : csvRows(path, text, mapping);
}

function csvRows(path: string, text: string, mapping: Mapping): BenchRow[] {
  const [first, ...rows] = csvRecords(path, text, mapping.separator);
  if (first === undefined) return [];
  const heads = first.record;
  for (const column of columnsOf(mapping)) {
    const count = heads.filter((head) => head === column).length;
    if (count === 0)
      throw new UsageError(
        worded`${path} has no column “${column}”. It has: ${heads.join(', ')}. Write in the mapping what the column is called here, and the separator if that is another.`,
      );
    if (count > 1)
      throw new UsageError(
        worded`${path} has more than one column “${column}”, so nobody knows which is meant. Give each a head of its own.`,
      );
  }
  return rows.map(({ info, record }) => ({
    line: info.lines,
    cells: Object.fromEntries(record.slice(0, heads.length).map((text, index) => [heads[index]!, text])),
    isTooLong: record.length > heads.length,
  }));
}

interface CsvRecord {
  readonly info: { readonly lines: number };
  readonly record: readonly string[];
}

function csvRecords(path: string, text: string, delimiter: string): readonly CsvRecord[] {
  const form = { info: true, skip_empty_lines: true, trim: true, relax_column_count: true, delimiter } as const;
  try {
    return parse(text, form) as unknown as CsvRecord[];
  } catch (error) {
    throw new UsageError(worded`${path} cannot be read as CSV: ${(error as Error).message}`);
  }
}

/** The columns that a mapping takes something from. */
function columnsOf({ job, unit, serial, by, on, results }: Mapping): string[] {
  const fields = [job, unit, serial, by, on, ...results.flatMap((one) => Object.values(one))];
  const names = fields.flatMap((of) => {
    if (typeof of === 'string') return of;
    return typeof of === 'object' && 'column' in of ? of.column : [];
  });
  return [...new Set(names)];
}

function ndjsonRows(path: string, text: string): BenchRow[] {
  return text.split(/\r?\n/u).flatMap((line, index) => {
    if (line.trim() === '') return [];
    try {
      const cells = objectSchema.parse(JSON.parse(line));
      const texts = Object.entries(cells).map(([name, value]) => [name, value === null ? '' : String(value).trim()]);
      return [{ line: index + 1, cells: Object.fromEntries(texts) as Record<string, string> }];
    } catch {
      throw new UsageError(
        worded`${path}, line ${index + 1}: this is no object of JSON with plain figures and words in it.`,
      );
    }
  });
}

function read(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    throw new UsageError(worded`${path} cannot be read: ${whyUnread(error)}`);
  }
}

/** What a row says in a field, in the words of the job; null: nothing. Throws a string that says what is wrong. */
export function cell({ cells }: BenchRow, of: Field | undefined): string | null {
  if (of === undefined) return null;
  if (typeof of === 'object' && 'is' in of) return of.is;
  const column = typeof of === 'string' ? of : of.column;
  const text = cells[column];
  if (text === undefined)
    throw new RowError(
      worded`The row has nothing in column “${column}”. It has: ${Object.keys(cells).join(', ')}. Complete it in the file, or delete the row.`,
    );
  const words = typeof of === 'string' ? undefined : of.words;
  return text === '' ? null : (words?.[text] ?? text);
}

/** What is wrong with a row. */
export class RowError extends Error {}

/** An ISO date. Throws a RowError. */
export function dayIn(text: string, { days: form }: Mapping): string {
  const { year, month, day } = days[form].exec(text)?.groups ?? {};
  if (year === undefined || month === undefined || day === undefined)
    throw new RowError(worded`“${text}” is no day as ${form}. The mapping says under days how they are written.`);
  return `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
}
