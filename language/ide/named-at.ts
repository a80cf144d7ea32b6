import type { CheckResult } from '../db/workspace.ts';
import { contains } from '../model/ranges.ts';
import type { Position, Range, Source } from '../model/source.ts';
import { type Declared, declaredIn } from './declared.ts';

/** A name at a place, and what it leads to: several where it is in a sequence that several procedures call. */
export interface Named {
  readonly range: Range;
  readonly targets: readonly Target[];
}

interface Target {
  /** Where the name is declared. */
  readonly place: Source;
  readonly declared: Declared | null;
}

/** The name that is used or declared at a place; null where there is none. */
export function namedAt(result: CheckResult, file: string, position: Position): Named | null {
  const links = result.linksIn(file).filter(({ use }) => contains(use.range, position));
  const [link] = links;
  if (link === undefined) {
    const declared = declaredIn(result, file).find(
      ({ symbol }) => isNamed(symbol.kind) && contains(symbol.nameRange, position),
    );
    if (declared === undefined) return null;
    const range = declared.symbol.nameRange;
    return { range, targets: [{ place: { file, range }, declared }] };
  }
  const places = new Map(links.map((one) => [placeKey(one.target), one] as const));
  const targets = [...places.values()].map((one): Target => {
    const there = declaredIn(result, one.target.file).filter(({ symbol }) =>
      contains(symbol.nameRange, one.target.range.start),
    );
    const declared =
      there.find(({ symbol }) => symbol.kind === one.what) ?? there.find(({ symbol }) => symbol.name === one.name);
    return { place: one.target, declared: declared ?? there[0] ?? null };
  });
  return { range: link.use.range, targets };
}

function placeKey({ file, range }: Source): string {
  return `${file}:${range.start.line}:${range.start.character}`;
}

/** Steps are declared and have no name that is used elsewhere. */
function isNamed(kind: string): boolean {
  return kind !== 'step' && kind !== 'only';
}
