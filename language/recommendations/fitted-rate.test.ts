import { describe, expect, it } from 'vitest';
import { ofProcedures } from '../../tests/fixtures/of-procedures.ts';
import { procedureWith } from '../../tests/fixtures/sound-procedure.ts';
import { checkFiles } from '../db/workspace.ts';
import { fittedRates } from './fitted-rate.ts';
import { rateLines } from './rate-report.ts';

function jobs(...units: string[]) {
  const all = units.map((unit, index) => `job ${index + 1} of example at bench {\n${unit}\n}\n`).join('');
  const { jobs: made, procedures, diagnostics } = checkFiles([{ uri: 'x', text: `${procedureWith()}\n${all}` }]);
  expect(ofProcedures(diagnostics).map(({ message }) => message)).toEqual([]);
  return { procedure: procedures[0]!.procedure, jobs: made };
}

const lines = (...units: string[]) => {
  const { procedure, jobs: all } = jobs(...units);
  return rateLines(procedure, all).map((line) => line.replaceAll('\u00a0', ' '));
};

// Exactly 100 bar/mm in both, but for 0.3 bar up and down in the first.
const first =
  'unit 1 number A-250 { opening 231.3 bar  shim out 1.30 mm  shim in 1.40 mm  opening 240.4 bar  shim in 1.50 mm  opening 251.3 bar }';
const second = 'unit 1 number A-250 { shim out 1.20 mm  opening 210 bar  shim in 1.50 mm  opening 240 bar }';

describe('the rate of a shim, fitted from jobs', () => {
  it('has one slope for all units and a height for each, with its standard error', () => {
    const { procedure, jobs: all } = jobs(first, second);
    const [rate] = fittedRates(procedure, all);
    // By hand: Σxy/Σx² = (−0.1 · 231.3 + 0.1 · 251.3 + 0.3 · 30 / 2) / (0.02 + 0.045) = 6.5 / 0.065.
    expect(rate!.fit!.slope).toBeCloseTo(100, 9);
    expect(rate!.fit).toMatchObject({ points: 5, units: 2, freedom: 2 });
    // Residuals 0.3, −0.6, 0.3 bar: Σ = 0.54 over freedom 2. The gauge has marks of 1 bar, and a shim of 0.01 mm is 1 bar:
    // 1/√12 each (uniform, half-width over √3: JCGM 100:2008, 4.3.7). In quadrature; over √(Σx² 0.065).
    expect(rate!.fit!.residual).toBeCloseTo(Math.sqrt(0.54 / 2 + 2 / 12), 9);
    expect(rate!.fit!.error).toBeCloseTo(Math.sqrt((0.54 / 2 + 2 / 12) / 0.065), 9);
    expect(rate!.jobs).toEqual(['1', '2']);
  });

  it('is not written down where its error is as large as it is', () => {
    const thrown =
      'unit 1 number A-250 { shim out 1.30 mm  opening 231 bar  shim in 1.45 mm  opening 232 bar  shim in 1.55 mm opening 228 bar  shim in 1.60 mm  opening 236 bar }';
    const told = lines(thrown, second.replace('opening 240', 'opening 213'));
    expect(told.join('\n')).toContain('The error is as large as the rate');
    expect(told.join('\n')).not.toContain('spec shim-rate');
  });

  it('is compared with the rate of the procedure, and can be copied as it is', () => {
    const told = lines(first, second);
    expect(told).toEqual([
      'opening by setting shim: 100 bar per mm, standard error 2.6 bar per mm; a reading scatters by 0.66 bar, its marks and digits included',
      '  from 5 readings of 2 units, jobs 1, 2',
      '  The procedure reckons with 118 bar per mm: 7.0 standard errors from it. Look for what was read wrong, or write the fitted one:',
      '  spec shim-rate  rate  100 bar per mm ±2.6  source "Fitted from 5 readings of 2 units, jobs 1, 2"',
    ]);
    const text = procedureWith({
      specs: (specs) => specs.replace(/^ *spec shim-rate.*$/mu, `    ${told[3]!.trim()}`),
    });
    expect(checkFiles([{ uri: 'x', text }]).diagnostics).toEqual([]);
  });

  it('is never surer than the marks of the gauge: readings that lie on a line are not exact', () => {
    const line =
      'unit 1 number A-250 { shim out 1.30 mm  opening 231 bar  shim in 1.40 mm  opening 241 bar  shim in 1.50 mm  opening 251 bar }';
    const [head, , against] = lines(line);
    // √(2/12) bar = 0.41 bar; over √(Σx² 0.02) = 2.9 bar per mm.
    expect(head).toMatch(/100 bar per mm, standard error 2\.9 bar per mm; a reading scatters by 0\.41 bar/u);
    expect(against).toMatch(/118 bar per mm: 6\.3 standard errors/u);
  });

  it('names a tenfold slip by job, unit and figure, and does not fit it', () => {
    const slipped =
      'unit 2 number A-250 { shim out 1.20 mm  opening 2100 bar  shim in 1.50 mm  opening 240 bar  shim in 1.40 mm  opening 230 bar }';
    const told = lines(first, slipped);
    expect(told[0]).toMatch(/^opening by setting shim: 100 bar per mm/u);
    expect(told[2]).toBe(
      '  Left out: unit 2 of job 2, opening 2100 bar, is off by a power of ten beside the others. Is it 210 bar? Put it right in the job.',
    );
    const thick = 'unit 3 number A-250 { shim out 13.0 mm  opening 231 bar  shim in 1.50 mm  opening 250 bar }';
    expect(lines(first, thick)[2]).toMatch(/unit 3 of job 2, a shim of 13\.0 mm, is off .* Is it 1\.30 mm\?/u);
  });

  it('leaves out readings as found, and units that were read with one shim', () => {
    const dirty = 'unit 1 number A-250 { as found opening 190 bar  shim out 1.30 mm  opening 231 bar }';
    expect(lines(first, second, dirty)[1]).toBe('  from 5 readings of 2 units, jobs 1, 2');
  });

  it('is not computed from too few readings, nor where a thicker shim changed nothing', () => {
    expect(lines(second)[0]).toMatch(/^opening by setting shim: too few readings\./u);
    const falling = first.replace('251.3', '221.3').replace('240.4', '225');
    expect(lines(falling)[2]).toMatch(/A thicker shim brought no more:/u);
  });
});
