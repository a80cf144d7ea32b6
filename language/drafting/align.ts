/** Lines whose cells begin in the same columns, two blanks apart. */
export function alignedColumns(rows: readonly (readonly string[])[]): string[] {
  const widths: number[] = [];
  for (const row of rows)
    row.forEach((cell, index) => {
      widths[index] = Math.max(widths[index] ?? 0, cell.length);
    });
  return rows.map((row) =>
    row.map((cell, index) => (index === row.length - 1 ? cell : cell.padEnd(widths[index]!))).join('  '),
  );
}
