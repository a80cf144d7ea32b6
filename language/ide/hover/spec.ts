/** A spec for all part numbers: as it is printed, with its tool, the accuracy ratio and where it is from. */
import { buildSpecs, type SpecCell } from '../../documents/specs/index.ts';
import type { Reader } from '../../i18n/translate.ts';
import type { Procedure } from '../../model/procedure.ts';
import { formatNumber, formatQuantity, roundTo, type UnitName } from '../../quantities/index.ts';
import { say, type Tell } from '../../say/say.ts';
import { table } from './markdown.ts';

/** Markdown; null: nothing uses the spec. */
export function specMarkdown(procedure: Procedure, name: string, { language, tell }: Reader): string | null {
  const spec = procedure.specs.find((one) => one.name === name);
  if (spec === undefined) return null;
  const lines = [
    spec.source,
    ...procedure.numbers.flatMap(({ values }) => values.flatMap((one) => (one.spec === name ? [one.source] : []))),
  ];
  const isOfSpec = ({ line }: SpecCell) =>
    lines.some(({ file, range }) => file === line.file && range.start.line === line.line);
  const { columns, groups } = buildSpecs(procedure, language);
  const numbers = new Map<string, string[]>();
  for (const { items } of groups)
    for (const { title, figures } of items)
      for (const { what, cells, steps } of figures)
        for (const [index, { number }] of columns.entries()) {
          const cell = cells[index] ?? null;
          if (cell === null || !isOfSpec(cell) || cell.value === '') continue;
          const tool = cell.tool === null ? '' : (cell.tool.number ?? cell.tool.words);
          const limit = [cell.value, cell.also, otherUnits(cell, tell)].filter((text) => text !== '').join(', ');
          const row = [`${title}: ${what}`, limit, tool, cell.ratio ?? '', steps.join(', ')];
          const key = JSON.stringify(row);
          numbers.set(key, [...(numbers.get(key) ?? []), number ?? tell(say`all`)]);
        }
  const rows = [...numbers].map(([row, of]) => [of.join(', '), ...(JSON.parse(row) as string[])]);
  if (rows.length === 0) return null;
  const head = [say`Number`, say`Figure`, say`Limit`, say`Tool`, say`Ratio`, say`Steps`].map(tell);
  return table([head, ...rows.slice(0, mostRows)]);
}

/** Most rows that one hover shows. */
const mostRows = 12;

/** The unit of the other system, and how many decimals a tool in it shows. */
const partners: Readonly<Partial<Record<UnitName, readonly [UnitName, number]>>> = {
  bar: ['psi', 0],
  psi: ['bar', 1],
  N·m: ['lbf·ft', 1],
  lbf·ft: ['N·m', 1],
  mm: ['in', 4],
  in: ['mm', 3],
  N: ['lbf', 1],
  lbf: ['N', 0],
  '°C': ['°F', 0],
  '°F': ['°C', 1],
};

/** What a limit lets through, in the other system, never looser. */
function otherUnits({ low, high }: SpecCell, tell: Tell): string {
  const ends = [low, high].map((end, index) => {
    const [unit, decimals] = (end === null ? undefined : partners[end.unit]) ?? [];
    return end === null || unit === undefined ? null : roundTo(end, unit, decimals!, index === 0 ? 'up' : 'down');
  });
  const [from, to] = ends;
  if (from != null && to != null) return tell(say`${formatNumber(from.number)} to ${formatQuantity(to)}`);
  if (from != null) return tell(say`at least ${formatQuantity(from)}`);
  return to == null ? '' : tell(say`at most ${formatQuantity(to)}`);
}
