import stringWidth from 'string-width';
import wrapAnsi from 'wrap-ansi';
import { type Language, type Words, wordsIn } from '../../i18n/index.ts';
import type { SpecFigure, SpecItem, Specs } from '../specs/model.ts';
import { missingCount } from '../specs/specs.ts';
import { blocksOf, columnHead, headFacts, inBlock, type Strip, stepsText, stripsOf } from './specs-strips.ts';

export interface SpecsTextOptions {
  /** Characters across. */
  readonly width: number;
  /** That they were laid out in. */
  readonly language?: Language;
  /** Paints a heading, and what is missing; as it is where nothing is said. */
  readonly strong?: (text: string) => string;
  readonly alarm?: (text: string) => string;
}

/** Narrowest column of a part number: below it words are cut too often. */
const leastColumn = 16;
const leastWidth = 40;
const gap = 2;

/** The specifications in aligned columns, for a terminal or a mail. */
export function renderSpecsText(specs: Specs, options: SpecsTextOptions): string {
  const width = Math.max(leastWidth, options.width);
  const words = wordsIn(options.language ?? 'en');
  const strong = options.strong ?? same;
  const alarm = options.alarm ?? same;
  const label = Math.min(26, Math.floor(width * 0.3));
  const most = Math.max(1, Math.floor((width - label) / (leastColumn + gap)));
  const count = missingCount(specs);
  const lines = [
    strong(plain(specs.title)),
    ...headLines(specs, width, words),
    (count === 0 ? same : alarm)(words.specs.missingCount({ count })),
  ];
  if (specs.groups.length === 0) lines.push('', words.specs.nothing);
  for (const block of blocksOf(specs.columns.length, most)) {
    const columns = specs.columns.slice(block.from, block.to);
    const across: Across = {
      label,
      rest: width - label - gap,
      columns: columns.length,
      column: Math.floor((width - label) / columns.length) - gap,
      alarm,
      words,
    };
    const heads = columns.map(columnHead);
    if (heads.every((head) => head !== null)) {
      lines.push(
        '',
        ...row(
          words.specs.numbers,
          heads.map(({ number }) => number),
          across,
          strong,
        ),
      );
      if (heads.some(({ title }) => title !== ''))
        lines.push(
          ...row(
            '',
            heads.map(({ title }) => title),
            across,
          ),
        );
    }
    for (const group of specs.groups) {
      lines.push('', strong(group.title.toUpperCase()));
      for (const item of group.items) {
        lines.push('', ...itemHead(item, width, strong));
        for (const figure of item.figures)
          lines.push(...figureLines(figure, stripsOf(inBlock(figure, block), words), across));
      }
    }
  }
  for (const remark of specs.remarks) lines.push('', ...wrapped(remark, width));
  return `${lines.join('\n')}\n`;
}

interface Across {
  /** Width of the left column. */
  readonly label: number;
  /** Width of what goes over all columns. */
  readonly rest: number;
  readonly columns: number;
  readonly column: number;
  readonly alarm: (text: string) => string;
  readonly words: Words;
}

function headLines(specs: Specs, width: number, words: Words): string[] {
  const facts = headFacts(specs, words);
  const label = Math.max(...facts.map((fact) => stringWidth(fact.label))) + gap;
  return facts.flatMap((fact) =>
    wrapped(fact.text, width - label).map((line, index) => joined(index === 0 ? fact.label : '', line, { label })),
  );
}

function itemHead({ title, facts }: SpecItem, width: number, strong: (text: string) => string): string[] {
  const [first = '', ...more] = wrapped(facts.length === 0 ? title : `${title}: ${facts.join('; ')}`, width - gap);
  const name = plain(title);
  return [first.startsWith(name) ? strong(name) + first.slice(name.length) : first, ...more.map((line) => `  ${line}`)];
}

function figureLines({ what, steps }: SpecFigure, strips: readonly Strip[], across: Across): string[] {
  const left = [
    ...wrapped(what, across.label - 2 - gap),
    ...(steps.length === 0 ? [] : wrapped(stepsText(steps, across.words), across.label - 2 - gap)),
  ].map((line) => `  ${line}`);
  const right = strips.flatMap((one) => stripLines(one, across, one.kind === 'missing' ? across.alarm : same));
  return Array.from({ length: Math.max(left.length, right.length) }, (_, index) =>
    joined(left[index] ?? '', right[index] ?? '', across),
  );
}

/** The first of the lines that apply to all columns says so. */
function stripLines({ texts, all }: Strip, across: Across, paint: (text: string) => string): string[] {
  if (texts.length > 1 || across.columns === 1) return strip(texts, across, paint);
  const before = `${across.words.specs.all}: `;
  const lines = strip(texts, { ...across, rest: across.rest - before.length }, paint);
  return lines.map((line, index) => (index === 0 && all !== '' ? before : ' '.repeat(before.length)) + line);
}

/** The texts of one strip under their columns, each wrapped in its own. */
function strip(texts: readonly string[], { rest, column }: Across, paint: (text: string) => string): string[] {
  const width = texts.length === 1 ? rest : column;
  const cells = texts.map((text) => wrapped(text, width));
  return Array.from({ length: Math.max(...cells.map((cell) => cell.length)) }, (_, index) =>
    cells
      .map((cell, place) => {
        const text = cell[index] ?? '';
        const painted = text === '' ? '' : paint(text);
        return place === cells.length - 1
          ? painted
          : painted + ' '.repeat(Math.max(0, width - stringWidth(text)) + gap);
      })
      .join('')
      .trimEnd(),
  );
}

function row(
  label: string,
  texts: readonly string[],
  across: Across,
  paint: (text: string) => string = same,
): string[] {
  return strip(texts, across, paint).map((text, index) => joined(index === 0 ? label : '', text, across));
}

function joined(left: string, right: string, { label }: Pick<Across, 'label'>): string {
  return right === '' ? left.trimEnd() : left + ' '.repeat(Math.max(1, label - stringWidth(left))) + right;
}

/** Lines no longer than the width; a number stays with its unit, unless that is longer than the line. */
function wrapped(text: string, width: number): string[] {
  const words = text.split(' ').map((word) => (stringWidth(word) > width ? plain(word) : word));
  return wrapAnsi(words.join(' '), width, { hard: true }).split('\n').map(plain);
}

/** No-break blanks did their work when the lines were made. */
function plain(text: string): string {
  return text.replace(/[\u00a0\u202f]/gu, ' ');
}

function same(text: string): string {
  return text;
}
