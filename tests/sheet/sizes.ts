/** Whether what a hand needs can be read at arm's length, and what it fills in has room. */

import type { BoxRow, RepairsBlock, Sheet, SignBoxes, StepBlock, TableBlock } from '../../language/documents/model.ts';
import { spanText } from '../../language/i18n/message.ts';
import { boxesOf } from './boxes.ts';
import { millimetre, upright } from './layout.ts';
import type { Painted, Run } from './paint.ts';
import { bones } from './words.ts';

/** Points, and millimeters of a box. A browser rounds to its own pixels. */
const least = { any: 9, figure: 10, step: 9.25, value: 15, sentence: 12, line: 0.5, box: 8, cell: 5.5 };
/** A limit that is a sentence has so many letters. */
const sentence = 36;
const rounding = 0.02;

/** Everything that is too small, too thin or in color, in words. */
export function smallnessOf(sheet: Sheet, pages: readonly Painted[]): string[] {
  const runs = pages.flatMap((page) => upright(page.runs));
  return [
    ...runs
      .filter(({ size }) => size < least.any - rounding)
      .map((run) => `${words(run)} has ${run.size.toFixed(1)} pt`),
    // Words of a drawing are upright or are turned. A triangle with a name is a figure in a line of words.
    ...pages
      .flatMap((page) => page.runs.filter(({ figure, text }) => figure !== null && text.trim() !== '⚠'))
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
    // A browser paints the number of a step with tables, which floats beside them, before the rest of the page.
    if (step.tables.length === 0) index.next(step.number);
    held(step, 'sentence', spanText(step.sentence), ({ size }) => size >= least.step - rounding);
    for (const { label, value, also } of step.limits) {
      const large = [...value].length > sentence ? least.sentence : least.value;
      // With its label, which may be over the boxes too; the figure is the largest of it.
      const found = index.next(label + value);
      const figure =
        found?.filter(({ text }) => bones(value).includes(bones(text)) && bones(text) !== bones(label)) ?? [];
      const readable = found?.every(({ size }) => size >= least.step - rounding) === true;
      if (found === null) complaints.push(`step ${step.number}: the value “${value}” is not found`);
      else if (!readable || !figure.every(({ size, bold }) => bold && size >= large - rounding))
        complaints.push(`step ${step.number}: the value “${value}” is too small, or not bold`);
      held(step, 'limit', also, ({ size }) => size >= least.step - rounding);
    }
  }
  return complaints;
}

const headSize = 13;

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

/** The boxes that a sheet promises: for what is read and done, and smaller ones in tables. */
export function promisedBoxes({ blocks }: Sheet): { readonly boxes: number; readonly cells: number } {
  const empty = (texts: readonly string[]) => texts.filter((text) => text === '').length;
  const rows = (list: readonly BoxRow[]) => list.reduce((sum, row) => sum + empty(row.boxes), 0);
  const cells = ({ rows: lines }: TableBlock) =>
    lines.flat().filter(({ fill, text }) => fill === true && text === '').length;
  let [boxes, small] = [0, 0];
  for (const block of blocks) {
    if (block.kind === 'table') small += cells(block);
    if (block.kind === 'tables') for (const table of block.tables) small += cells(table);
    if (block.kind === 'close') boxes += rows([block.row]);
    if (block.kind === 'safety' && block.read !== '') boxes += 1;
    if (block.kind === 'log')
      boxes += block.units.reduce((sum, { lines }) => sum + lines.reduce((all, line) => all + empty(line.cells), 0), 0);
    if (block.kind === 'repairs') boxes += signedIn(block).length;
    if (block.kind !== 'step') continue;
    const { rows: own, close, set, sign, tables } = block;
    for (const table of tables) small += cells(table);
    boxes += rows(own) + (close === null ? 0 : rows([close])) + rows(set?.rows ?? []) + (sign?.boxes.length ?? 0);
  }
  return { boxes, cells: small };
}

function signedIn({ columns }: RepairsBlock): readonly SignBoxes['boxes'][number][] {
  return columns.flatMap(({ parts }) =>
    parts.flatMap(({ steps }) => steps.flatMap(({ step }) => step.sign?.boxes ?? [])),
  );
}

function smallBoxes(sheet: Sheet, pages: readonly Painted[]): string[] {
  // What is signed has its label in it.
  const labels = new Set(
    sheet.blocks
      .flatMap((block) =>
        block.kind === 'step' ? (block.sign?.boxes ?? []) : block.kind === 'repairs' ? signedIn(block) : [],
      )
      .map(({ label }) => bones(label)),
  );
  const found = pages.flatMap(boxesOf).filter(({ text }) => text.trim() === '' || labels.has(bones(text)));
  const high = (most: number) => found.filter(({ top, bottom }) => bottom - top >= most * millimetre - rounding).length;
  const { boxes, cells } = promisedBoxes(sheet);
  return [
    ...(high(least.box) < boxes
      ? [`${high(least.box)} boxes are ${least.box} mm high, of ${boxes} to be written in`]
      : []),
    ...(high(least.cell) < boxes + cells
      ? [`${high(least.cell)} boxes are ${least.cell} mm high, of ${boxes + cells} to be written in`]
      : []),
  ];
}

const words = ({ page, text }: Run) => `page ${page}: “${text}”`;
