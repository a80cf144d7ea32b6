import { factText, factTitle, makersWords } from '../../i18n/fact-words.ts';
import type { Words } from '../../i18n/index.ts';
import type { Result, Unit } from '../../model/job.ts';
import type { Asset } from '../../model/shop.ts';
import { namedIn, own } from '../../model/steps.ts';
import { capital, nameWords, partWords, titleOf } from '../../model/titles.ts';
import { limitText } from '../../quantities/index.ts';
import type { RangeLimit } from '../../quantities/types.ts';
import { assetsAt } from '../figures/scales.ts';
import type { TableBlock, TextBlock } from '../model.ts';
import { baseTitle, numberWords, stationTitle } from '../names.ts';
import { allSteps, type PrintContext, setSize, shownSteps, stageSteps } from '../print-context.ts';
import { accuracyWords, assetWords } from '../tools.ts';
import type { SheetContext } from './context.ts';

/** The units of the set, with what was found on them; on a blank sheet, lines to write them on. */
export function unitsTable(context: SheetContext): TableBlock {
  const { words, recorded } = context;
  const { place, number, serial, found, state, note } = words.units;
  const columns = [
    { head: place, share: 1.5 },
    { head: number, share: 3 },
    { head: serial, share: 1.7 },
    { head: found, share: 4.2 },
    { head: state, share: 2.6 },
    { head: note, share: 4.2 },
  ];
  const written = (text: string) => ({ text, fill: text === '' });
  const rows =
    context.options.job === null
      ? context.columns.map((column) => [
          { text: column.place, strong: true },
          ...Array.from({ length: 5 }, () => written('')),
        ])
      : context.units.map((unit) => [
          { text: unit.place, strong: true },
          { text: numberWords(context.procedure, unit.numberText), strong: true },
          serialCell(words, unit),
          written(foundWords(unit)),
          { ...written(unit.onHold ?? ''), strong: true },
          written([unit.note, ...recorded.left(unit).map((one) => leftWords(context, one))].filter(Boolean).join('. ')),
        ]);
  return { kind: 'table', title: words.units.title, columns, rows };
}

/** Remarks of a unit as it came in. */
function foundWords({ results }: Unit): string {
  return results
    .flatMap((result) => ('asFound' in result && result.asFound && result.text !== null ? [result.text] : []))
    .join('; ');
}

/** A result that has no box of its own. */
function leftWords({ procedure, words }: SheetContext, result: Result): string {
  const name = (of: string) => nameWords(procedure, of);
  const { certificate, boxes } = words;
  switch (result.form) {
    case 'reading':
      return `${result.asFound ? certificate.results.asFound({ name: name(result.name) }) : name(result.name)} ${words.quantity(result.value)}`;
    case 'words':
      return `${name(result.name)} ${result.text}`;
    case 'verdict':
      return `${name(result.name)} ${result.passed ? boxes.passed : boxes.failed}`;
    case 'shim':
      return `${(result.fitted ? boxes.in : boxes.out)({ part: name(result.part) })} ${words.quantity(result.size)}`;
    case 'torque':
      return `${certificate.results.torque({ part: name(result.part) })} ${words.quantity(result.value)}`;
    case 'renewed':
      return [
        words.log.renewed({ part: words.inSentence(partWords(procedure, result.part)) }),
        ...makersWords(result),
      ].join(', ');
    case 'remark':
      return result.asFound ? '' : result.text;
    case 'fact':
      return `${factTitle(words, result)}: ${factText(words, result, name)}`;
    case 'done':
      return `${certificate.units.done} ${result.on === null ? result.by : certificate.units.doneOn({ by: result.by, on: result.on })}`;
  }
}

/** Where the units go, and what is worn there: a row for each station, its stages in their order. */
export function routeTable(context: SheetContext): TableBlock | null {
  const { procedure, words } = context;
  const rows = new Map<string, { station: string | null; stages: string[] }>();
  for (const [index, stage] of procedure.stages.entries()) {
    if (shownSteps(context, stage).length === 0 && stage.steps.length > 0) continue;
    const key = stage.station ?? '';
    const row = rows.get(key) ?? { station: stage.station, stages: [] };
    row.stages.push(`${index + 1} ${capital(titleOf(stage))}`);
    rows.set(key, row);
  }
  if (rows.size === 0) return null;
  const { title, station, stages, wear } = words.route;
  const worn = (name: string | null) => procedure.shop.stations.find((one) => one.name === name)?.wear ?? '';
  return {
    kind: 'table',
    title,
    columns: [
      { head: station, share: 3 },
      { head: stages, share: 6 },
      { head: wear, share: 6 },
    ],
    rows: [...rows.values()].map((row) => [
      { text: row.station === null ? '' : stationTitle(procedure, row.station), strong: true },
      { text: row.stages.join(', ') },
      { text: worn(row.station) },
    ]),
  };
}

/** Whose initials are on the sheet, so many beside each other: who is known to have worked on it is named. */
export function peopleTable({ words, units }: SheetContext, across = 2): TableBlock {
  const { title, name, initials, signature } = words.people;
  const names = [
    ...new Set(
      units.flatMap(({ results }) => results.flatMap((result) => (result.form === 'done' ? [result.by] : []))),
    ),
  ];
  const rows = Math.max(2, Math.ceil(names.length / across));
  const three = (index: number) => [
    { text: names[index] ?? '', fill: names[index] === undefined },
    { text: '', fill: true },
    { text: '', fill: true },
  ];
  const heads = [
    { head: name, share: 3 },
    { head: initials, share: 1.2 },
    { head: signature, share: 2.6 },
  ];
  return {
    kind: 'table',
    title,
    columns: Array.from({ length: across }, () => heads).flat(),
    rows: Array.from({ length: rows }, (_, row) =>
      Array.from({ length: across }, (_at, at) => three(row + at * rows)).flat(),
    ),
  };
}

