import { describe, expect, it } from 'vitest';
import { Fitting } from './fitting.ts';

/** Tries sizes until nothing is left to try. `pages` says how far a part goes in a size. */
function tried(pages: (size: number) => { readonly pages: number; readonly used: number }): number[] {
  const fitting = new Fitting();
  const sizes = [10.5];
  while (fitting.next([{ sheet: 0, part: 0, ...pages(sizes.at(-1)!) }])) sizes.push(fitting.sizes[0]![0]!);
  const last = fitting.sizes[0]![0]!;
  return last === sizes.at(-1) ? sizes : [...sizes, last];
}

/** A part of so many pages in the usual size, whose length goes with its size. */
const ofLength = (length: number) => (size: number) => {
  const takes = (length * size) / 10.5;
  return { pages: Math.ceil(takes), used: takes - Math.ceil(takes) + 1 };
};

describe('the size of a part', () => {
  it('is the usual one on a single page', () => {
    expect(tried(ofLength(0.9))).toEqual([10.5]);
  });
  it('is smaller where that saves a page', () => {
    expect(tried(ofLength(1.06))).toEqual([10.5, 9.75]);
    expect(tried(ofLength(3.02))).toEqual([10.5, 10.25]);
  });
  it('is the usual one where the least would save no page', () => {
    expect(tried(ofLength(1.5))).toEqual([10.5]);
  });
  it('is the least where what was reckoned does not do', () => {
    const stubborn = (size: number) => (size > 9.5 ? { pages: 3, used: 0.05 } : { pages: 2, used: 1 });
    expect(tried(stubborn)).toEqual([10.5, 10, 9.25]);
  });
  it('is the least where a large piece went overleaf, and fits in that', () => {
    expect(tried((size) => (size > 9.25 ? { pages: 2, used: 0.2 } : { pages: 1, used: 1 }))).toEqual([10.5, 9.25]);
  });
  it('is the usual one again where nothing does', () => {
    expect(tried(() => ({ pages: 2, used: 0.05 }))).toEqual([10.5, 10, 9.25, 10.5]);
  });
  it('is found for each part alone', () => {
    const fitting = new Fitting();
    const extents = [
      { sheet: 1, part: 2, pages: 2, used: 0.05 },
      { sheet: 0, part: 0, pages: 2, used: 0.9 },
    ];
    expect(fitting.next(extents)).toBe(true);
    expect(fitting.sizes).toEqual([[10.5], [10.5, 10.5, 10]]);
    expect(fitting.next([{ ...extents[0]!, pages: 1 }, extents[1]!])).toBe(false);
  });
});
