/** Lines that are alike, one below the other, in columns: specs, part numbers' values, parts, stations, tools. */
import { kindWords } from '../../syntax/keywords.ts';
import type { Token } from '../../syntax/token.ts';
import type { LaidLine } from './format.ts';
import { isWide, joined } from './gaps.ts';

/** What lines are lined up with each other, by their first word. */
const groups: Readonly<Record<string, string>> = {
  spec: 'spec',
  part: 'part',
  station: 'station',
  wrench: 'asset',
  gauge: 'asset',
  tool: 'asset',
  fluid: 'fluid',
  stock: 'stock',
  face: 'face',
  joint: 'joint',
  test: 'test',
};

const gap = '  ';
const sourceGap = '   ';

/** Lines with those that belong to a table in its columns. */
export function withColumns(lines: readonly LaidLine[]): LaidLine[] {
  const laid: LaidLine[] = [];
  for (let start = 0; start < lines.length; ) {
    const group = groupOf(lines[start]!);
    let end = start + 1;
    while (group !== null && end < lines.length && (groupOf(lines[end]!) === group || lines[end]!.goesOn)) end++;
    const rows = lines.slice(start, end);
    const heads = rows.filter(({ goesOn }) => !goesOn);
    const inColumns = heads.length > 1 ? aligned(heads, group!) : heads;
    laid.push(...rows.map((row) => inColumns[heads.indexOf(row)] ?? row));
    start = end;
  }
  return laid;
}

/** Null: the line is in no table. */
function groupOf({ tokens, isWhole, goesOn, block, depth }: LaidLine): string | null {
  const [first] = tokens;
  if (
    first === undefined ||
    goesOn ||
    !(isWhole || first.image === 'test') ||
    tokens.some(({ image }) => image === '{' || image === '}')
  )
    return null;
  const group = block === 'number' ? 'value' : (groups[first.image] ?? null);
  return group === null || depth === 0 ? null : `${group} ${depth}`;
}

function aligned(rows: readonly LaidLine[], group: string): LaidLine[] {
  const split = rows.map((row) => cellsOf(row, group));
  const hasTitles = split.some(({ title }) => title !== '');
  const middles = Math.max(...split.map(({ middle }) => middle.length));
  const cells = split.map(({ head, title, middle, source }) => [
    head,
    ...(hasTitles ? [title] : []),
    ...middle,
    ...Array<string>(middles - middle.length).fill(''),
    source,
  ]);
  // What ends its line may be longer than its column.
  const isFollowed = (row: readonly string[], column: number) => row.slice(column + 1).some((cell) => cell !== '');
  const widths = cells[0]!.map((_, column) =>
    Math.max(0, ...cells.map((row) => (isFollowed(row, column) ? [...row[column]!].length : 0))),
  );
  const isUsed = cells[0]!.map((_, column) => cells.some((row) => row[column] !== ''));
  return rows.map((row, index) => ({
    ...row,
    code: cells[index]!.map((cell, column, all) => {
      const width = widths[column]!;
      const before = column === 0 || !isUsed[column] ? '' : column === all.length - 1 ? sourceGap : gap;
      return before + cell + ' '.repeat(Math.max(0, width - [...cell].length));
    })
      .join('')
      .trimEnd(),
  }));
}

interface Cells {
  readonly head: string;
  readonly title: string;
  /** What is set off from the rest on purpose is a column of its own. */
  readonly middle: readonly string[];
  readonly source: string;
}

function cellsOf({ tokens, before }: LaidLine, group: string): Cells {
  const isValue = group.startsWith('value');
  const isSpec = group.startsWith('spec');
  const isTest = group.startsWith('test');
  const written = (one: Token, other: Token) => before.slice(one.endColumn, other.column);
  const text = (of: readonly Token[]) => joined(of, isTest ? written : () => ' ', before);
  const head = tokens.slice(0, isValue ? 1 : 2);
  const rest = tokens.slice(head.length);
  const title = rest[0]?.name === 'STRING' ? rest.slice(0, 1) : [];
  const body = rest.slice(title.length);
  const at = body.findLastIndex(({ image }) => image === 'source');
  const cut = at < 0 || (!isValue && !isSpec) ? body.length : at;
  const middle: Token[][] = [];
  for (const [index, token] of body.slice(0, cut).entries()) {
    const last = body[index - 1];
    const isKind = isSpec && index === 0 && kindWords.includes(token.image);
    const isBehindKind = index === 1 && middle.length === 1 && isSpec && kindWords.includes(last!.image);
    const isSetOff = !isTest && last !== undefined && isWide(written(last, token)) && !/^[,;)]$/u.test(token.image);
    if (middle.length === 0 || isKind || isBehindKind || isSetOff) middle.push([token]);
    else middle.at(-1)!.push(token);
  }
  return { head: text(head), title: text(title), middle: middle.map(text), source: text(body.slice(cut)) };
}
