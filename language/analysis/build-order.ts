import type { Part } from '../model/family.ts';
import { type Relations, restsOn } from './relations.ts';

/** A part of the stack with the parts that lie in it and go on and come off with it. */
export interface Row {
  readonly part: Part;
  readonly inner: readonly Part[];
}

/** Rows in the order in which they are built: what carries the others first, then as declared where nothing else is said. */
export function buildOrder(relations: Relations): Row[] {
  const { parts } = relations.family;
  const hostOf = hosts(relations);
  const rowOf = (name: string): string => {
    let host = name;
    for (let next = hostOf.get(host); next !== undefined; next = hostOf.get(host)) host = next;
    return host;
  };
  const rows = parts
    .filter(({ name }) => !hostOf.has(name))
    .map((part) => ({ part, inner: parts.filter(({ name }) => name !== part.name && rowOf(name) === part.name) }));
  const before = new Map(rows.map(({ part }) => [part.name, new Set<string>()]));
  const order = (first: string, then: string) => {
    const [a, b] = [rowOf(first), rowOf(then)];
    if (a !== b && before.has(a)) before.get(b)?.add(a);
  };
  const known = new Set(parts.map(({ name }) => name));
  for (const part of parts) {
    for (const under of restsOn(part)) order(under, part.name);
    for (const held of part.holds) order(held, part.name);
    for (const born of relations.bornBy(part.name)) if (known.has(born)) order(part.name, born);
  }
  for (const { part, lockedBy } of relations.family.adjusters) if (lockedBy !== null) order(part, lockedBy);
  // What is only put on as a cover is no part of the stack: after all else.
  const ranked = [...rows].sort((a, b) => Number(a.part.suppliedLoose) - Number(b.part.suppliedLoose));
  return sorted(ranked, before);
}

/** The first row for which all is there; where relations form a circle, the first of those left. */
function sorted(rows: readonly Row[], before: ReadonlyMap<string, ReadonlySet<string>>): Row[] {
  const left = [...rows];
  const done = new Set<string>();
  const order: Row[] = [];
  while (left.length > 0) {
    const free = left.findIndex(({ part }) => [...before.get(part.name)!].every((name) => done.has(name)));
    const [row] = left.splice(Math.max(0, free), 1);
    done.add(row!.part.name);
    order.push(row!);
  }
  return order;
}

/** The part that each inner part comes out with. A part that would lie in itself by way of others lies in none. */
function hosts(relations: Relations): Map<string, string> {
  const hostOf = new Map<string, string>();
  for (const { name } of relations.family.parts) {
    for (const inner of relations.inside(name)) {
      // A ring that comes off with its part lies on it, and is drawn and fitted for itself.
      if (!inner.in.includes(name) || hostOf.has(inner.name) || inner.suppliedLoose) continue;
      let outer: string | undefined = name;
      while (outer !== undefined && outer !== inner.name) outer = hostOf.get(outer);
      if (outer === undefined) hostOf.set(inner.name, name);
    }
  }
  return hostOf;
}
