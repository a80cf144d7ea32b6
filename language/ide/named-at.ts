import type { CheckResult } from '../db/workspace.ts';
import type { Position, Range, Source } from '../model/source.ts';
import { type Declared, declaredAt } from './declared.ts';

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
  const links = result.linksIn(file, position);
  const [link] = links;
  if (link === undefined) {
    const declared = declaredAt(result, file, position).find(({ symbol }) => isNamed(symbol.kind));
    if (declared === undefined) return null;
    const range = declared.symbol.nameRange;
    return { range, targets: [{ place: { file, range }, declared }] };
  }
  const places = new Map(links.map((one) => [placeKey(one.target), one] as const));
  const targets = [...places.values()].map((one): Target => {
    return {
      place: one.target,
      // Who only goes there does not ask what it is.
      get declared() {
        const there = declaredAt(result, one.target.file, one.target.range.start);
        const declared =
          there.find(({ symbol }) => symbol.kind === one.what) ?? there.find(({ symbol }) => symbol.name === one.name);
        return declared ?? there[0] ?? null;
      },
    };
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
