/** Results in words: a line for the terminal, a table in Markdown. */
import type { Comparison, Growth, Result } from '../bench.ts';
import { exponentOf } from './exponent.ts';
import { limitsInWords, verdictOf } from './verdict.ts';

export function resultInWords(result: Result): string {
  switch (result.kind) {
    case 'failure':
    case 'skipped':
      return `${result.kind === 'failure' ? '✗' : '?'} ${result.work}\n    not measured: ${result.why}`;
    case 'growth':
      return `${markOf(result)} ${result.work}\n    ${pointsInWords(result)}\n    ${growthInWords(result)}`;
    case 'comparison': {
      const target = limitsInWords(result);
      return [
        `${markOf(result)} ${result.work}`,
        ...result.measured.map(
          ({ name, spread }, index) =>
            `    ${name.padEnd(28)} ${figure(spread.median).padStart(9)} ${result.unit}   p95 ${figure(spread.p95).padStart(9)}   ${index === 0 ? '' : `ratio ${ratioTo(result, name)}`}  (${spread.count})`,
        ),
        ...(target === '' ? [] : [`    target ${target}: ${verdictOf(result)}`]),
      ].join('\n');
    }
  }
}

const markOf = (result: Result) =>
  ({ met: '✓', missed: '✗', 'not measured': '?', 'no target': ' ' })[verdictOf(result)];

/** Three figures. */
const figure = (value: number) =>
  value >= 1000 ? Math.round(value).toLocaleString('en') : String(Number(value.toPrecision(3)));

/** Ours as so many times another. */
function ratioTo({ measured }: Comparison, name: string): string {
  const other = measured.find((one) => one.name === name)!.spread.median;
  return figure(measured[0]!.spread.median / other);
}

const pointsInWords = ({ points, of, unit }: Growth) =>
  `${points.map(({ size, value }) => `${size.toLocaleString('en')}: ${figure(value)}`).join(', ')} (${of}: ${unit})`;

function growthInWords(result: Growth): string {
  if (result.points.length < 2) return 'too few sizes for an exponent';
  const { fitted, last } = exponentOf(result.points);
  const above = Math.max(fitted, last) > 1.15 ? ', above linear' : '';
  return `exponent ${fitted.toFixed(2)}, between the last two sizes ${last.toFixed(2)}${above}; target ≤ ${result.most}: ${verdictOf(result)}`;
}

/** All results as tables: what was compared, and what grows. */
export function markdownOf(results: readonly Result[]): string {
  const compared = results.filter((one) => one.kind === 'comparison');
  const grown = results.filter((one) => one.kind === 'growth');
  const failed = results.filter((one) => one.kind === 'failure' || one.kind === 'skipped');
  const table = (head: readonly string[], rows: readonly (readonly string[])[]) =>
    [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
  const comparisons = compared.map((one) => {
    const { spread } = one.measured[0]!;
    const others = one.measured.slice(1).map(({ name, spread: { median } }) => `${name} ${figure(median)}`);
    const ratios = one.measured.slice(1).map(({ name }) => ratioTo(one, name));
    const verdict = verdictOf(one);
    return [
      one.work,
      `${figure(spread.median)} ${one.unit}`,
      spread.count === 1 ? '' : figure(spread.p95),
      others.join('; '),
      ratios.join('; '),
      limitsInWords(one),
      verdict === 'no target' ? '' : verdict,
    ];
  });
  const growths = grown.map((one) => {
    const { fitted, last } = exponentOf(one.points);
    const measured = one.points.map(({ size, value }) => `${size.toLocaleString('en')}: ${figure(value)}`).join(', ');
    return [
      `${one.work}, by ${one.of}`,
      `${measured} ${one.unit}`,
      fitted.toFixed(2),
      last.toFixed(2),
      `≤ ${one.most}`,
      verdictOf(one),
    ];
  });
  return [
    ...(compared.length === 0
      ? []
      : [table(['work', 'median', 'p95', 'beside it', 'ratio', 'target', ''], comparisons)]),
    ...(grown.length === 0 ? [] : [table(['growth', 'measured', 'exponent', 'last two sizes', 'target', ''], growths)]),
    ...(failed.length === 0 ? [] : [failed.map(({ work, why }) => `- Not measured: ${work}: ${why}.`).join('\n')]),
  ].join('\n\n');
}

const [begin, end] = ['<!-- bench: written by npm run bench -->', '<!-- bench: end -->'];

/** A page with its part between the markers written again. */
export function withTable(page: string, table: string): string {
  const [from, to] = [page.indexOf(begin), page.indexOf(end)];
  if (from < 0 || to < from) throw new Error(`There is no place for the table: ${begin} and ${end} are missing.`);
  return `${page.slice(0, from + begin.length)}\n${table}\n${page.slice(to)}`;
}
