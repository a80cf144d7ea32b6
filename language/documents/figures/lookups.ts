import type { Step } from '../../model/procedure.ts';
import type { Lookup } from '../model.ts';
import { objectWords, specTitle } from '../names.ts';
import type { PrintContext } from '../print-context.ts';
import { type ForNumbers, whoseWords } from './by-number.ts';
import type { HoldTable } from './hold-table.ts';
import type { ShimTable } from './shim-table.ts';

/** Part numbers before a title, unless it is for all of them. */
function titled(group: ForNumbers<unknown>, title: string): string {
  const whose = whoseWords(group);
  return whose === '' ? title : `${whose}: ${title}`;
}

/** The pressure to hold for each reading, in words. */
export function holdLookup({ procedure, words }: PrintContext, tables: readonly ForNumbers<HoldTable>[]): Lookup[] {
  return tables.map((group, index): Lookup => {
    const { spec, unit, pairs } = group.made;
    const { title, from, to } = words.lookup;
    return {
      // What is the same is said over the first.
      title:
        index > 0 ? whoseWords(group) : titled(group, title({ name: words.inSentence(specTitle(procedure, spec)) })),
      from: `${from}, ${words.wording.unit(unit, false)}`,
      to: `${to}, ${words.wording.unit(unit, false)}`,
      pairs: pairs.map(({ read, hold }) => ({ from: words.number(read.number), to: words.number(hold.number) })),
    };
  });
}

/** The change of a shim for each reading, in words; over a further one the part numbers and the aim. */
export function shimLookup(
  setting: PrintContext,
  { objects }: Step,
  group: ForNumbers<ShimTable>,
  isFurther = false,
): Lookup {
  const { procedure, words } = setting;
  const { test, unit, aim, drawerUnit, stairs } = group.made;
  const { lookup, number, quantity } = words;
  const title = lookup.shim({
    part: objectWords(setting, objects).join(', '),
    reading: words.inSentence(specTitle(procedure, test)),
    unit: words.wording.unit(unit, false),
    change: drawerUnit,
    aim: quantity(aim),
  });
  return {
    title: isFurther ? `${whoseWords(group)}: ${words.facts.target} ${quantity(aim)}` : titled(group, title),
    // Said in the title: the table fills the page.
    from: '',
    to: '',
    pairs: stairs.map(({ low, high, change }) => ({
      from: low.number === high.number ? number(low.number) : `${number(low.number)}–${number(high.number)}`,
      to: change === null ? lookup.ask : changeWords(setting, change.number),
    })),
  };
}

/** `+0.05`, `0`, `−0.05`. */
function changeWords({ words }: PrintContext, change: string): string {
  const size = Number(change);
  return size > 0 ? `+${words.number(change)}` : size === 0 ? '0' : words.number(change);
}

/** Width of a row of a table beside its head, and of a letter and the room about it: millimeters. */
const width = { row: 185, letter: 1.72, about: 1.1 } as const;

/** A long table in rows that fill the page, all of about the same length; the title is over the first. */
export function inRows(table: Lookup): Lookup[] {
  const letters = Math.max(...table.pairs.map(({ from, to }) => Math.max(from.length, to.length)));
  const columns = Math.max(4, Math.floor(width.row / (letters * width.letter + width.about)));
  const rows = Math.ceil(table.pairs.length / columns);
  const length = Math.ceil(table.pairs.length / rows);
  return Array.from({ length: rows }, (_, row) => ({
    ...table,
    title: row === 0 ? table.title : '',
    pairs: table.pairs.slice(row * length, (row + 1) * length),
  }));
}