/** A unit without a serial says so: an empty box would be filled with a guess. */
function serialCell(words: Words, { serial, noSerial }: Unit) {
  if (serial === null && noSerial !== null)
    return { text: words.certificate.noSerial({ reason: noSerial }), fill: false };
  return { text: serial ?? '', fill: serial === null };
}

/** What the part numbers are called, on a blank sheet: with a job it is in the table of units. */
export function numberTitles(setting: PrintContext): TextBlock | null {
  const { options, numbers, words } = setting;
  if (options.job !== null || numbers.every(({ name, title }) => name === title)) return null;
  const titles = numbers.map(({ name }) => numberWords(setting.procedure, name)).join(', ');
  return { kind: 'text', text: `${words.units.number}: ${titles}`, strong: false };
}

/** Parts that are always renewed, and those that a step of a stage takes new. */
export function renewTable(setting: PrintContext): TableBlock | null {
  const { family } = setting.procedure;
  const named = new Set(
    stageSteps(setting)
      .filter(({ step }) => step.verb === 'renew')
      .flatMap(({ step }) => namedIn(step).map(({ name }) => name)),
  );
  const counts = new Map<string, number>();
  for (const part of family.parts) {
    if (part.renewed || named.has(part.name))
      counts.set(baseTitle(part), (counts.get(baseTitle(part)) ?? 0) + part.quantity);
  }
  if (counts.size === 0) return null;
  const { title, part, each, set, ready } = setting.words.renew;
  return {
    kind: 'table',
    title,
    columns: [
      { head: part, share: 6 },
      { head: each, share: 2 },
      { head: set, share: 2 },
      { head: ready, share: 2 },
    ],
    rows: [...counts].map(([name, count]) => [
      { text: name },
      { text: String(count) },
      { text: String(count * setSize(setting)), strong: true },
      { text: '', fill: true },
    ]),
  };
}

/**
 * Tools by number with range and calibration, then kinds of tool, whose number is written in; under them, in a line, what has
 * neither.
 */
export function toolBlocks(setting: PrintContext): (TableBlock | TextBlock)[] {
  const { procedure, words } = setting;
  const { title, tool, range, accuracy, due, number, other, kinds, besides } = words.tools;
  const assets = new Set<Asset>();
  const others = new Map<string, { name: string; range: string }>();
  const plain = new Set<string>();
  for (const step of allSteps(setting)) {
    for (const use of step.tools) {
      if (use.form === 'asset') {
        const asset = procedure.shop.assets.find(({ name }) => name === use.name);
        if (asset !== undefined) assets.add(asset);
        else others.set(use.name, { name: use.name, range: '' });
      } else if (use.form === 'kind') {
        const text = kindRange(words, use.range);
        others.set(`${use.kind} ${text}`, { name: kinds[use.kind], range: text });
      } else plain.add(use.text);
    }
    const holder = own(step, 'holder');
    if (holder != null) plain.add(holder);
  }
  for (const place of [...procedure.stages, ...procedure.repairs]) {
    if (
      shownSteps(setting, place).some(
        ({ verb }) => verb === 'test' || verb === 'read' || verb === 'set' || verb === 'across',
      )
    ) {
      for (const asset of assetsAt(procedure, place.station)) if (asset.kind === 'gauge') assets.add(asset);
    }
  }
  // Nothing is written on an instruction.
  const spare = setting.options.form === 'instruction' ? 0 : 1;
  const table: TableBlock = {
    kind: 'table',
    title,
    columns: [
      { head: tool, share: 4 },
      { head: range, share: 3 },
      { head: accuracy, share: 3 },
      { head: due, share: 2 },
      { head: number, share: 2 },
      ...Array.from({ length: spare }, () => ({ head: other, share: 2 })),
    ],
    rows: [
      ...[...assets].map((asset) => [
        { text: assetWords(asset, kinds), strong: true },
        { text: kindRange(words, asset.range) },
        { text: accuracyWords(words, asset) },
        { text: asset.due ?? '', fill: asset.due === null },
        { text: asset.name, strong: true },
        ...Array.from({ length: spare }, () => ({ text: '', fill: true })),
      ]),
      ...[...others.values()].map((one) => [
        { text: one.name, strong: true },
        { text: one.range },
        { text: '' },
        { text: '', fill: spare > 0 },
        { text: '', fill: spare > 0 },
        ...Array.from({ length: spare }, () => ({ text: '' })),
      ]),
    ],
  };
  return [
    ...(table.rows.length === 0 ? [] : [table]),
    ...(plain.size === 0
      ? []
      : [{ kind: 'text' as const, text: besides({ tools: [...plain].join('; ') }), strong: false }]),
  ];
}

function kindRange({ wording }: Words, range: RangeLimit | null): string {
  return range === null ? '' : limitText(range, wording);
}

/** Fluids that the steps use, with what burns. */
export function fluidsTable(setting: PrintContext): TableBlock | null {
  const { procedure, words } = setting;
  const used = new Set(allSteps(setting).map((step) => own(step, 'fluid')));
  const fluids = procedure.shop.fluids.filter(({ name }) => used.has(name));
  if (fluids.length === 0) return null;
  const { title, fluid, kind, flash, notStated, kinds } = words.fluids;
  return {
    kind: 'table',
    title,
    columns: [
      { head: fluid, share: 6 },
      { head: kind, share: 3 },
      { head: flash, share: 3 },
    ],
    rows: fluids.map((item) => [
      { text: capital(titleOf(item)), strong: true },
      { text: kinds[item.kind] },
      {
        text: item.flammable === null ? notStated : words.quantity(item.flammable),
      },
    ]),
  };
}
