import type { Range } from '../../model/source.ts';
import type { DeclaredSymbol } from '../../semantics/symbols.ts';

const toolKinds: ReadonlySet<string> = new Set(['wrench', 'gauge', 'tool']);

/** The lines of a shop that declare its tools. They are facts of the shop, not of a procedure: they change with each calibration. */
export function toolsIn(shop: DeclaredSymbol): readonly DeclaredSymbol[] {
  return shop.children.filter(({ kind }) => toolKinds.has(kind));
}

/** A text with these ranges blank; every line keeps its number. */
export function blanked(text: string, ranges: readonly Range[]): string {
  return byRange(text, ranges, { inside: blank, outside: kept });
}

/** A text with all blank but these ranges; every line keeps its number. */
export function alone(text: string, ranges: readonly Range[]): string {
  return byRange(text, ranges, { inside: kept, outside: blank });
}

type Change = (part: string) => string;

const kept: Change = (part) => part;
const blank: Change = (part) => ' '.repeat(part.length);

function byRange(
  text: string,
  ranges: readonly Range[],
  { inside, outside }: { readonly inside: Change; readonly outside: Change },
): string {
  return text
    .split(/\r\n|\n|\r/u)
    .map((line, number) => {
      const cuts = ranges
        .filter(({ start, end }) => start.line <= number && number <= end.line)
        .map(({ start, end }): readonly [number, number] => [
          start.line === number ? start.character : 0,
          end.line === number ? end.character : line.length,
        ])
        .sort(([one], [other]) => one - other);
      let [at, made] = [0, ''];
      for (const [from, to] of cuts) {
        made += outside(line.slice(at, from)) + inside(line.slice(from, to));
        at = to;
      }
      return made + outside(line.slice(at));
    })
    .join('\n');
}
