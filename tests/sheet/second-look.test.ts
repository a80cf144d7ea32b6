/** What is written down once more after a repair, where the unit goes on, and what is said about tests that fail. */
import { describe, expect, it } from 'vitest';
import { checkFiles } from '../../language/db/workspace.ts';
import type { Block, Sheet, StepBlock } from '../../language/documents/model.ts';
import { blockTexts, spanText } from '../../language/documents/texts.ts';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import { instead, procedureWith } from '../fixtures/sound-procedure.ts';
import { libraryPrints } from './prints.ts';

const prints = libraryPrints('a4');
const sheetNamed = (name: string) => prints.find((print) => print.name.startsWith(name))!.sheet;
const oneSpring = sheetNamed('rebuild-one-spring, job 2207');

function madeOf(change: Parameters<typeof procedureWith>[0]): Sheet {
  const { procedures } = checkFiles([{ uri: 'x', text: procedureWith(change) }]);
  const { procedure } = procedures[0]!;
  return buildSheet(procedure, { job: null, number: null, paper: 'a4', draft: false, diagnostics: [], hash: '' });
}

const stepOf = (sheet: Sheet, number: string) =>
  sheet.blocks.find((block): block is StepBlock => block.kind === 'step' && block.number === number)!;
const placeAt = (sheet: Sheet, number: string) =>
  sheet.blocks.findIndex((block) => block.kind === 'place' && block.number === number);
/** The blocks of a stage or repair, without its head. */
function blocksOf(sheet: Sheet, number: string): Block[] {
  const at = placeAt(sheet, number);
  const rest = sheet.blocks.slice(at + 1);
  const end = rest.findIndex((block) => block.kind === 'place' || block.kind === 'heading');
  return rest.slice(0, end < 0 ? rest.length : end);
}
const rowsOf = (sheet: Sheet, number: string) => {
  const grid = blocksOf(sheet, number).findLast((block) => block.kind === 'grid')!;
  return grid.kind === 'grid'
    ? grid.grids[0]!.rows.map(({ label, unit }) => [label, unit].join(', ').replace(/, $/u, ''))
    : [];
};
const backOf = (sheet: Sheet, number: string) => {
  const place = sheet.blocks[placeAt(sheet, number)]!;
  return place.kind === 'place' ? place.facts.find(({ label }) => label === 'Then')!.text : '';
};
const texts = (sheet: Sheet, number: string) =>
  blocksOf(sheet, number).flatMap((block) => (block.kind === 'text' ? [block.text] : []));

describe('a second look', () => {
  it('has a box at each try: tests, checks and measures', () => {
    expect(rowsOf(oneSpring, 'R2')).toEqual([
      'R2.5e Torqued',
      '9.3 Opening pressure, bar',
      '9.4 Seat leak, pass or fail',
      '9.5 Chatter, pass or fail',
      '9.6 Spray, pass or fail',
      '9.7 Back leak, s',
      'Initials',
    ]);
    expect(rowsOf(oneSpring, 'R4')).toEqual(['8.3 Needle, pass or fail', 'Initials']);
    expect(rowsOf(oneSpring, 'R9')).toEqual(['6.4 Pressure spring, mm', 'Initials']);
    expect(rowsOf(oneSpring, 'R6').slice(0, 2)).toEqual([
      '6.1 End face of holder, Reuse / Lap / Reject',
      '6.1 Top face of spacer disc, Reuse / Lap / Reject',
    ]);
  });
  it('has all that is set and tightened again on the way back', () => {
    expect(rowsOf(sheetNamed('rebuild-pintle'), 'R2')).toEqual([
      'R2.5d Torqued',
      '9.3 As set, bar',
      '9.5 Torqued',
      '9.8 Torqued',
      '10.2 Opening pressure, bar',
      '10.3 Chatter, pass or fail',
      '10.4 Spray, pass or fail',
      '10.5 Seat leak, pass or fail',
      '10.6 Back leak, s',
      'Initials',
    ]);
  });
  it('is begun at a step that is named', () => {
    expect(backOf(oneSpring, 'R1')).toBe('retest from 9.3');
    expect(backOf(sheetNamed('rebuild-pintle'), 'R2')).toBe('retest from 9.3');
    expect(backOf(sheetNamed('rebuild-manual-nozzle'), 'R5')).toBe(
      'continue at the first of these that the unit has not passed as now built: 4.7, 4.8',
    );
  });
  it('across the set has boxes for each try', () => {
    expect(stepOf(oneSpring, '10.1').grids[0]!.columns.map(({ place }) => place)).toEqual([
      'Set',
      'Attempt 1',
      'Attempt 2',
      'Attempt 3',
    ]);
  });
});

