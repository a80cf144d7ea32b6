/** Answers as a table for people, as CSV (RFC 4180) and as NDJSON for programs. */
import stringWidth from 'string-width';
import type { RowFormat } from './row-formats.ts';
import { say, sayData } from './say.ts';
import { visible, visibleJson } from './visible.ts';

type Cell = string | number | null | undefined;

export interface Column<Row> {
  /** Key in CSV and NDJSON. */
  readonly key: string;
  /** Head in the table; null: it is for programs only. */
  readonly head: string | null;
  readonly value: (row: Row) => Cell;
  /** Of the table, where it differs. */
  readonly shown?: (row: Row) => Cell;
}

export function sayRows<Row>(rows: readonly Row[], columns: readonly Column<Row>[], format: RowFormat): void {
  switch (format) {
    case 'csv':
      sayData(
        [columns.map(({ key }) => key), ...rows.map((row) => columns.map(({ value }) => value(row)))]
          .map((cells) => `${cells.map(csvCell).join(',')}\r\n`)
          .join(''),
      );
      return;
    case 'ndjson':
      for (const row of rows)
        sayData(`${visibleJson(Object.fromEntries(columns.map(({ key, value }) => [key, value(row) ?? null])), 0)}\n`);
      return;
    case 'text':
      say(
        table(
          rows,
          columns.filter(({ head }) => head !== null),
        ),
      );
  }
}

/** A cell that a spreadsheet would take for a formula begins with a quote, as OWASP advises (from memory). */
function csvCell(cell: Cell): string {
  const text = visible(String(cell ?? ''));
  const safe = typeof cell === 'string' && /^[=+\-@\t\r]/u.test(text) ? `'${text}` : text;
  return /[",\r\n]/u.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

function table<Row>(rows: readonly Row[], columns: readonly Column<Row>[]): string {
  const lines = [
    columns.map(({ head }) => head ?? ''),
    ...rows.map((row) => columns.map(({ value, shown }) => String((shown ?? value)(row) ?? ''))),
  ];
  const widths = columns.map((_, index) => Math.max(...lines.map((line) => stringWidth(line[index] ?? ''))));
  return lines
    .map(
      (line) =>
        `${line
          .map((cell, index) => cell + ' '.repeat(widths[index]! - stringWidth(cell)))
          .join('  ')
          .trimEnd()}\n`,
    )
    .join('');
}
