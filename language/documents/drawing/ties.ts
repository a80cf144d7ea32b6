import type { Relations } from '../../analysis/relations.ts';

/** Parts that stay together, in the order of the drawing. */
export interface Tie {
  readonly kind: 'matched' | 'balanced';
  readonly parts: readonly string[];
}

/** Groups of parts that are matched, and of those that are balanced together. */
export function findTies(relations: Relations, order: readonly string[]): Tie[] {
  const groups = (kind: Tie['kind'], others: (name: string) => readonly string[]): Tie[] => {
    const groupOf = new Map<string, Set<string>>();
    for (const name of order) {
      const all = new Set<string>([name]);
      for (const other of others(name))
        if (order.includes(other)) for (const one of groupOf.get(other) ?? [other]) all.add(one);
      for (const one of groupOf.get(name) ?? []) all.add(one);
      for (const one of all) groupOf.set(one, all);
    }
    return [...new Set(groupOf.values())]
      .filter((group) => group.size > 1)
      .map((group) => ({ kind, parts: order.filter((name) => group.has(name)) }));
  };
  return [
    ...groups('matched', (name) => relations.part(name).matchedTo),
    ...groups('balanced', (name) => relations.part(name).balancedWith),
  ];
}

/** A tie line beside the names: upright at a lane, a tick to each name. Millimeters. */
export interface Span {
  /** Heights of its ticks. */
  readonly ticks: readonly number[];
  /** Of its line with the word on it. */
  readonly from: number;
  readonly to: number;
}

/**
 * A lane for each span, 0 nearest to the names, so that lines in one lane do not touch and no tick crosses a line on its way;
 * null where there is none within `most` lanes. Short ones lie inside.
 */
export function lanesOf(spans: readonly Span[], most: number): (number | null)[] {
  const lanes: (number | null)[] = spans.map(() => null);
  const order = spans
    .map((_, index) => index)
    .sort((a, b) => {
      const length = (index: number) => spans[index]!.to - spans[index]!.from;
      return length(a) - length(b) || a - b;
    });
  const clear = 1;
  for (const index of order) {
    const span = spans[index]!;
    for (let lane = 0; lane < most && lanes[index] === null; lane++) {
      const fits = spans.every((other, at) => {
        const taken = lanes[at];
        if (taken == null) return true;
        if (taken === lane) return other.to + clear <= span.from || span.to + clear <= other.from;
        const [inner, outer] = taken < lane ? [other, span] : [span, other];
        return outer.ticks.every((tick) => tick < inner.from - 0.5 || tick > inner.to + 0.5);
      });
      if (fits) lanes[index] = lane;
    }
  }
  return lanes;
}
