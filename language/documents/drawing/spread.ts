/** A label that should have its top at `wish` if possible. */
export interface Wish {
  readonly wish: number;
  readonly height: number;
}

/**
 * Tops of labels in the order given: none over another, `gap` between them, all between `low` and `high`, each as near as
 * can be to where it would like to be (least squares). Where they need more room than there is they begin at `low` and run
 * over `high`.
 *
 * Without the heights before it each top has only to be no less than the last one: that is isotonic regression, which pooling
 * neighbors solves exactly, and for bounds that all share the solution is the free one drawn in to them.
 */
export function spread(wishes: readonly Wish[], low: number, high: number, gap: number): number[] {
  const offsets: number[] = [];
  let total = 0;
  for (const { height } of wishes) {
    offsets.push(total);
    total += height + gap;
  }
  const pools: { sum: number; count: number }[] = [];
  for (const [index, { wish }] of wishes.entries()) {
    let pool = { sum: wish - offsets[index]!, count: 1 };
    for (let before = pools.at(-1); before !== undefined; before = pools.at(-1)) {
      if (before.sum / before.count <= pool.sum / pool.count) break;
      pools.pop();
      pool = { sum: before.sum + pool.sum, count: before.count + pool.count };
    }
    pools.push(pool);
  }
  const most = Math.max(low, high - (total - gap));
  const starts = pools.flatMap(({ sum, count }) =>
    Array.from({ length: count }, () => Math.min(most, Math.max(low, sum / count))),
  );
  return starts.map((start, index) => start + offsets[index]!);
}
