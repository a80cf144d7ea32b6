import { Relations } from '../../analysis/relations.ts';
import { printable } from '../../i18n/printable.ts';
import type { Family } from '../../model/family.ts';
import { brokenText } from './broken-text.ts';
import { buildOrder } from './build-order.ts';
import { buildColumn, type Column, type Item, type Measures, type Scene, stepWidth } from './column.ts';
import { type Density, densities } from './density.ts';
import { type Drawing, lineHeight } from './drawing.ts';
import { type Entry, entriesOf } from './entries.ts';
import { explodedAlt } from './exploded-alt.ts';
import { Facts, type Told } from './facts.ts';
import { type DrawingWords, englishWords } from './labels.ts';
import { nameLines } from './name-lines.ts';
import { notesOf } from './notes.ts';
import { onceEach } from './once-each.ts';
import { headRoom, type JoinedFamily, joinFamily, reserve } from './page.ts';
import { findShapes } from './shape-of.ts';
import { shares } from './shares.ts';
import { findStacks, type Stack } from './stacks.ts';
import { widthOf } from './text-width.ts';
import { findTies, type Tie } from './ties.ts';

export interface ExplodedOptions extends Told {
  readonly words?: DrawingWords;
  /** Millimeters. */
  readonly width?: number;
  readonly maxHeight?: number;
}

/** A family taken apart: its stacks from the bottom up, and the picture of them. */
export interface Exploded extends Drawing {
  /** The main stack, then those that are beside it. */
  readonly stacks: readonly Stack[];
}

/** Most parts that are in one column. */
const mostInOne = 16;
/** Densities at which one column is still better than two. */
const mostPressed = 7;
/** Millimeters between two columns. */
const gutter = 4;

/**
 * The exploded view of a family. It is as high as it needs to be, at most `maxHeight` for families of a usual size; one that
 * does not go in, however closely it is set, is higher.
 */
export function buildExploded(family: Family, options: ExplodedOptions = {}): Exploded {
  const { words = englishWords, width = 186, maxHeight = 230 } = options;
  const drawn = onceEach(family);
  const relations = new Relations(drawn.family);
  const facts = new Facts(drawn, relations, words, options);
  const rows = buildOrder(relations);
  const stacks = findStacks(relations, rows);
  const common = {
    title: printable(family.title || family.name),
    alt: explodedAlt(facts, rows),
    stacks,
  };
  if (rows.length === 0) return { ...common, width, height: lineHeight, marks: [], labels: [], shortened: [] };

  const parts = rows.flatMap(({ part, inner }) => [part, ...inner]);
  const names = parts.map(({ name }) => name);
  const carrier = stacks[0]!.rows[0]!.part.name;
  const shapes = findShapes(relations);
  const entries = entriesOf(relations, stacks, shapes);
  const base = { facts, carrier, shapes, shares: shares(relations, parts, carrier, shapes), entries };
  const isOnAxis = ({ stack, isBelow }: Entry) => isBelow || stack === stacks[0];
  const ties = findTies(relations, names);
  const plan: Plan = { base, ties, entries, width, maxHeight };
  const page = setPage(plan, entries.every(isOnAxis) && names.length <= mostInOne);
  return { ...common, width, ...page };
}

interface Plan {
  readonly base: Omit<Scene, 'tieWords' | 'density'>;
  readonly ties: readonly Tie[];
  readonly entries: readonly Entry[];
  readonly width: number;
  readonly maxHeight: number;
}

type Page = Pick<Drawing, 'height' | 'marks' | 'labels' | 'shortened'>;

/** In one column where it goes in, else in two that part no stack, else in two however they have to be parted, as loosely as the height allows. */
function setPage(plan: Plan, mayBeOne: boolean): Page {
  const whole = mayBeOne ? [null] : plan.entries.flatMap(({ isFirst }, at) => (isFirst && at > 0 ? [at] : []));
  for (const density of densities.slice(0, mostPressed)) {
    const pages = whole
      .map((breakAt) => pageOf(plan, density, breakAt))
      .filter(({ height }) => height <= plan.maxHeight);
    if (pages.length > 0) return pages.reduce((best, page) => (page.height < best.height ? page : best));
  }
  let page: Page | null = null;
  for (const density of densities) {
    page = pageOf(plan, density, breakOf(plan, density));
    if (page.height <= plan.maxHeight) break;
  }
  return page!;
}

/** What a break in the midst of a stack costs, and each millimeter over the height, in millimeters of height. */
const costs = { within: 80, over: 10 } as const;

/** The row that begins the second column: better between two stacks than within one, then so that both are about as high. */
function breakOf(plan: Plan, density: Density): number | null {
  const { entries } = plan;
  let best: { at: number | null; cost: number } = { at: null, cost: Number.POSITIVE_INFINITY };
  const scene: Scene = { ...plan.base, tieWords: new Map(), density };
  for (let at = 1; at < entries.length; at++) {
    // Near the ends of a stack a break brings nothing.
    const isMiddle = at >= entries.length / 4 && at <= (entries.length * 3) / 4;
    if (!entries[at]!.isFirst && !isMiddle && entries.length > 3) continue;
    const columns = [entries.slice(0, at), entries.slice(at)];
    const { measures } = widthsOf(plan, scene, columns, [1, 1]);
    const height = Math.max(...columns.map((some, index) => columnFor(scene, some, measures[index]!).height));
    const over = Math.max(0, height + headRoom - plan.maxHeight);
    const cost = height + (entries[at]!.isFirst ? 0 : costs.within) + over * costs.over;
    if (cost < best.cost) best = { at, cost };
  }
  return best.at;
}

