/** What is written down once more after a repair, where the unit goes on, and what is said about tests that fail. */
import { describe, expect, it } from 'vitest';
import { checkFiles } from '../../language/db/workspace.ts';
import type { PlaceBlock, Sheet, StepBlock } from '../../language/documents/model.ts';
import { blockTexts } from '../../language/documents/texts.ts';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import { spanText } from '../../language/i18n/message.ts';
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
const stage = (sheet: Sheet, number: string) =>
  sheet.blocks.find((block) => block.kind === 'place' && block.number === number) as PlaceBlock;
const rowsOf = (sheet: Sheet, number: string) =>
  stepOf(sheet, number).rows.map(({ label, unit }) => [label, unit].join(', ').replace(/, $/u, ''));
const logOf = (sheet: Sheet) =>
  sheet.blocks.find((block) => block.kind === 'log')!.columns.map(({ step, name }) => `${step} ${name}`.trim());
/** Where a unit goes on after a repair, wherever that is said. */
function backOf(sheet: Sheet, number: string): string {
  const own = sheet.blocks.flatMap((block) =>
    block.kind === 'repairs'
      ? block.repairs.filter((one) => one.number === number).map(({ back }) => (back === '' ? block.back : back))
      : block.kind === 'step'
        ? (block.fail?.ways ?? []).flatMap(({ stops }) =>
            stops.filter((one) => one.number === number && one.steps.length > 0).map(({ back }) => back),
          )
        : [],
  );
  return own[0] ?? 'nowhere';
}

describe('a second look', () => {
  it('has a line of the log for each try: all that is changed, set, tightened and tested again', () => {
    expect(logOf(oneSpring)).toEqual([
      'Repair done',
      'Shim out',
      'Shim in',
      'Nozzle nut',
      '9.3 Opening pressure',
      '9.4 Seat leak',
      '9.5 Chatter',
      '9.6 Spray',
      '9.7 Back leak',
      'Initials',
    ]);
    expect(logOf(sheetNamed('rebuild-pintle'))).toEqual([
      'Repair done',
      '9.5 Lock nut',
      '9.8 Cap nut',
      'Nozzle nut',
      '9.3 Opening pressure',
      '10.2 Opening pressure',
      '10.3 Chatter',
      '10.4 Spray',
      '10.5 Seat leak',
      '10.6 Back leak',
      'Initials',
    ]);
  });
  it('of a check has a row for each try under the first', () => {
    expect(rowsOf(oneSpring, '8.3')).toEqual(['✓ or ✗', 'after R4']);
    expect(rowsOf(oneSpring, '6.1')).toEqual(['U / L / R + letter', 'after R6', 'after R6', 'after R6', 'after R5']);
    expect(rowsOf(oneSpring, '6.4')).toEqual(['Reading, mm', 'after R9, mm']);
  });
  it('is begun at a step that is named, unless the row for it is there', () => {
    expect(backOf(oneSpring, 'R1')).toBe('Then retest from 9.3');
    expect(backOf(oneSpring, 'R7')).toBe('');
    expect(backOf(sheetNamed('rebuild-pintle'), 'R2')).toBe('Then retest from 9.3');
    expect(backOf(sheetNamed('rebuild-manual-nozzle'), 'R5')).toBe(
      'then continue at the first of these that the unit has not passed as now built: 4.7, 4.8',
    );
  });
  it('across the set has boxes for each try, and each reading beside each other', () => {
    const { set, rows } = stepOf(oneSpring, '10.1');
    expect(set!.heads).toEqual(['first', 'after 1', 'after 2', 'after 3']);
    expect(set!.rows.map(({ label }) => label)).toEqual(['Spread', 'Unit furthest out']);
    // Both read outside their limit: they are read again before they are compared.
    expect(rows[0]!.boxes.slice(0, 3)).toEqual(['', '', '']);
    const done = libraryPrints('a4').find(({ name }) => name.includes('job 2198'))!.sheet;
    expect(stepOf(done, '10.1').rows[0]!.boxes).toEqual(['254', '253', '255', '254', '253', '252']);
  });
});

