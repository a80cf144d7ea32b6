import { type DrawerLayout, without } from '../engineering/drawer.ts';
import { leastMost } from '../engineering/matching.ts';
import { expectedOf, type ShimAdvice, safeAim, shimAdvice, windowOf } from '../engineering/shim-advice.ts';
import type { Quantity } from '../quantities/types.ts';
import type { UnitReading } from './unit-shims.ts';

/** What to fit in a unit, no shim being given out twice. */
export interface Share {
  /** Null: nothing is to be done. */
  readonly advice: ShimAdvice | null;
  /** What would fit goes into another unit. */
  readonly taken: boolean;
}

/**
 * What to fit in each unit of a job, out of drawers whose pieces are each given out once. Where more units want a size
 * than there are of it, all are chosen for at once, so that as few as can be go without: the worst is as near to its aim
 * as it can be. Where stacks come in, or one must go without, they are served in order.
 */
export function shareDrawer(stands: readonly UnitReading[]): ReadonlyMap<UnitReading, Share> {
  const given = new Map<UnitReading, Share>();
  const stocks = new Map<string, UnitReading[]>();
  for (const stand of stands) {
    const { name } = stand.choice.stocks[0]!;
    stocks.set(name, [...(stocks.get(name) ?? []), stand]);
  }
  for (const of of stocks.values()) {
    for (const stand of of)
      given.set(stand, { advice: stand.stands ? null : shimAdvice(stand.question), taken: false });
    const wanting = of.filter((stand) => !stand.stands && 'choice' in given.get(stand)!.advice!);
    const wanted = wanting.flatMap((stand) => shimsOf(given.get(stand)!));
    if (isEnough(of[0]!.question.drawer, wanted)) continue;
    const matched = ofSingles(wanting);
    let left: readonly Quantity[] = [];
    for (const [index, stand] of wanting.entries()) {
      const { drawer } = stand.question;
      const from =
        matched === null
          ? without(drawer, left)
          : {
              ...drawer,
              stacks: false,
              pieces: [drawer.pieces.find(({ thickness }) => thickness === matched[index])!],
            };
      const advice = shimAdvice({ ...stand.question, drawer: from });
      const taken = 'nothing' in advice;
      given.set(stand, { advice, taken });
      if (!taken) left = [...left, ...advice.choice.shims];
    }
  }
  return given;
}

function shimsOf({ advice }: Share): readonly Quantity[] {
  return advice !== null && 'choice' in advice ? advice.choice.shims : [];
}

function isEnough({ pieces }: DrawerLayout, wanted: readonly Quantity[]): boolean {
  return pieces.every(
    ({ thickness, count }) => count === null || wanted.filter((one) => one === thickness).length <= count,
  );
}

/** One shim for each, the furthest from its aim as near as can be. Null: they lie in stacks, or one goes without. */
function ofSingles(stands: readonly UnitReading[]): readonly Quantity[] | null {
  const { pieces, stacks } = stands[0]!.question.drawer;
  if (stacks) return null;
  const off = stands.map(({ question }) => {
    const { low, high } = windowOf(question);
    const { most } = question.drawer;
    const aim = safeAim(question)!;
    return pieces.map(({ ticks, thickness }) => {
      if (most !== null && ticks > most) return null;
      const there = expectedOf(question, { ticks, shims: [thickness] });
      const inside = (low === null || there.compare(low) >= 0) && (high === null || there.compare(high) <= 0);
      return inside ? there.sub(aim).abs().valueOf() : null;
    });
  });
  const found = leastMost(
    off,
    pieces.map(({ count }) => count ?? stands.length),
  );
  return found === null ? null : found.choice.map((column) => pieces[column]!.thickness);
}
