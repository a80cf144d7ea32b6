import { buildColumn, type Column, type Item, leastHeight, type Measures, type Scene } from './column.ts';
import { type Density, densities } from './density.ts';
import { type Drawing, lineHeight } from './drawing.ts';
import type { Entry } from './entries.ts';
import { notesOf } from './notes.ts';
import { headRoom, type JoinedFamily, joinFamily } from './page.ts';
import type { Tie } from './ties.ts';
import { partNames, widthsOf } from './widths.ts';

/** All that a page is set from. */
export interface Plan {
  readonly base: Omit<Scene, 'tieWords' | 'density'>;
  readonly ties: readonly Tie[];
  readonly entries: readonly Entry[];
  readonly width: number;
  readonly maxHeight: number;
}

type Page = Pick<Drawing, 'height' | 'marks' | 'labels' | 'shortened'>;

/** In one column where it goes in, else in two that part no stack, else in two however they have to be parted, as loosely as the height allows. */
export function setPage(plan: Plan, mayBeOne: boolean): Page {
  const whole = mayBeOne ? [null] : plan.entries.flatMap(({ isFirst }, at) => (isFirst && at > 0 ? [at] : []));
  for (const density of densities.slice(0, mostPressed)) {
    const pages = whole
      .filter((breakAt) => mayFit(plan, density, breakAt))
      .map((breakAt) => pageOf(plan, density, breakAt))
      .filter(({ height }) => height <= plan.maxHeight);
    if (pages.length > 0) return pages.reduce((best, page) => (page.height < best.height ? page : best));
  }
  let page: Page | null = null;
  for (const density of densities) {
    const breakAt = breakOf(plan, density);
    if (!mayFit(plan, density, breakAt) && density !== densities.at(-1)) continue;
    page = pageOf(plan, density, breakAt);
    if (page.height <= plan.maxHeight) break;
  }
  return page!;
}

/** Whether a page can be low enough: its rows are no lower than their names and shapes. */
function mayFit({ base, entries, width, maxHeight }: Plan, density: Density, breakAt: number | null): boolean {
  const scene: Scene = { ...base, tieWords: new Map(), density };
  const columns = columnsOf(entries, breakAt);
  const lanes = columns.map(() => 0);
  const { measures } = widthsOf(width, scene, columns, lanes);
  return columns.every((some, index) => {
    const rows = itemsOf(some).map((item) => (item.kind === 'foot' ? 5.5 : leastHeight(scene, item, measures[index]!)));
    return rows.reduce((sum, height) => sum + height + density.gap, -density.gap) <= maxHeight;
  });
}

/** Densities at which a stack is better pressed than parted. */
const mostPressed = 7;

/** What a break in the midst of a stack costs, and each millimeter over the height, in millimeters of height. */
const costs = { within: 80, over: 10 } as const;

/**
 * The row that begins the second column: better between two stacks than within one, then so that both are about as high. The
 * heights are those of all rows in one column of the width of the two.
 */
function breakOf(plan: Plan, density: Density): number | null {
  const { entries } = plan;
  const scene: Scene = { ...plan.base, tieWords: new Map(), density };
  const half = Math.ceil(entries.length / 2);
  const { measures } = widthsOf(plan.width, scene, [entries.slice(0, half), entries.slice(half)], [1, 1]);
  const items = itemsOf(entries);
  const column = buildColumn(scene, items, narrowest(measures), 0);
  const texts = column.sides.map(({ lines, anchor }) => ({ y: anchor.y, height: lines.length * lineHeight + sideGap }));
  const needed = (from: number, to: number) =>
    texts.reduce((sum, { y, height }) => sum + (y >= from && y < to ? height : 0), -sideGap);
  let best: { at: number | null; cost: number } = { at: null, cost: Number.POSITIVE_INFINITY };
  for (let at = 1; at < entries.length; at++) {
    // Near the ends of a stack a break brings nothing.
    const isMiddle = at >= entries.length / 4 && at <= (entries.length * 3) / 4;
    const { isFirst } = entries[at]!;
    if (!isFirst && !isMiddle && entries.length > 3) continue;
    const y = column.tops[items.findIndex((item) => item.kind === 'row' && item.entry === entries[at - 1])]!;
    const lower = Math.max(column.height - y, needed(y, Number.POSITIVE_INFINITY));
    const height = Math.max(y, lower, needed(0, y));
    const over = Math.max(0, height + headRoom - plan.maxHeight);
    const cost = height + (isFirst ? 0 : costs.within) + over * costs.over;
    if (cost < best.cost) best = { at, cost };
  }
  return best.at;
}

