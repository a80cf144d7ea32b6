/** What a job has written down is in its boxes, and the sheet says no more than the readings call for. */
import { describe, expect, it } from 'vitest';
import type { Sheet, StepBlock } from '../../language/documents/model.ts';
import { blockTexts } from '../../language/documents/texts.ts';
import { wordsIn } from '../../language/i18n/index.ts';
import type { Result } from '../../language/model/job.ts';
import { libraryPrints } from './prints.ts';

const words = wordsIn('en');
const prints = libraryPrints('a4').filter(({ options }) => options.job !== null);
const named = (name: string) => prints.find((print) => print.name.includes(name))!.sheet;
const steps = ({ blocks }: Sheet) => blocks.filter((block): block is StepBlock => block.kind === 'step');
const stepOf = (sheet: Sheet, number: string) => steps(sheet).find((step) => step.number === number)!;

/** Everything that a sheet says about one unit: its row on the front, its column of boxes, its lines of the log. */
function saidOf(sheet: Sheet, index: number): string[] {
  const { place } = sheet.columns[index]!;
  return sheet.blocks.flatMap((block) => {
    if (block.kind === 'step')
      return [...block.rows.flatMap(({ boxes }) => boxes[index] ?? ''), ...readAtPlaces(block, sheet, place)];
    if (block.kind === 'log')
      return block.units
        .filter((unit) => unit.place === place)
        .flatMap(({ lines }) => lines.flatMap(({ cells }) => cells));
    if (block.kind !== 'table') return [];
    return block.rows.filter(([first]) => first!.text === place).flatMap((row) => row.map(({ text }) => text));
  });
}

/** What tables of points and places say of a unit: its own table, its row, or its column. */
function readAtPlaces({ tables }: StepBlock, { columns }: Sheet, place: string): string[] {
  const unit = `${words.units.place} ${place}`;
  return tables.flatMap(({ title, columns: heads, rows }) => {
    const own = rows.filter(([first]) => first!.text === place);
    if (own.length > 0) return own.flat().map(({ text }) => text);
    const at = heads.findIndex(({ head }) => head === unit);
    if (at >= 0) return rows.map((row) => row[at]!.text);
    return columns.length === 1 || title.endsWith(unit) ? rows.flat().map(({ text }) => text) : [];
  });
}

/** What must be read of a result. */
function wantedOf(result: Result): string[] {
  switch (result.form) {
    case 'reading':
      return [words.number(result.value.number), ...(result.text === null ? [] : [result.text])];
    case 'torque':
      return [words.number(result.value.number)];
    case 'shim':
      return [words.number(result.size.number)];
    case 'verdict':
      return [result.passed ? '✓' : '✗'];
    case 'renewed':
      return ['new '];
    case 'words':
    case 'remark':
      return [result.text];
    case 'fact':
      return [result.text, result.label, result.by, result.on].filter((one) => one !== null);
    case 'done':
      return [result.by, result.on ?? ''];
  }
}

describe.each(prints)('$name', ({ sheet, options }) => {
  it('shows every result of a unit with that unit', () => {
    const units = options.job!.units;
    const lost = units.flatMap((unit, index) => {
      const said = saidOf(sheet, index).join(' | ');
      return unit.results.flatMap(wantedOf).filter((wanted) => !said.includes(wanted));
    });
    expect(units.flatMap(({ results }) => results).length).toBeGreaterThan(4);
    expect(lost).toEqual([]);
  });
});

describe('a job in work', () => {
  const sheet = named('2207');
  it('has its readings in the boxes of their steps, and the others are empty', () => {
    expect(stepOf(sheet, '2.3').rows[0]!.boxes).toEqual(['214', '226', '', '', '', '']);
    expect(stepOf(sheet, '3.5').rows[0]!.boxes).toEqual(['1.30', '1.34', '', '', '', '']);
  });
  it('says which shims to fit beside the log, and of how many units the spread is expected', () => {
    const log = sheet.blocks.find((block) => block.kind === 'log')!;
    expect(log.advice.map(({ text }) => text.replaceAll('\u00a0', ' '))).toEqual([
      'Fit 1.50 mm (now 1.30 mm): expect 255 bar',
      'Fit 1.48 mm (now 1.34 mm): expect 255 bar',
    ]);
    expect(blockTexts(stepOf(sheet, '10.1')).join(' ')).toContain('2 of 5 units read');
  });
});

describe('a job that is done', () => {
  const sheet = named('2198');
  const log = sheet.blocks.find((block) => block.kind === 'log')!;
  it('prints a done card: a line of the log for each time on test, with what was changed before it', () => {
    const lines = log.units[3]!.lines.map(({ cells }) => cells.slice(0, 7).join(', '));
    expect(lines.slice(0, 2)).toEqual([
      'as built, 1.32, 1.36, 59, 252, ✗, ',
      'new nozzle, new needle, 1.36, 1.38, 60, 254, ✓, ✓',
    ]);
  });
  it('sends no unit back where all pass and the spread is kept', () => {
    expect(log.advice).toEqual([]);
    const match = blockTexts(stepOf(sheet, '10.1')).join(' ');
    expect(match).not.toMatch(/Shims for the set|fit/iu);
  });
  it('names who worked on it beside the room for initials', () => {
    const people = sheet.blocks.find((block) => block.kind === 'table' && block.title === 'Who worked on this job');
    expect(blockTexts(people!)).toEqual(expect.arrayContaining(['R. Abel', 'M. Ortiz']));
  });
  it('compares the set before it is signed for', () => {
    const order = steps(sheet).map(({ verb }) => verb);
    expect(order.indexOf('across')).toBeLessThan(order.indexOf('sign-off'));
    expect(stepOf(sheet, '11.3').sign!.boxes.map(({ label }) => label)).toEqual([
      'Units released',
      'Units on hold',
      'Name',
      'Signature',
      'Date, time',
    ]);
  });
});