function pageOf(plan: Plan, density: Density, breakAt: number | null): Page {
  const { entries, ties } = plan;
  const columns = breakAt === null ? [entries] : [entries.slice(0, breakAt), entries.slice(breakAt)];
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
    const { measures, offsets } = widthsOf(plan, scene, columns, lanes);
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

/** Widths of columns side by side, and their left edges. */
interface Widths {
  readonly measures: readonly Measures[];
  readonly offsets: readonly number[];
}

/**
 * Texts at the left get the width that they have, up to a good one; names share what is left, each column no more than it
 * needs. The rest is space around the columns.
 */
function widthsOf(plan: Plan, scene: Scene, columns: readonly (readonly Entry[])[], lanes: readonly number[]): Widths {
  const isOne = columns.length === 1;
  const shapeWidth = (isOne ? 40 : 24) * Math.min(1, 0.55 + scene.density.scale * 0.45);
  const needs = columns.map((entries, index) => {
    const sideWidth = sideWidthOf(scene, entries, isOne ? 52 : 22);
    const left = sideWidth > 0 ? sideWidth + reserve.left : 2;
    const steps = stepsWidth(scene, entries);
    return {
      sideWidth,
      left,
      steps,
      fixed:
        left +
        steps +
        shapeWidth +
        reserve.right +
        (lanes[index]! > 0 ? reserve.tie + lanes[index]! * reserve.lane : 0),
      names: Math.max(18, naturalNames(scene, entries)),
    };
  });
  const room = plan.width - gutter * (columns.length - 1) - needs.reduce((sum, { fixed }) => sum + fixed, 0);
  const given = shared(
    needs.map(({ names }) => names),
    room,
  );
  const over = (room - given.reduce((sum, one) => sum + one, 0)) / (columns.length + 1);
  const measures: Measures[] = [];
  const offsets: number[] = [];
  let x = over;
  for (const [index, { sideWidth, left, steps, fixed }] of needs.entries()) {
    const middle = left + shapeWidth / 2;
    offsets.push(x);
    measures.push({
      sideWidth,
      middle,
      shapeWidth,
      names: middle + shapeWidth / 2 + reserve.right,
      stepWidth: steps,
      namesWidth: given[index]!,
    });
    x += fixed + given[index]! + gutter + over;
  }
  return { measures, offsets };
}

/** Shares room out: none gets more than it needs, and those that need much get what the others leave. */
function shared(needs: readonly number[], room: number): number[] {
  const given = needs.map(() => 0);
  let left = room;
  const order = needs.map((_, index) => index).sort((a, b) => needs[a]! - needs[b]! || a - b);
  order.forEach((index, done) => {
    given[index] = Math.max(1, Math.min(needs[index]!, left / (needs.length - done)));
    left -= given[index]!;
  });
  return given;
}

function partNames(entries: readonly Entry[]): string[] {
  return entries.flatMap(({ part, worn }) => [part, ...worn].map(({ name }) => name));
}

/** Width of the texts at the left when none is wider than `most`. */
function sideWidthOf({ facts, density }: Scene, entries: readonly Entry[], most: number): number {
  const { family } = facts.relations;
  const texts = entries
    .map(({ part }) => part.name)
    .flatMap((part) => [
      ...facts.relations
        .faces(part)
        .filter((face) => face.finish !== null || face.guardedBy !== null)
        .flatMap((face) => {
          const other = family.faces.find(({ id }) => id === face.meets) ?? null;
          return [facts.face(face, other).join(', '), ...(other === null ? [] : facts.pair(face, other))];
        }),
      ...facts.relations.ports(part).map((port) => facts.port(port)),
    ]);
  const lines = texts.flatMap((text) => brokenText(text, false, most, density.sideLines + 1).lines);
  return Math.max(0, ...lines.map((line) => widthOf(line, false)));
}

/** Width of the widest name or detail, unbroken. */
function naturalNames(scene: Scene, entries: readonly Entry[]): number {
  const lines = entries.flatMap(({ part, worn, under, beside, isInLine, stack }) => [
    ...nameLines(scene, part.name, isInLine ? [] : [...under, ...beside], Number.POSITIVE_INFINITY, []),
    ...worn.flatMap(({ name }) => nameLines(scene, name, [part.name], Number.POSITIVE_INFINITY, [])),
    ...(stack.foot === null ? [] : [{ text: scene.facts.drawn.title(stack.foot), bold: false }]),
  ]);
  return Math.max(0, ...lines.map(({ text, bold }) => widthOf(text, bold)));
}

/** Width of the widest step number of a column, with the room behind it; 0: there are none. */
function stepsWidth({ facts }: Scene, entries: readonly Entry[]): number {
  const steps = partNames(entries).flatMap((name) => facts.step(name) ?? []);
  return steps.length === 0 ? 0 : Math.max(...steps.map(stepWidth)) + 1.6;
}
