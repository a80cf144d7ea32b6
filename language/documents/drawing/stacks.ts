import type { Row } from '../../analysis/build-order.ts';
import { type Relations, restsOn } from '../../analysis/relations.ts';
import type { Part } from '../../model/family.ts';

/** Rows along one axis, from the bottom up. `foot` is the part drawn elsewhere that they rest on; null if there is none. */
export interface Stack {
  readonly foot: string | null;
  readonly rows: readonly Row[];
}

/**
 * The main stack, then those that are beside it. A stack goes beside it if it is connected to the rest only by the part that
 * carries all, is turned, set or holds something, and is built in one go: a side valve, an adjusting screw with its nuts.
 * What is built between parts of the main stack stays in it: it may well share the axis. Guards that are supplied loose are
 * for themselves.
 */
export function findStacks(relations: Relations, rows: readonly Row[]): Stack[] {
  if (rows.length === 0) return [];
  const { family } = relations;
  const carrier = carrierOf(relations, rows);
  const groups = groupsOf(relations, rows, carrier);
  const main = [...groups].sort((a, b) => sizeOf(b) - sizeOf(a))[0] ?? [];
  const turned = new Set([
    ...family.joints.map(({ part }) => part),
    ...family.adjusters.map(({ part }) => part),
    ...family.parts.filter(({ holds }) => holds.length > 0).map(({ name }) => name),
  ]);
  const beside = groups.filter((group) => {
    if (group === main || group.length === 0) return false;
    if (group.every(({ part }) => part.suppliedLoose)) return true;
    const at = group.map((row) => rows.indexOf(row));
    const isOneGo = Math.max(...at) - Math.min(...at) === group.length - 1;
    return (
      isOneGo &&
      group.some(({ part }) => turned.has(part.name)) &&
      group.every(({ part }) => onlyOn(part, carrier, group))
    );
  });
  const stacks: Stack[] = [{ foot: null, rows: rows.filter((row) => !beside.some((group) => group.includes(row))) }];
  for (const group of beside) {
    const foot = footOf(group, carrier, family.parts);
    const last = stacks.at(-1)!;
    // Single parts on the same host share its picture.
    if (stacks.length > 1 && group.length === 1 && last.foot === foot && foot !== null && isSingles(last))
      stacks[stacks.length - 1] = { foot, rows: [...last.rows, ...group] };
    else stacks.push({ foot, rows: group });
  }
  return stacks;
}

const sizeOf = (group: readonly Row[]) => group.reduce((sum, { inner }) => sum + 1 + inner.length, 0);

/** Whether its rows all rest on the foot alone. */
const isSingles = ({ foot, rows }: Stack) => rows.every(({ part }) => restsOn(part).includes(foot!));

/** The part that rests on nothing and carries the most. */
function carrierOf(relations: Relations, rows: readonly Row[]): string {
  const carried = (name: string) => relations.onIt(name).length;
  const free = rows.filter(({ part }) => restsOn(part).length === 0);
  return [...(free.length > 0 ? free : rows)].sort((a, b) => carried(b.part.name) - carried(a.part.name))[0]!.part.name;
}

function onlyOn(part: Part, carrier: string, group: readonly Row[]): boolean {
  const within = new Set(group.flatMap((row) => [row.part.name, ...row.inner.map(({ name }) => name)]));
  return restsOn(part).every((under) => under === carrier || within.has(under));
}

function footOf(group: readonly Row[], carrier: string, parts: readonly Part[]): string | null {
  const unders = group.flatMap(({ part }) => restsOn(part));
  const within = new Set(group.map(({ part }) => part.name));
  const outside = unders.filter((under) => !within.has(under) && parts.some(({ name }) => name === under));
  return outside.includes(carrier) ? carrier : (outside[0] ?? null);
}

/** Rows that hang together by any relation that is not one to the carrier. The carrier itself is in none. */
function groupsOf(relations: Relations, rows: readonly Row[], carrier: string): Row[][] {
  const { family } = relations;
  const rowOf = new Map(rows.flatMap((row) => [row.part, ...row.inner].map((part) => [part.name, row] as const)));
  const leader = new Map<Row, Row>(rows.map((row) => [row, row]));
  const find = (row: Row): Row => {
    let at = row;
    while (leader.get(at) !== at) at = leader.get(at)!;
    return at;
  };
  const tie = (a: string, b: string) => {
    const [one, other] = [rowOf.get(a), rowOf.get(b)];
    if (one === undefined || other === undefined || [one, other].some(({ part }) => part.name === carrier)) return;
    if (one.part.suppliedLoose || other.part.suppliedLoose) return;
    const [first, second] = [find(one), find(other)].sort((x, y) => rows.indexOf(x) - rows.indexOf(y));
    leader.set(second!, first!);
  };
  for (const part of family.parts) {
    for (const other of [...restsOn(part), ...part.holds, ...part.matchedTo, ...part.balancedWith])
      tie(part.name, other);
  }
  // A chain of parts belongs to the joint that closes over it.
  for (const { part } of family.joints) for (const closed of relations.closure(part)) tie(part, closed);
  for (const { part, lockedBy } of family.adjusters) if (lockedBy !== null) tie(part, lockedBy);
  const groups = new Map<Row, Row[]>();
  for (const row of rows) {
    if (row.part.name === carrier) continue;
    const group = groups.get(find(row)) ?? [];
    groups.set(find(row), [...group, row]);
  }
  return [...groups.values()];
}