describe('boxes', () => {
  it('stand for the torque of a lock nut, in the stage and in a repair', () => {
    const pintle = sheetNamed('rebuild-pintle');
    expect(stepOf(pintle, '9.5').grids[0]!.rows).toEqual([{ label: 'Torqued', unit: '' }]);
    expect(rowsOf(pintle, 'R1')).toContain('R1.7 Torqued');
  });
  it('stand for each of several faces, with the words for the verdict above', () => {
    const { grids, facts } = stepOf(oneSpring, '6.1');
    expect(grids[0]!.rows.map(({ label }) => label)).toEqual([
      'End face of holder',
      'Top face of spacer disc',
      'Bottom face of spacer disc',
      'Top face of nozzle',
    ]);
    expect(facts).toContainEqual({ label: 'Lap', text: 'stained or hazed' });
  });
  it('appear once where the set is worked together', () => {
    const done = (number: string) => blocksOf(oneSpring, number).find((block) => block.kind === 'grid')!;
    const columns = (block: Block) => (block.kind === 'grid' ? block.grids[0]!.columns.length : 0);
    expect([columns(done('9')), columns(done('10'))]).toEqual([6, 1]);
  });
  it('for tries have room for all units of a set', () => {
    expect(stepOf(oneSpring, '9.3').fail!.units).toBe(6);
  });
});

describe('tests that fail', () => {
  const all = 'Run every test in this stage first.';
  const others = 'A test that stops a unit says so; run all the others in this stage first.';
  const stop = 'If it fails, stop testing this unit.';
  it('wait for each other, unless one says that it stops the unit: never both', () => {
    expect(texts(oneSpring, '9')[0]).toContain(all);
    expect(stepOf(oneSpring, '9.3').fail!.stop).toBe('');
    const twoSpring = sheetNamed('rebuild-two-spring');
    expect(texts(twoSpring, '10')[0]).toContain(others);
    expect(texts(twoSpring, '10')[0]).not.toContain(all);
    expect(stepOf(twoSpring, '10.3').fail!.stop).toBe(stop);
    expect(stepOf(twoSpring, '10.6').fail!.stop).toBe('');
  });
  it('of checks, which are judged at once, no such thing is said', () => {
    expect(texts(oneSpring, '6').join()).not.toContain('first');
    expect(texts(oneSpring, '6').join()).toContain('Record the retest');
  });
});

describe('all', () => {
  const said = (line: string, change: Parameters<typeof procedureWith>[0] = {}) => {
    const sheet = madeOf({ ...change, clean: instead('remove nut', `remove nut\n ${line}`) });
    const step = sheet.blocks.find((block): block is StepBlock => block.kind === 'step' && block.number === '5.3')!;
    return blockTexts(step).join(' ');
  };
  it('names what is left of the unit: the washer was thrown away', () => {
    expect(said('keep all at tank "Own basket"')).toContain('Keep holder body, setting shim, ');
    expect(said('keep all at tank "Own basket"')).not.toMatch(/washer/iu);
    expect(said('check all "No crack"')).not.toMatch(/washer/iu);
  });
  it('says all parts where nothing is left out, and what is left out only where it is there', () => {
    expect(said('soak all in solvent')).toContain('Soak all parts in');
    expect(said('soak all in solvent except washer, needle')).toContain('all parts except needle in');
  });
  it('of all parts says so in the library too', () => {
    const sheet = sheetNamed('rebuild-one-spring, job 2207');
    expect(spanText(stepOf(sheet, '8.2').sentence)).toBe('Rinse all parts in calibration fluid to ISO 4113.');
  });
});
