import type { Block, Paper, StepBlock } from '../model.ts';
import { blockTexts, stepTexts } from '../texts.ts';

/** What goes on a page, as it is reckoned below: more than is true of each block alone, in type a little smaller where that helps. */
const page: Record<Paper, number> = { a4: 345, letter: 330 };

/** About how high it is set, on the high side: enough to know what goes on one page. */
function heightOf(block: Block): number {
  const lines = (texts: readonly string[], letters: number) =>
    Math.ceil(texts.reduce((sum, text) => sum + text.length + 2, 0) / letters);
  const tables = (lookups: StepBlock['lookups']) =>
    10 * lookups.length +
    lookups.reduce((sum, { besides = [] }) => sum + 4 * besides.length, 0) +
    4 * lookups.filter(({ title }) => title !== '').length;
  switch (block.kind) {
    case 'place':
      return (
        9 +
        4.2 * lines([...block.texts, ...block.warnings.map(({ text }) => text)], 100) +
        (block.danger === null ? 0 : 13)
      );
    case 'step':
      return (
        2 +
        4.2 * lines(stepTexts({ ...block, lookups: [], tables: [], limits: [] }), 92) +
        block.tables.reduce((sum, { rows }) => sum + 12 + 8.5 * rows.length, 0) +
        6.5 * (block.limits.length > 0 ? 1 : 0) +
        tables(block.lookups.slice(0, Math.ceil(block.lookups.length / 2)))
      );
    case 'repairs': {
      // As high as its highest column.
      const shares = block.columns.reduce((sum, { share }) => sum + share, 0);
      const columns = block.columns.map(({ share, parts }) =>
        parts.reduce(
          (sum, { title, steps }) =>
            sum +
            (title === '' ? 0 : 1.2) +
            steps.reduce(
              (all, { step }) =>
                all +
                lines(stepTexts({ ...step, lookups: [], rows: [], limits: [], close: null }), (102 * share) / shares) +
                0.3 +
                step.limits.length * 1.4,
              0,
            ),
          0,
        ),
      );
      return 18 + 3.9 * Math.max(...columns) + tables(block.lookups);
    }
    case 'log': {
      const count = block.units.reduce((sum, { lines: list }) => sum + list.length, 0);
      const under = [...block.advice, ...block.fails].reduce(
        (sum, { label, text }) => sum + lines([label, text], 95),
        1,
      );
      // Its lines are as high as they are: in what the others are reckoned by, a quarter more.
      return 36 + (block.large ? 12.8 : 10.8) * count + 4.2 * under;
    }
    default:
      return 4.2 * lines(blockTexts(block), 95);
  }
}

/** How many of the last blocks do not go on so many pages with those before them. */
export function over(paper: Paper, before: readonly Block[], last: readonly Block[], pages = 1): number {
  let height = before.reduce((sum, block) => sum + heightOf(block), 0);
  const fit = last.findIndex((block) => {
    height += heightOf(block);
    return height > pages * page[paper];
  });
  return fit < 0 ? 0 : last.length - fit;
}
