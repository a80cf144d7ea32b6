/** Whether what a hand needs can be read at arm's length, and what it fills in has room. */

import type { Sheet, StepBlock } from '../../language/documents/model.ts';
import { spanText } from '../../language/documents/texts.ts';
import { boxesOf } from './boxes.ts';
import { millimetre, upright } from './layout.ts';
import type { Painted, Run } from './paint.ts';
import { bones } from './words.ts';

/** Points, and millimeters of a box. A browser rounds to its own pixels. */
const least = { any: 8, figure: 10, step: 10, value: 12, line: 0.5, box: 8 };
const rounding = 0.02;

/** Everything that is too small, too thin or in color, in words. */
export function smallnessOf(sheet: Sheet, pages: readonly Painted[]): string[] {
  const runs = pages.flatMap((page) => upright(page.runs));
  return [
    ...runs
      .filter(({ size }) => size < least.any - rounding)
      .map((run) => `${words(run)} has ${run.size.toFixed(1)} pt`),
    // Words of a drawing are upright or are turned.
    ...pages
      .flatMap((page) => page.runs.filter(({ figure }) => figure !== null))
      .filter(({ size }) => size < least.figure - rounding)
      .map((run) => `${words(run)} has ${run.size.toFixed(1)} pt in a drawing`),
    ...pages.flatMap(({ page, lines }) =>
      lines
        .filter(({ width }) => width < least.line - rounding)
        .map(({ width }) => `page ${page}: a line of ${width.toFixed(2)} pt`),
    ),
    ...pages.flatMap(({ page, colours }) =>
      [...colours].filter((colour) => !isGrey(colour)).map((colour) => `page ${page}: the color ${colour}`),
    ),
    ...smallSteps(sheet, runs),
    ...smallBoxes(sheet, pages),
  ];
}

/** `#dedede` */
function isGrey(colour: string): boolean {
  return /^#(..)\1\1$/u.test(colour);
}

/** Sentences and limits, found in order among the runs of the sheet itself. */
function smallSteps(sheet: Sheet, runs: readonly Run[]): string[] {
  // Of a browser's print the head of each page is content: found texts may skip it.
  const index = new TextIndex(runs.filter(({ artifact, figure }) => !artifact && figure === null));
  const complaints: string[] = [];
  const held = (step: StepBlock, what: string, text: string, ok: (run: Run) => boolean) => {
    if (bones(text) === '') return;
    const found = index.next(text);
    if (found === null) complaints.push(`step ${step.number}: the ${what} “${text}” is not found`);
    else if (!found.every(ok)) complaints.push(`step ${step.number}: the ${what} “${text}” is too small, or not bold`);
  };
  for (const step of sheet.blocks.filter((block) => block.kind === 'step')) {
    index.next(step.number);
    held(step, 'sentence', spanText(step.sentence), ({ size }) => size >= least.step - rounding);
    for (const { label, value, also } of step.limits) {
      held(step, 'label', label, ({ size }) => size >= least.step - rounding);
      held(step, 'value', value, ({ size, bold }) => bold && size >= least.value - rounding);
      held(step, 'limit', also, ({ size }) => size >= least.step - rounding);
    }
  }
  return complaints;
}

const headSize = 16;

/** Heads of stages and repairs that are on another page than their first step, in words. */
export function strandedHeads(sheet: Sheet, pages: readonly Painted[]): string[] {
  const index = new TextIndex(
    pages.flatMap((page) => upright(page.runs)).filter(({ artifact, figure }) => !artifact && figure === null),
  );
  const { blocks } = sheet;
  return blocks.flatMap((block, at) => {
    if (block.kind === 'step') index.next(block.number);
    if (block.kind !== 'place') return [];
    // The route says numbers and titles too, in small letters.
    let head = index.next(block.number + block.title);
    while (head !== null && head[0]!.size < headSize) head = index.next(block.number + block.title);
    const first = blocks.slice(at + 1).find(({ kind }) => kind === 'step' || kind === 'place');
    const step = first?.kind === 'step' ? index.next(first.number) : null;
    if (head === null || step === null || head[0]!.page === step[0]!.page) return [];
    return [`${block.number} ${block.title} is on page ${head[0]!.page}, its first step on page ${step[0]!.page}`];
  });
}

/** Finds texts among runs, each after the one before. */
class TextIndex {
  private readonly whole: string;
  private readonly owners: Run[] = [];
  private at = 0;

  constructor(runs: readonly Run[]) {
    let whole = '';
    for (const run of runs) {
      const text = bones(run.text);
      whole += text;
      for (let count = 0; count < text.length; count++) this.owners.push(run);
    }
    this.whole = whole;
  }

  /** The runs of a text; null: it is not there. */
  next(text: string): Run[] | null {
    const wanted = bones(text);
    const found = this.whole.indexOf(wanted, this.at);
    if (found < 0) return null;
    this.at = found + wanted.length;
    return [...new Set(this.owners.slice(found, this.at))];
  }
}

/** The boxes that a sheet promises: one for each unit and thing recorded, for each try, and cells to be filled in. */
export function promisedBoxes(sheet: Sheet): number {
  return sheet.blocks.reduce((sum, block) => {
    if (block.kind === 'table')
      return sum + block.rows.flat().filter(({ fill, text }) => fill === true && text === '').length;
    const grids = block.kind === 'step' || block.kind === 'grid' ? block.grids : [];
    const ways = block.kind === 'step' ? (block.fail?.ways ?? []) : [];
    const tries = ways.flatMap(({ stops, end }) => [
      ...stops.flatMap(({ boxes }) => boxes),
      ...(end === '' ? [] : [end]),
    ]);
    return sum + tries.length + grids.reduce((boxes, { rows, columns }) => boxes + rows.length * columns.length, 0);
  }, 0);
}

function smallBoxes(sheet: Sheet, pages: readonly Painted[]): string[] {
  // A box for a try has its number in the corner.
  const boxes = pages.flatMap(boxesOf).filter(({ text }) => /^\d?$/u.test(text.trim()));
  const high = boxes.filter(({ top, bottom }) => bottom - top >= least.box * millimetre - rounding);
  const promised = promisedBoxes(sheet);
  return high.length < promised
    ? [`${high.length} boxes are ${least.box} mm high, of ${promised} that are to be written in`]
    : [];
}

const words = ({ page, text }: Run) => `page ${page}: “${text}”`;
