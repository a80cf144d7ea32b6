import type { Words } from '../../i18n/index.ts';
import type { Unit } from '../../model/job.ts';
import type { Asset } from '../../model/shop.ts';
import { namedIn, own } from '../../model/steps.ts';
import { capital, titleOf } from '../../model/titles.ts';
import { limitText } from '../../quantities/index.ts';
import type { RangeLimit } from '../../quantities/types.ts';
import { assetsAt } from '../figures/scales.ts';
import type { TableBlock, TextBlock } from '../model.ts';
import { baseTitle, numberWords } from '../names.ts';
import { allSteps, type PrintContext, setSize, shownSteps, stageSteps } from '../print-context.ts';
import { accuracyWords, assetWords } from '../tools.ts';

/** The units of the set; on a blank sheet, lines to write them on. */
export function unitsTable(setting: PrintContext): TableBlock {
  const { words } = setting;
  const { place, number, serial, state, note } = words.units;
  const columns = [
    { head: place, share: 1.4 },
    { head: number, share: 3 },
    { head: serial, share: 3 },
    { head: state, share: 4 },
    { head: note, share: 4 },
  ];
  const rows =
    setting.options.job === null
      ? setting.columns.map((column) => [
          { text: column.place, strong: true },
          { text: '', fill: true },
          { text: '', fill: true },
          { text: '', fill: true },
          { text: '', fill: true },
        ])
      : setting.units.map((unit) => [
          { text: unit.place, strong: true },
          { text: numberWords(setting.procedure, unit.numberText), strong: true },
          serialCell(words, unit),
          {
            text: unit.onHold ?? '',
            fill: unit.onHold === null,
            strong: true,
          },
          { text: unit.note ?? '', fill: unit.note === null },
        ]);
  return { kind: 'table', title: words.units.title, columns, rows };
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
    if (part.renewed || named.has(part.name)) counts.set(baseTitle(part), (counts.get(baseTitle(part)) ?? 0) + 1);
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

/** Tools by number with range and calibration, then kinds of tool, whose number is written in. */
export function toolsTable(setting: PrintContext): TableBlock | null {
  const { procedure, words } = setting;
  const { title, tool, range, accuracy, due, number, kinds } = words.tools;
  const assets = new Set<Asset>();
  const others = new Map<string, { name: string; range: string; calibrated: boolean }>();
  for (const step of allSteps(setting)) {
    for (const use of step.tools) {
      if (use.form === 'asset') {
        const asset = procedure.shop.assets.find(({ name }) => name === use.name);
        if (asset !== undefined) assets.add(asset);
        else others.set(use.name, { name: use.name, range: '', calibrated: true });
      } else if (use.form === 'kind') {
        const text = kindRange(words, use.range);
        others.set(`${use.kind} ${text}`, {
          name: kinds[use.kind],
          range: text,
          calibrated: true,
        });
      } else others.set(use.text, { name: use.text, range: '', calibrated: false });
    }
    const holder = own(step, 'holder');
    if (holder != null)
      others.set(holder, {
        name: holder,
        range: '',
        calibrated: false,
      });
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
  if (assets.size + others.size === 0) return null;
  return {
    kind: 'table',
    title,
    columns: [
      { head: tool, share: 4 },
      { head: range, share: 3 },
      { head: accuracy, share: 3 },
      { head: due, share: 2 },
      { head: number, share: 2 },
    ],
    rows: [
      ...[...assets].map((asset) => [
        { text: assetWords(asset, kinds), strong: true },
        { text: kindRange(words, asset.range) },
        { text: accuracyWords(words, asset) },
        { text: asset.due ?? '', fill: asset.due === null },
        { text: asset.name, strong: true },
      ]),
      ...[...others.values()].map((other) => [
        { text: other.name, strong: true },
        { text: other.range },
        { text: '' },
        { text: '', fill: other.calibrated },
        { text: '', fill: other.calibrated },
      ]),
    ],
  };
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
