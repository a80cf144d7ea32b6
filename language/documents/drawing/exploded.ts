import { buildOrder } from '../../analysis/build-order.ts';
import { Relations } from '../../analysis/relations.ts';
import { printable } from '../../i18n/printable.ts';
import type { Family } from '../../model/family.ts';
import { type Drawing, lineHeight } from './drawing.ts';
import { type Entry, entriesOf } from './entries.ts';
import { explodedAlt } from './exploded-alt.ts';
import { type Annotations, Facts } from './facts.ts';
import { type DrawingWords, englishWords } from './labels.ts';
import { onceEach } from './once-each.ts';
import { type Plan, setPage } from './paging.ts';
import { findShapes } from './shape-of.ts';
import { shares } from './shares.ts';
import { findStacks, type Stack } from './stacks.ts';
import { findTies } from './ties.ts';

export interface ExplodedOptions extends Annotations {
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

/** Drawings by family and words: a sheet, its preview and the editor ask for the same ones again. */
const made = new WeakMap<Family, WeakMap<DrawingWords, Map<string, Exploded>>>();
/** Most drawings that are kept of one family, for other figures, sizes and part numbers. */
const mostKept = 8;

/**
 * The exploded view of a family. It is as high as it needs to be, at most `maxHeight` for families of a usual size; one that
 * does not go in, however closely it is set, is higher.
 */
export function buildExploded(family: Family, options: ExplodedOptions = {}): Exploded {
  const { words = englishWords, ...others } = options;
  const ofFamily = made.get(family) ?? new WeakMap<DrawingWords, Map<string, Exploded>>();
  made.set(family, ofFamily);
  const kept = ofFamily.get(words) ?? new Map<string, Exploded>();
  ofFamily.set(words, kept);
  const key = JSON.stringify(others, (_, value) => (value instanceof Map || value instanceof Set ? [...value] : value));
  const before = kept.get(key);
  if (before !== undefined) return before;
  if (kept.size >= mostKept) kept.clear();
  const drawing = buildNew(family, { ...others, words });
  kept.set(key, drawing);
  return drawing;
}

function buildNew(family: Family, options: ExplodedOptions & { readonly words: DrawingWords }): Exploded {
  const { words, width = 186, maxHeight = 230 } = options;
  const drawn = onceEach(family);
  const relations = Relations.of(drawn.family);
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
  const base = { facts, carrier, shapes, shares: shares(relations, parts, carrier, shapes), entries, known: new Map() };
  const isOnAxis = ({ stack, isBelow }: Entry) => isBelow || stack === stacks[0];
  const ties = findTies(relations, names);
  const plan: Plan = { base, ties, entries, width, maxHeight };
  const page = setPage(plan, entries.every(isOnAxis) && names.length <= mostInOne);
  return { ...common, width, ...page };
}
