import type { Shop } from '../../model/shop.ts';
import type { Range } from '../../model/source.ts';
import type { DeclaredSymbol } from '../../semantics/symbols.ts';

const toolKinds: ReadonlySet<string> = new Set(['wrench', 'gauge', 'tool']);

/** The lines of a shop that declare its tools. They are facts of the shop, not of a procedure: they change with each calibration. */
export function toolsIn(shop: DeclaredSymbol): readonly DeclaredSymbol[] {
  return shop.children.filter(({ kind }) => toolKinds.has(kind));
}

/** An issued shop with its tools as they are today: a tool is judged by its own history, not by the day of the issue. */
export function issuedShop(issued: Shop, today: Shop | null): Shop {
  const bought = today?.assets ?? [];
  const names = new Set(bought.map(({ name }) => name));
  return { ...issued, assets: [...issued.assets.filter(({ name }) => !names.has(name)), ...bought] };
}

/** A text with these ranges blank; every line keeps its number. */
export function blanked(text: string, ranges: readonly Range[]): string {
  return text
    .split(/\r\n|\n|\r/u)
    .map((line, number) => {
      let made = line;
      for (const { start, end } of ranges) {
        if (number < start.line || end.line < number) continue;
        const from = start.line === number ? start.character : 0;
        const to = end.line === number ? end.character : line.length;
        made = made.slice(0, from) + ' '.repeat(to - from) + made.slice(to);
      }
      return made;
    })
    .join('\n');
}
