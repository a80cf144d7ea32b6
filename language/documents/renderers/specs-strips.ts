import type { Words } from '../../i18n/index.ts';
import type { SpecCell, SpecColumn, SpecFigure, Specs } from '../specs/model.ts';

/** One line of a figure over the columns: all the same, or each its own. */
export interface Strip {
  readonly kind: 'value' | 'also' | 'tool' | 'source' | 'missing';
  /** One text for each column; a single one where all say the same. */
  readonly texts: readonly string[];
  /** Printed before the first of several lines that apply to all columns; empty elsewhere. */
  readonly all: string;
}

/** Printed where a figure does not apply to a part number. */
const notFor = '–';

/** The lines of a figure, in reading order; a line that no column has is left out. */
export function stripsOf(cells: readonly (SpecCell | null)[], { specs }: Words): Strip[] {
  const line = (kind: Strip['kind'], text: (cell: SpecCell) => string, none = '') => {
    const texts = cells.map((cell) => (cell === null ? none : text(cell)));
    return { kind, texts: new Set(texts).size === 1 ? [texts[0]!] : texts };
  };
  const lines = [
    line('value', ({ value }) => value, notFor),
    line('also', ({ also }) => also),
    line('also', ({ standing }) => standing ?? ''),
    line('tool', (cell) => toolText(cell, specs.ratio)),
    line('source', ({ source }) => (source === null ? '' : `${specs.source}: ${source}`)),
    line('missing', (cell) => cell.missing.map(({ words }) => words).join('; ')),
  ].filter(({ texts }) => texts.some((text) => text !== ''));
  const isCommon = (index: number) => cells.length > 1 && lines[index]?.texts.length === 1;
  return lines.map((one, index) => ({
    ...one,
    all: isCommon(index) && !isCommon(index - 1) && one.texts[0] !== notFor ? specs.all : '',
  }));
}

/** `TW-80 ±2.4 N·m, ratio 2.0:1` */
function toolText({ tool, ratio }: SpecCell, word: string): string {
  if (tool === null) return '';
  const name = [tool.number ?? tool.words, tool.error ?? ''].filter((text) => text !== '').join(' ');
  return ratio === null ? name : `${name}, ${word} ${ratio}`;
}

/** `step 3.4`, `steps 3.4, 5.1` */
export function stepsText(steps: readonly string[], { specs }: Words): string {
  return (steps.length === 1 ? specs.step : specs.steps)({ numbers: steps.join(', ') });
}

/** Columns that are side by side; what has more of them is laid out again below. Evenly, as far as it goes. */
export function blocksOf(count: number, most: number): { readonly from: number; readonly to: number }[] {
  const blocks = Math.max(1, Math.ceil(count / most));
  const each = Math.max(1, Math.ceil(count / blocks));
  return Array.from({ length: blocks }, (_, index) => ({
    from: index * each,
    to: Math.min(count, (index + 1) * each),
  }));
}

/** A figure as far as a block of columns goes. */
export function inBlock({ cells }: SpecFigure, { from, to }: { readonly from: number; readonly to: number }) {
  return cells.slice(from, to);
}

/** Head of a column; null where there are no part numbers. */
export function columnHead({ number, title }: SpecColumn): { readonly number: string; readonly title: string } | null {
  return number === null ? null : { number, title };
}

/** What is over it all: family, procedure, revision, shop. */
export function headFacts(
  { procedure, family, revision, shop }: Specs,
  { specs }: Words,
): { label: string; text: string }[] {
  return [
    { label: specs.family, text: family },
    { label: specs.procedure, text: procedure },
    { label: specs.revision, text: revision ?? specs.noRevision },
    { label: specs.shop, text: shop },
  ];
}
