/**
 * The size of type that each part of a sheet is set in. A part begins on a page of its own; where a little smaller type saves a
 * page, it is set in that. How many pages it takes is known only from setting it, so sizes are found by trying.
 */

/** Points. */
const usual = 10.5;
const least = 9.25;
/** Of the last page more is used than runs over, where what did not go on the page before was large: so the least size is tried. */
const hopeless = 8;
/** Sizes are whole quarters of a point. */
const step = 0.25;

/** How far a part went, as it was set. */
export interface Extent {
  /** Places of the sheet in the document and of the part in the sheet, from 0. */
  readonly sheet: number;
  readonly part: number;
  readonly pages: number;
  /** Of the last page, from 0 to 1. */
  readonly used: number;
}

/** A size in points for each part of each sheet. */
export type Sizes = readonly (readonly number[])[];

/** What is known of a part. */
interface Tried {
  /** As set in the usual size. */
  readonly pages: number;
  readonly size: number;
  readonly settled: boolean;
}

/** Finds the sizes of one document: `sizes` are to be set in, until `next` says that nothing is left to try. */
export class Fitting {
  readonly #parts = new Map<string, Tried>();

  get sizes(): Sizes {
    const sizes: number[][] = [];
    for (const [key, { size }] of this.#parts) {
      const [sheet, part] = key.split(' ').map(Number);
      sizes[sheet!] ??= [];
      sizes[sheet!]![part!] = size;
    }
    return Array.from(sizes, (of) => Array.from(of ?? [], (size) => size ?? usual));
  }

  /** Learns how far each part went. True: other sizes are to be tried. */
  next(extents: readonly Extent[]): boolean {
    let more = false;
    for (const extent of extents) {
      const key = `${extent.sheet} ${extent.part}`;
      const before = this.#parts.get(key);
      const after = before === undefined ? first(extent) : before.settled ? before : again(before, extent);
      more ||= after.size !== (before?.size ?? usual);
      this.#parts.set(key, after);
    }
    return more;
  }
}

/** By the room that it took: smaller type takes less both ways, and not all of it becomes smaller. */
function first({ pages, used }: Extent): Tried {
  const size = Math.floor((usual * (pages - 1)) / (pages - 1 + used) / step) * step;
  return pages === 1 || size < hopeless
    ? { pages, size: usual, settled: true }
    : { pages, size: Math.max(least, Math.min(size, usual - step)), settled: false };
}

/** The least size is the last that is tried. */
function again({ pages, size }: Tried, extent: Extent): Tried {
  if (extent.pages < pages) return { pages, size, settled: true };
  return size > least ? { pages, size: least, settled: false } : { pages, size: usual, settled: true };
}
