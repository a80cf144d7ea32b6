/** Advice on the library: for an adjusting screw, and for a set of units with shims. */
import { describe, expect, it } from 'vitest';
import { checkFiles } from '../language/db/workspace.ts';
import { renderText } from '../language/documents/renderers/index.ts';
import { buildSheet } from '../language/documents/traveler/index.ts';
import { fullMessage } from '../language/model/diagnostic.ts';
import { buildHints } from '../language/recommendations/hints.ts';
import { matchLines, shimLines } from '../language/recommendations/report.ts';
import { libraryFiles } from './library.ts';

const plain = (lines: readonly string[]) => lines.map((line) => line.replaceAll('\u00a0', ' '));

/** The library with a job of such units, and with the family's rate of the screw written so. */
function checked(units: string, rate = '25 bar per turn') {
  const uri = 'job.rebuild';
  const job = `job 9 of rebuild-pintle revision A at bench-two {\n${units}\n}\n`;
  const files = libraryFiles(true).map((file) => ({ ...file, text: file.text.replace('25 bar per turn', rate) }));
  const { diagnostics, jobs, procedures } = checkFiles([...files, { uri, text: job }]);
  const procedure = procedures.find((one) => one.procedure.name === 'rebuild-pintle')!.procedure;
  return { diagnostics, procedure, job: jobs.find(({ name }) => name === '9')! };
}

const units = `  unit 1 number pin-130 { opening 98 bar }
  unit 2 number pin-150 { opening 161.5 bar }
  unit 3 number pin-130 { as found opening 90 bar }
  unit 4 number pin-130 { opening 132 bar }`;

// 98 to 133 bar at 25 bar per turn is 1.4 turns, 504°; 161.5 to 153 is 122.4°: to the nearest 15°.
const inward = 'Turn it 1 turn and 150° in: expect 133 bar';
const outward = 'Turn it 120° out: expect 153 bar';

describe('how far to turn an adjusting screw', () => {
  it('is given for each unit by its part number, and not by what was found', () => {
    expect(plain(shimLines(checked(units).job))).toEqual([
      `unit 1 pin-130: opening 98 bar. ${inward}`,
      `unit 2 pin-150: opening 161.5 bar. ${outward}`,
      'unit 3 pin-130: no reading of opening yet. Write into the job, for instance: opening 98 bar',
      'unit 4 pin-130: opening 132 bar, inside its window: it stays',
    ]);
  });

  it('uses the limit with a new spring where one went in', () => {
    // 135 to 141 bar with a new spring: 132 bar is under it. 6 bar to the middle, at 25 bar per turn: 86°.
    const renewed = '  unit 1 number pin-130 { renewed spring  opening 132 bar }';
    expect(plain(shimLines(checked(renewed).job))).toEqual([
      'unit 1 pin-130: opening 132 bar. Turn it 90° in: expect 138 bar',
    ]);
  });

  it('is beside the reading, and on the sheet of the job at each step that sets it', () => {
    const { job, procedure } = checked(units);
    expect(plain(buildHints([], [job]).map(({ text }) => text))).toEqual([inward, outward]);
    const sheet = buildSheet(procedure, { job, number: null, paper: 'a4', draft: false, diagnostics: [], hash: '' });
    const texts = plain(renderText(sheet));
    expect(texts.filter((text) => text.includes(inward))).toHaveLength(2);
    expect(texts.filter((text) => text.includes('25 bar per turn in'))).toHaveLength(2);
  });

  it('asks for no match of a set: a screw goes anywhere', () => {
    expect(matchLines(checked(units).job)[0]).toMatch(/there is nothing to match/u);
  });

  it.each(['0 bar per turn', '25 bar', '96 bar per mm'])('refuses a turn that brings %s', (rate) => {
    const { diagnostics, job } = checked(units, rate);
    const told = diagnostics.filter((one) => fullMessage(one).includes('how much one turn in adds'));
    expect(told).toHaveLength(1);
    expect(shimLines(job)).toHaveLength(1);
  });
});

it('the sheet of a job says which shims bring the set together', () => {
  const { jobs, procedures } = checkFiles(libraryFiles(true));
  const job = jobs.find(({ name }) => name === '2207')!;
  const { procedure } = procedures.find((one) => one.procedure.name === job.procedure.name)!;
  const sheet = buildSheet(procedure, { job, number: null, paper: 'a4', draft: false, diagnostics: [], hash: '' });
  // 231 bar with 1.30 and 238 bar with 1.34 mm, at 118.11 bar/mm: 254.62 and 254.53 bar.
  const texts = plain(renderText(sheet));
  const at = texts.indexOf('Shims for the set, A-250');
  expect(texts[at + 1]).toBe('unit 1 1.50 mm, unit 2 1.48 mm; spread 0.1 bar expected, 2 of 5 units read');
});

it('a set that is done is left alone: job 2198 reads 252 to 255 bar, and may spread by 5', () => {
  const { jobs, procedures } = checkFiles(libraryFiles(true));
  const job = jobs.find(({ name }) => name === '2198')!;
  const { procedure } = procedures.find((one) => one.procedure.name === job.procedure.name)!;
  expect(plain(matchLines(job))).toEqual([
    expect.stringMatching(
      /^opening, A-250: 6 of 6 units read, all inside their window, spread 3\.0 bar measured .*: nothing to do$/u,
    ),
  ]);
  const sheet = buildSheet(procedure, { job, number: null, paper: 'a4', draft: false, diagnostics: [], hash: '' });
  const texts = plain(renderText(sheet));
  expect(texts).not.toContain('Shims for the set, A-250');
});

it('the table of the manual is in the unit of its gauge, psi, and says what to do beyond it', () => {
  const { procedures } = checkFiles(libraryFiles(true));
  const { procedure } = procedures.find(
    (one) =>
      one.procedure.family.name === 'manual-nozzle' ||
      one.procedure.shop.stocks.some(({ name }) => name === 'shims-inch'),
  )!;
  const sheet = buildSheet(procedure, {
    job: null,
    number: null,
    paper: 'a4',
    draft: false,
    diagnostics: [],
    hash: '',
  });
  const texts = plain(renderText(sheet));
  expect(texts.find((text) => text.includes('change of '))).toMatch(
    /read, psi; under it, change of .* Outside the table: ask the lead\.$/u,
  );
});

describe('a shim that sets a length', () => {
  const job = (units: string) => {
    const text = `job 9 of rebuild-two-spring revision A at bench-two {\n${units}\n}\n`;
    return checkFiles([...libraryFiles(true), { uri: 'job.rebuild', text }]).jobs.find(({ name }) => name === '9')!;
  };

  it('does so one for one, and is given with the digits of its limit', () => {
    const lines = plain(shimLines(job('  unit 1 number two-175 { lift-shim out 0.50 mm  pre-lift 0.044 mm }')));
    // 0.016 mm to the aim of 0.060: 0.52 mm brings 0.064, 0.51 mm 0.054; 0.064 is nearer.
    expect(lines[0]).toBe('unit 1 two-175: pre-lift 0.044 mm. Fit 0.52 mm (now 0.50 mm): expect 0.064 mm');
    expect(lines.slice(1)).toEqual([
      expect.stringMatching(/^unit 1 two-175: no reading of first-opening with its shim-1 yet/u),
      expect.stringMatching(/^unit 1 two-175: no reading of second-opening with its shim-2 yet/u),
    ]);
  });
});