describe('a shim', () => {
  it('has an aim that is called what its spec is called, once, with its source', () => {
    const facts = oneSpring.blocks
      .filter((block) => block.kind === 'repairs')
      .flatMap(({ columns }) => columns)
      .flatMap(({ parts }) => parts)
      .flatMap(({ steps }) => steps)
      .find(({ step }) => step.verb === 'choose')!.step.facts;
    expect(facts.filter(({ label }) => /aim/iu.test(label)).map(({ label, text }) => `${label} ${text}`)).toEqual([
      'Aim for a new shim opening pressure A-250 254 bar, A-220 224 bar'.replaceAll(/ bar/gu, '\u00a0bar'),
    ]);
    expect(facts.find(({ label }) => label.startsWith('Aim'))!.sources).toHaveLength(1);
  });
  it('has a table whose caption begins with a capital', () => {
    const captions = prints.flatMap(({ sheet }) =>
      sheet.blocks.flatMap((block) => (block.kind === 'repairs' ? block.lookups.map(({ title }) => title) : [])),
    );
    expect(captions.filter((title) => title !== '').length).toBeGreaterThan(4);
    expect(captions.filter((title) => /^\p{Ll}/u.test(title) && !title.includes(': Aim'))).toEqual([]);
  });
});

describe('boxes', () => {
  it('stand for the torque of a lock nut', () => {
    expect(logOf(sheetNamed('rebuild-pintle'))).toContain('9.5 Lock nut');
  });
  it('have a letter for each of several faces, and the words for the verdicts', () => {
    const { sentence, facts, fail } = stepOf(oneSpring, '6.1');
    expect(spanText(sentence)).toContain('(a) end face of the holder, (b) top face of the spacer disc');
    expect(facts).toContainEqual({ label: 'U reuse', text: 'bright, even, no line' });
    expect(fail!.ways.map(({ mark, when }) => `${mark} ${when}`)).toEqual([
      'L lap: stained or hazed',
      'R reject: scored or pitted',
    ]);
  });
  it('appear once where the set is worked together', () => {
    expect(stepOf(oneSpring, '10.1').close!.boxes).toHaveLength(1);
    expect(stepOf(oneSpring, '3.9').close!.boxes).toHaveLength(6);
  });
  it('have a column of the log for each test', () => {
    const log = oneSpring.blocks.find((block) => block.kind === 'log')!;
    expect(log.units).toHaveLength(6);
    expect(log.units.every(({ lines }) => lines.length >= 4)).toBe(true);
  });
});

describe('tests that fail', () => {
  const all = 'Run every test in this stage first.';
  const others = 'A test that stops a unit says so; run all the others in this stage first.';
  const stop = 'If it fails, stop testing this unit.';
  it('wait for each other, unless one says that it stops the unit: never both', () => {
    expect(stage(oneSpring, '9').texts[0]).toContain(all);
    expect(stepOf(oneSpring, '9.3').fail!.stop).toBe('');
    const twoSpring = sheetNamed('rebuild-two-spring');
    expect(stage(twoSpring, '10').texts[0]).toContain(others);
    expect(stage(twoSpring, '10').texts[0]).not.toContain(all);
    expect(stepOf(twoSpring, '10.3').fail!.stop).toBe(stop);
    expect(stepOf(twoSpring, '10.6').fail!.stop).toBe('');
  });
  it('of checks, which are judged at once, no such thing is said', () => {
    expect(stage(oneSpring, '6').texts.join()).not.toContain('first');
    expect(stage(oneSpring, '6').texts.join()).toContain('in the row below');
  });
});

describe('all', () => {
  const said = (line: string, change: Parameters<typeof procedureWith>[0] = {}) => {
    const sheet = madeOf({ ...change, clean: instead('remove nut', `remove nut\n ${line}`) });
    const step = sheet.blocks.find((block): block is StepBlock => block.kind === 'step' && block.number === '5.3')!;
    return blockTexts(step).join(' ');
  };
  it('names what is left of the unit: the washer was thrown away', () => {
    expect(said('keep all at tank "Own basket"')).toContain('Keep all parts at wash tank');
    expect(said('keep all at tank "Own basket"')).not.toMatch(/washer/iu);
    expect(said('check all "No crack"')).not.toMatch(/washer/iu);
  });
  it('says all parts where nothing is left out, and what is left out only where it is there', () => {
    expect(said('soak all in solvent')).toContain('Soak all parts in');
    expect(said('soak all in solvent except washer, needle')).toContain('all parts except the needle in');
  });
  it('of all parts says so in the library too', () => {
    const sheet = sheetNamed('rebuild-one-spring, job 2207');
    expect(spanText(stepOf(sheet, '8.2').sentence)).toBe('Rinse all parts in calibration fluid to ISO 4113.');
  });
});
