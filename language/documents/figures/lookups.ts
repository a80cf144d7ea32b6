import type { Step } from '../../model/procedure.ts';
import { capital } from '../../model/titles.ts';
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
        index > 0
          ? whoseWords(group)
          : titled(
              group,
              title({
                name: words.inSentence(specTitle(procedure, spec)),
                unit: words.wording.unit(unit, false),
              }),
            ),
      from,
      to,
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
  const { words } = setting;
  const { aim, stairs } = group.made;
  const { lookup, number, quantity } = words;
  const title = shimTitle(setting, objects, group.made, quantity(aim));
  return {
    title: isFurther
      ? `${whoseWords(group)}: ${words.facts.target} ${quantity(aim)}`
      : whoseWords(group) === ''
        ? capital(title)
        : titled(group, title),
    // Said in the title: the table fills the page.
    from: '',
    to: '',
    pairs: stairs.map(({ low, high, change }) => ({
      from: low.number === high.number ? number(low.number) : `${number(low.number)}–${number(high.number)}`,
      to: change === null ? lookup.ask : changeWords(setting, change.number),
    })),
  };
}

function shimTitle(
  setting: PrintContext,
  objects: Step['objects'],
  { test, unit, drawerUnit }: ShimTable,
  aim: string,
): string {
  const { procedure, words } = setting;
  return words.lookup.shim({
    part: objectWords(setting, objects).join(', '),
    reading: words.inSentence(specTitle(procedure, test)),
    unit: words.wording.unit(unit, false),
    change: drawerUnit,
    aim,
  });
}

/** `+0.05`, `0`, `−0.05`. */
function changeWords({ words }: PrintContext, change: string): string {
  const size = Number(change);
  return size > 0 ? `+${words.number(change)}` : size === 0 ? '0' : words.number(change);
}

/**
 * Shim tables of several part numbers in one: the change is the last row, and each has a row of its readings
 * over it. Those with other changes stay apart.
 */
export function shimLookups(
  setting: PrintContext,
  step: Step,
  groups: readonly ForNumbers<ShimTable>[],
): readonly Lookup[] {
  const tables = groups.map((group, index) => shimLookup(setting, step, group, index > 0));
  const changes = tables
    .map(({ pairs }) => pairs.map(({ to }) => to))
    .reduce<readonly string[]>((longest, one) => (one.length > longest.length ? one : longest), []);
  const fits = ({ pairs }: Lookup) =>
    new Set(pairs.map(({ to }) => to)).size === pairs.length && pairs.every(({ to }) => changes.includes(to));
  const units = new Set(groups.map(({ made: { unit, drawerUnit } }) => `${unit} ${drawerUnit}`));
  if (tables.length < 2 || units.size > 1 || !tables.every(fits)) return tables;
  const rows = tables.map(({ pairs }, index) => ({
    from: whoseWords(groups[index]!),
    reads: changes.map((change) => pairs.find(({ to }) => to === change)?.from ?? ''),
  }));
  const [first, ...besides] = rows;
  const aims = groups.map((group) => `${whoseWords(group)} ${setting.words.quantity(group.made.aim)}`);
  return [
    {
      title: capital(shimTitle(setting, step.objects, groups[0]!.made, aims.join(', '))),
      from: first!.from,
      to: groups[0]!.made.drawerUnit,
      pairs: changes.map((to, at) => ({ from: first!.reads[at]!, to })),
      besides,
    },
  ];
}

/** Width of a row of a table beside its head, and of a letter and the room about it: millimeters. */
const width = { row: 185, letter: 1.72, about: 1.1 } as const;

/** A long table in rows that fill the page, all of about the same length; the title is over the first. */
export function inRows(table: Lookup): Lookup[] {
  const besides = table.besides ?? [];
  const letters = Math.max(
    ...table.pairs.map(({ from, to }) => Math.max(from.length, to.length)),
    ...besides.flatMap(({ reads }) => reads.map((read) => read.length)),
  );
  const head = Math.max(table.from.length, table.to.length, ...besides.map(({ from }) => from.length));
  const row = width.row - (head === 0 ? 0 : head * width.letter + width.about);
  const columns = Math.max(4, Math.floor(row / (letters * width.letter + width.about)));
  const rows = Math.ceil(table.pairs.length / columns);
  const length = Math.ceil(table.pairs.length / rows);
  return Array.from({ length: rows }, (_, nth) => ({
    ...table,
    title: nth === 0 ? table.title : '',
    pairs: table.pairs.slice(nth * length, (nth + 1) * length),
    ...(besides.length === 0
      ? {}
      : {
          besides: besides.map(({ from, reads }) => ({ from, reads: reads.slice(nth * length, (nth + 1) * length) })),
        }),
  }));
}