const narrowest = (measures: readonly Measures[]): Measures =>
  measures.reduce((least, one) => (one.namesWidth < least.namesWidth ? one : least));

const columnsOf = (entries: readonly Entry[], breakAt: number | null) =>
  breakAt === null ? [entries] : [entries.slice(0, breakAt), entries.slice(breakAt)];

function pageOf(plan: Plan, density: Density, breakAt: number | null): Page {
  const { entries, ties } = plan;
  const columns = columnsOf(entries, breakAt);
  const columnAt = (part: string) => columns.findIndex((some) => partNames(some).includes(part));
  // A tie over two columns, or one for which there is no lane, is said in words.
  const most = breakAt === null ? mostLanes.one : mostLanes.two;
  const inWords = new Set(ties.filter(({ parts }) => new Set(parts.map(columnAt)).size > 1));
  for (;;) {
    const scene: Scene = { ...plan.base, tieWords: tieWords(plan, [...inWords]), density };
    const drawnTies = ties.filter((tie) => !inWords.has(tie));
    const lanes = columns.map((_, index) =>
      Math.min(most, drawnTies.filter(({ parts }) => columnAt(parts[0]!) === index).length),
    );
    const { measures, offsets } = widthsOf(plan.width, scene, columns, lanes);
    const set = columns.map((some, index) => columnFor(scene, some, measures[index]!));
    const goesOn = breakAt !== null && !entries[breakAt]!.isFirst;
    const page: JoinedFamily = {
      columns: set,
      items: columns.map(itemsOf),
      measures,
      offsets,
      goesOn: goesOn ? plan.base.facts.words.goesOn : null,
      ties: drawnTies,
      words: plan.base.facts.words,
      notes: notesOf(plan.base, set),
      width: plan.width,
    };
    const { failed, ...made } = joinFamily(page, most);
    if (failed.length === 0) return made;
    for (const tie of failed) inWords.add(tie);
  }
}

/** In two columns the names need the room. */
const mostLanes = { one: 3, two: 1 } as const;

function tieWords(plan: Plan, ties: readonly Tie[]): Map<string, string[]> {
  const { facts } = plan.base;
  const said = new Map<string, string[]>();
  for (const { kind, parts } of ties) {
    for (const part of parts) {
      const others = facts.list(parts.filter((other) => other !== part));
      const text = kind === 'matched' ? facts.words.matchedTo(others) : facts.words.balancedWith(others);
      said.set(part, [...(said.get(part) ?? []), text]);
    }
  }
  return said;
}

/** What is in a column: at the beginning of a stack, or where it goes on, the part that it rests on. */
function itemsOf(entries: readonly Entry[]): Item[] {
  const between = 8;
  return entries.flatMap((entry, index): Item[] => {
    const next = entries[index + 1];
    const row: Item = {
      kind: 'row',
      entry,
      beside: entry.isInLine && index > 0 ? [] : [...entry.under, ...entry.beside],
      above: next?.isFirst === true ? between : 0,
    };
    const foot = entry.isFirst ? entry.stack.foot : index === 0 && !entry.isBelow ? (entry.under[0] ?? null) : null;
    return foot === null ? [row] : [{ kind: 'foot', part: foot, above: 0 }, row];
  });
}

/** Room between two texts at the left, in millimeters. */
const sideGap = 1;

/** A column, drawn apart as far as the texts at its left need. */
function columnFor(scene: Scene, entries: readonly Entry[], measures: Measures): Column {
  const items = itemsOf(entries);
  const column = buildColumn(scene, items, measures, 0);
  const needed = column.sides.reduce((sum, { lines }) => sum + lines.length * lineHeight + sideGap, -sideGap);
  if (needed <= column.height) return column;
  const wider = buildColumn(
    scene,
    items,
    measures,
    items.length > 1 ? (needed - column.height) / (items.length - 1) : 0,
  );
  return { ...wider, height: Math.max(wider.height, needed) };
}
