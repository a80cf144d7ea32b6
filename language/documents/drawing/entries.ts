import type { Row } from '../../analysis/build-order.ts';
import { type Relations, restsOn } from '../../analysis/relations.ts';
import type { Part } from '../../model/family.ts';
import { isWorn } from './shape-of.ts';
import type { ShapeName } from './shapes/index.ts';
import type { Stack } from './stacks.ts';

/** A part as it is drawn, with the rings that are round it. */
export interface Entry {
  readonly stack: Stack;
  readonly part: Part;
  readonly worn: readonly Part[];
  /** First of its stack, from the bottom of the page up. */
  readonly isFirst: boolean;
  /** On the main axis, below the part that carries all: it goes in from the lower end, and is drawn turned over. */
  readonly isBelow: boolean;
  /** The part drawn next to it on the side that it rests on; empty: none. */
  readonly under: readonly string[];
  /** Parts that are drawn next to it, rings included. */
  readonly beside: readonly string[];
  /** Lies in the same bore as the one that it is drawn on. */
  readonly isInLine: boolean;
}

/** All parts from the bottom of the page up: each stack in the order in which it is built, away from the part that carries all. */
export function entriesOf(
  relations: Relations,
  stacks: readonly Stack[],
  shapes: ReadonlyMap<string, ShapeName>,
): Entry[] {
  const [main, ...beside] = stacks;
  if (main === undefined) return [];
  const carrier = main.rows[0]!.part;
  const isOpposite = oppositeOf(relations, main, beside);
  const opposite = beside.filter(isOpposite);
  const below = partsBelow(relations, carrier.name, new Set(opposite.flatMap(partsOf)));
  const all = [...main.rows.slice(1), ...opposite.flatMap(({ rows }) => rows)].flatMap((row) => flat(relations, row));
  const worn = wornBy(
    relations,
    [carrier, ...all, ...beside.flatMap(({ rows }) => rows.flatMap((row) => flat(relations, row)))],
    shapes,
  );
  const isDrawn = ({ name }: Part) => !worn.isWorn.has(name);
  const [down, up] = [all.filter(({ name }) => below.has(name)), all.filter(({ name }) => !below.has(name))];
  const lies = (part: Part) => (part.on.length + part.through.length === 0 ? part.in.join(' ') : '');
  const entry = (stack: Stack, part: Part, before: Part | null, isFirst: boolean, isBelow: boolean): Entry => ({
    stack,
    part,
    worn: worn.of.get(part.name) ?? [],
    isFirst,
    isBelow,
    under: before === null ? (stack.foot === null ? [] : [stack.foot]) : [before.name],
    beside: [],
    isInLine: before !== null && lies(part) !== '' && lies(part) === lies(before),
  });
  const run = (stack: Stack, parts: readonly Part[], first: Part | null, isBelow: boolean): Entry[] =>
    parts.filter(isDrawn).map((part, index, drawn) => entry(stack, part, drawn[index - 1] ?? first, false, isBelow));
  const mainRun = [
    ...run(main, down, carrier, true).reverse(),
    entry(main, carrier, null, false, false),
    ...run(main, up, carrier, false),
  ];
  const others = beside
    .filter((stack) => !opposite.includes(stack))
    .map((stack) =>
      run(
        stack,
        stack.rows.flatMap((row) => flat(relations, row)),
        null,
        false,
      ),
    );
  return [mainRun, ...others].flatMap((some) =>
    some.map((one, index) => ({
      ...one,
      isFirst: index === 0,
      beside: [some[index - 1], some[index + 1]].flatMap((next) => (next === undefined ? [] : [next.part.name])),
    })),
  );
}

const partsOf = ({ rows }: Stack) => rows.flatMap(({ part, inner }) => [part, ...inner].map(({ name }) => name));

/** A stack that is pressed on by the main one, or presses on it: it shares the axis, from the other end. */
function oppositeOf(relations: Relations, main: Stack, beside: readonly Stack[]): (stack: Stack) => boolean {
  const inMain = new Set(partsOf(main));
  const presses = (name: string, others: ReadonlySet<string>) =>
    relations.part(name).bearsOn.some((other) => others.has(other));
  let isTaken = false;
  const found = new Set<Stack>();
  for (const stack of beside) {
    const own = new Set(partsOf(stack));
    const isFromBelow = stack.rows.some(({ part }) => part.fromBelow);
    const isPressed = [...inMain].some((name) => presses(name, own)) || [...own].some((name) => presses(name, inMain));
    if (!isFromBelow && (isTaken || !isPressed)) continue;
    isTaken ||= !isFromBelow;
    found.add(stack);
  }
  return (stack) => found.has(stack);
}

/** Parts that go in from the lower end: those that say so, and what rests on them alone and does not come out at the upper end. */
function partsBelow(relations: Relations, carrier: string, opposite: ReadonlySet<string>): Set<string> {
  const below = new Set<string>(opposite);
  const { parts } = relations.family;
  for (const { name, fromBelow } of parts) if (fromBelow && name !== carrier) below.add(name);
  const goesThrough = (name: string) => relations.part(name).through.includes(carrier);
  for (let isNew = true; isNew; ) {
    isNew = false;
    for (const part of parts) {
      const hosts = restsOn(part).filter((host) => host !== carrier);
      if (below.has(part.name) || part.name === carrier || hosts.length === 0) continue;
      if (!hosts.every((host) => below.has(host) && (part.in.includes(host) || !goesThrough(host)))) continue;
      below.add(part.name);
      isNew = true;
    }
  }
  return below;
}

/** A row with what lies in it, in the order away from the carrier: what is pressed on from there is drawn on that side. */
function flat(relations: Relations, { part, inner }: Row): Part[] {
  const isNear = ({ name }: Part) =>
    relations.family.parts.some(({ bearsOn }) => bearsOn.includes(name)) ||
    (relations.onIt(name).length === 0 && relations.onIt(part.name).some((other) => !inner.includes(other)));
  return [...inner.filter(isNear), part, ...inner.filter((one) => !isNear(one))];
}

/** Rings by the part that they are round: what nothing rests on, and what is on one part that is drawn. */
function wornBy(relations: Relations, drawn: readonly Part[], shapes: ReadonlyMap<string, ShapeName>) {
  const of = new Map<string, Part[]>();
  const isWornPart = new Set<string>();
  const [carrier] = drawn;
  const mostWorn = 4;
  for (const part of drawn) {
    const [host, ...more] = restsOn(part);
    if (host === undefined || more.length > 0 || part === carrier || !isWorn(shapes.get(part.name)!)) continue;
    // In the bore of the carrier it is a part of the row of those in it.
    if (host === carrier!.name && part.in.length > 0) continue;
    if (isWornPart.has(host) || relations.onIt(part.name).length > 0 || part.suppliedLoose) continue;
    if (!drawn.some(({ name }) => name === host) || (of.get(host)?.length ?? 0) === mostWorn || of.has(part.name))
      continue;
    of.set(host, [...(of.get(host) ?? []), part]);
    isWornPart.add(part.name);
  }
  return { of, isWorn: isWornPart };
}
