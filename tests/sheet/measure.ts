/** What a sheet costs the bench: pages, words, boxes, pages turned. Printed by `npm run sheets -- --measure`. */
import type { Sheet, StepBlock } from '../../language/documents/model.ts';
import { blockTexts } from '../../language/documents/texts.ts';
import { pdfOf } from '../../server/host/print/pdf.ts';
import { upright } from './layout.ts';
import { paintedPages } from './paint.ts';
import { libraryPrints, papers } from './prints.ts';
import { promisedBoxes } from './sizes.ts';

export interface Measures {
  readonly pages: number;
  /** Share of the words that warn of something, in percent. */
  readonly cautions: number;
  /** Boxes that are printed, and how many of them are empty. */
  readonly boxes: number;
  readonly toFill: number;
  /** Pages that are turned for one repair of a failed test, from the test to the repair, the log and back. */
  readonly turns: number;
  /** Points. */
  readonly smallest: number;
}

/** Measures of a sheet as it is printed. */
export async function measuresOf(sheet: Sheet): Promise<Measures> {
  const pages = await paintedPages(pdfOf([sheet]).bytes);
  const words = (texts: readonly string[]) =>
    texts
      .join(' ')
      .split(/\s+/u)
      .filter((word) => word !== '').length;
  const all = words(sheet.blocks.flatMap(blockTexts));
  const warning = words(sheet.blocks.flatMap(cautionTexts));
  const { boxes, cells } = promisedBoxes(sheet);
  const toFill = boxes + cells;
  const sizes = pages.flatMap((page) => upright(page.runs).map(({ size }) => size));
  return {
    pages: pages.length,
    cautions: Math.round((100 * warning) / all),
    boxes: toFill + filled(sheet),
    toFill,
    turns: turnsOf(
      sheet,
      pages.map(({ runs }) => runs.map(({ text }) => text).join('')),
    ),
    smallest: Math.min(...sizes),
  };
}

/** What warns: the messages of safety page, stages and steps, and first aid; rules of the shop warn of nothing. */
function cautionTexts(block: Sheet['blocks'][number]): string[] {
  const own = (step: StepBlock) => step.cautions.flatMap(({ label, text }) => [label, text]);
  switch (block.kind) {
    case 'safety':
      return [block.firstAid ?? '', ...block.rows.flatMap(({ label, text, steps }) => [label, text, steps])];
    case 'place':
      return [
        ...(block.danger === null ? [] : [block.danger.label, block.danger.text]),
        ...block.warnings.flatMap(({ label, text }) => [label, text]),
      ];
    case 'step':
      return own(block);
    case 'repairs':
      return [
        ...block.warnings.map(({ text }) => text),
        ...block.columns.flatMap(({ parts }) => parts.flatMap(({ steps }) => steps.flatMap(({ step }) => own(step)))),
      ];
    default:
      return [];
  }
}

/** Boxes in which something known is. */
function filled({ blocks }: Sheet): number {
  const full = (texts: readonly string[]) => texts.filter((text) => text !== '').length;
  return blocks.reduce((sum, block) => {
    if (block.kind === 'step') return sum + block.rows.reduce((all, { boxes }) => all + full(boxes), 0);
    if (block.kind !== 'log') return sum;
    return (
      sum + block.units.reduce((all, { lines }) => all + lines.reduce((line, { cells }) => line + full(cells), 0), 0)
    );
  }, 0);
}

/**
 * Two pages lie open: the even one, and the next. From a test to the repair that chooses a shim or turns a screw for it (to any
 * repair, where none does), to the log, and back to the test: the most that any of them takes.
 */
function turnsOf({ blocks }: Sheet, pages: readonly string[]): number {
  const spreadOf = (text: string) => {
    const at = pages.findIndex((page) => page.replace(/\s/gu, '').includes(text.replace(/\s/gu, '')));
    return at < 0 ? null : Math.floor((at + 1) / 2);
  };
  const repairs = blocks.filter((block) => block.kind === 'repairs');
  const sets = (number: string) =>
    repairs.some(({ columns }) =>
      columns.some(({ parts }) =>
        parts.some(({ steps }) =>
          steps.some(
            ({ step }) => (step.verb === 'choose' || step.verb === 'set') && step.number.startsWith(`${number}.`),
          ),
        ),
      ),
    );
  const ways = blocks.flatMap((test) =>
    test.kind !== 'step' || !test.logged || test.fail === null
      ? []
      : test.fail.ways
          .flatMap(({ stops }) => stops)
          .flatMap(({ number }) => {
            // Not every repair is of a test: others are beside the check that asks for them.
            const head = repairs.flatMap((one) => one.repairs).find((one) => one.number === number);
            // Its log is the next.
            const log = blocks.slice(blocks.indexOf(test)).find((block) => block.kind === 'log');
            return head === undefined || log === undefined ? [] : [{ test, head, log }];
          }),
  );
  const setting = ways.filter(({ head }) => sets(head.number));
  const turns = (setting.length > 0 ? setting : ways).map(({ test, head, log }) => {
    const sentence = test.sentence.map(({ text }) => text).join('');
    const way = [spreadOf(sentence), spreadOf(`${head.number} ${head.title}`), spreadOf(log.title), spreadOf(sentence)];
    const known = way.filter((one) => one !== null);
    return known.slice(1).reduce((sum, one, at) => sum + Math.abs(one - known[at]!), 0);
  });
  return Math.max(0, ...turns);
}

/** A row for each procedure and job of the library, in each form: a table in Markdown. Pages are those of A4 and of Letter. */
export async function measureLibrary(): Promise<string[]> {
  const rows: string[] = [
    '| sheet | form | pages, A4 and Letter | words of caution | boxes printed | to fill | pages turned for one re-shim | smallest type |',
    '|---|---|---|---|---|---|---|---|',
  ];
  for (const form of ['card', 'record', 'instruction'] as const) {
    const [a4, letter] = papers.map((paper) => libraryPrints(paper, form));
    for (const [at, { procedure, options, sheet }] of a4!.entries()) {
      // An instruction is that of the procedure, whatever job it is printed for.
      if (form === 'instruction' && options.job !== null) continue;
      const [one, other] = [await measuresOf(sheet), await measuresOf(letter![at]!.sheet)];
      const name = options.job === null ? `\`${procedure.name}\`, blank` : `job ${options.job.name}`;
      const most = (of: 'cautions' | 'turns') => Math.max(one[of], other[of]);
      const figures = [
        `${one.pages}, ${other.pages}`,
        `${most('cautions')} %`,
        one.boxes,
        one.toFill,
        // Nothing is repaired by what is on the wall alone.
        form === 'card' ? most('turns') : '',
        `${Math.min(one.smallest, other.smallest).toFixed(1)} pt`,
      ];
      rows.push(`| ${[form === 'instruction' ? `\`${procedure.name}\`` : name, form, ...figures].join(' | ')} |`);
    }
  }
  return rows;
}
