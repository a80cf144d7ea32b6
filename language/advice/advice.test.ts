import { describe, expect, it } from 'vitest';
import { checkFiles } from '../check.ts';
import { instead, procedureWith } from '../rules/sound-procedure.ts';
import { hintsOf } from './hints.ts';
import { matchLines, shimLines } from './report.ts';

/** A job of the example procedure, 3 bar per 0.001 in and shims by 0.05 mm, with such units. */
function job(units: string, change: Parameters<typeof procedureWith>[0] = {}) {
  const text = `${procedureWith(change)}\njob 7 of example at bench {\n${units}\n}\n`;
  const { jobs, findings, procedures } = checkFiles([{ uri: 'x', text }]);
  expect(findings.map(({ message }) => message)).toEqual([]);
  return { job: jobs[0]!, procedure: procedures[0]!.procedure, lines: text.split('\n') };
}

const plain = (lines: readonly string[]) => lines.map((line) => line.replaceAll('\u00a0', ' '));
const lines = (units: string) => plain(shimLines(job(units).job));

describe('what to fit, by the last reading', () => {
  it('goes by the shim that was in at the reading', () => {
    // 3 bar per 0.001 in is 118.11 bar/mm: 231 bar wants 0.161 mm more for 250 bar; 0.15 mm leaves 248.7, 0.20 mm 254.6.
    expect(lines('unit 1 number A-250 { shim out 1.30 mm  opening 231 bar }')).toEqual([
      'unit 1 A-250: opening 231 bar. Fit 1.50 mm (now 1.30 mm): expect 255 bar',
    ]);
    expect(lines('unit 1 number A-250 { opening 231 bar  shim out 1.30 mm }')).toEqual([
      'unit 1 A-250: opening 231 bar. Fit 1.50 mm (now 1.30 mm): expect 255 bar',
    ]);
    expect(lines('unit 1 number A-250 { opening 231 bar  shim in 1.50 mm  opening 247 bar }')).toEqual([
      'unit 1 A-250: opening 247 bar. Fit 1.55 mm (now 1.50 mm): expect 253 bar',
    ]);
  });

  it('goes by the limits of the part number', () => {
    expect(lines('unit 1 number A-220 { shim out 1.30 mm  opening 210 bar }')).toEqual([
      'unit 1 A-220: opening 210 bar. Fit 1.40 mm (now 1.30 mm): expect 222 bar',
    ]);
  });

  it('says what stands, what is on hold, and what is not known yet', () => {
    const known = 'no reading with its shim yet. Write into the job, for instance: shim out 1.30 mm   opening 231 bar';
    expect(
      lines(`unit 1 number A-250 serial 0411 { shim in 1.50 mm  opening 253 bar }
        unit 2 number A-250 { opening 231 bar }
        unit 3 number A-250 { opening 231 bar  shim in 1.50 mm }
        unit 4 number A-250 { on hold "cracked" }`),
    ).toEqual([
      'unit 1 A-250 0411: opening 253 bar, inside its window: it stays',
      `unit 2 A-250: ${known}`,
      `unit 3 A-250: ${known}`,
      'unit 4 A-250: on hold, cracked',
    ]);
  });

  it('says where 95 of 100 readings fall, where the rate is written with its standard error', () => {
    const specs = instead('3 bar per 0.001 in', '100 bar per mm ±8');
    const made = job('unit 1 number A-250 { shim out 1.30 mm  opening 231 bar }', { specs });
    // 0.20 mm more: 251 bar, doubt 0.2 · 8 = 1.6; 0.25 mm more: 256 bar, doubt 2, which lands more surely: 84 over 73 %.
    expect(plain(shimLines(made.job))).toEqual([
      'unit 1 A-250: opening 231 bar. Fit 1.55 mm (now 1.30 mm): expect 256 bar, 252 to 260 bar',
    ]);
  });

  it('goes by what is in the drawer, and lays two on each other where the stock says so', () => {
    const shop = (stock: string) => ({ shop: instead('from 1.00 mm to 1.95 mm by 0.05 mm', stock) });
    const units = 'unit 1 number A-250 { shim out 1.30 mm  opening 231 bar }';
    const of = (stock: string) => plain(shimLines(job(units, shop(stock)).job))[0];
    expect(of('of 1.44 mm, 1.50 mm (0), 1.48 mm')).toMatch(/Fit 1\.48 mm/u);
    expect(of('of 0.70 mm, 0.75 mm, 0.80 mm stacks of two')).toMatch(
      /Fit 0\.70 mm and 0\.80 mm|Fit 0\.75 mm and 0\.75 mm/u,
    );
  });

  it('sets a unit with a new spring so much higher that it stays in its window when it has settled', () => {
    const specs = instead('250 bar +8 -0', '250 bar +8 -0, settling 4 bar');
    const of = (results: string) =>
      plain(shimLines(job(`unit 1 number A-250 { ${results} }`, { specs }).job))[0]!.replace('unit 1 A-250: ', '');
    const out = 'shim out 1.30 mm  opening 231 bar';
    expect(of(out)).toBe('opening 231 bar. Fit 1.50 mm (now 1.30 mm): expect 255 bar');
    expect(of(`renewed spring, nozzle  ${out}`)).toBe(
      'opening 231 bar. Fit 1.50 mm (now 1.30 mm): expect 255 bar; with the new spring settled, 251 bar',
    );
    // In the window now, and under it soon: 252 − 4.
    expect(of('renewed spring  shim in 1.50 mm  opening 252 bar')).toMatch(/^opening 252 bar\. Fit 1\.55 mm/u);
    expect(of('renewed nozzle  shim in 1.50 mm  opening 252 bar')).toBe('opening 252 bar, inside its window: it stays');
  });

  it('says why nothing fits', () => {
    expect(lines('unit 1 number A-250 { shim out 1.90 mm  opening 200 bar }')[0]).toMatch(
      /No shim is thick enough: 1\.95 mm gives 206 bar\. Look at the spring/u,
    );
    expect(lines('unit 1 number A-250 { shim out 1.00 mm  opening 300 bar }')[0]).toMatch(/No shim is thin enough/u);
  });
});

describe('shims for a set', () => {
  it('bring every unit into its window with the least spread, by part number', () => {
    const set = job(`unit 1 number A-250 { shim out 1.30 mm  opening 231 bar }
      unit 2 number A-250 { shim out 1.30 mm  opening 237 bar }
      unit 3 number A-250 { shim in 1.40 mm  opening 254 bar }
      unit 4 number A-220 { shim out 1.30 mm  opening 210 bar }`);
    // 231 → 254.6 with 1.50; 237 → 254.7 with 1.45; unit 3 keeps its own: the spread is 0.7 bar.
    expect(plain(matchLines(set.job))).toEqual([
      'opening, A-250: 3 units',
      '  unit 1 A-250: fit 1.50 mm (now 1.30 mm): expect 255 bar',
      '  unit 2 A-250: fit 1.45 mm (now 1.30 mm): expect 255 bar',
      '  unit 3 A-250: 1.40 mm stays: 254 bar',
      '  spread 0.8 bar: no other choice from this drawer has less',
      'opening, A-220: 1 unit',
      '  unit 4 A-220: fit 1.40 mm (now 1.30 mm): expect 222 bar',
      '  spread 0.0 bar: no other choice from this drawer has less',
    ]);
  });

  it('say so where one cannot be brought in, or nothing was read', () => {
    const far = job('unit 1 number A-250 { shim out 1.90 mm  opening 200 bar }');
    expect(matchLines(far.job)[0]).toMatch(/Not every one can be brought into its window from this drawer/u);
    expect(matchLines(job('unit 1 number A-250').job)[0]).toMatch(/^No unit of this job has a reading/u);
  });
});

describe('beside the text', () => {
  it('stands what to fit at the reading it goes by, and what one step of the drawer brings at a choice', () => {
    const made = job(
      '  unit 1 number A-250 {\n    shim out 1.30 mm   opening 231 bar\n  }\n  unit 2 number A-250 { shim in 1.5 mm  opening 253 bar }',
    );
    const hints = hintsOf([made.procedure], [made.job]).map(({ source, text }) => [
      made.lines[source.range.end.line]!.slice(0, source.range.end.character).trim(),
      text.replaceAll('\u00a0', ' '),
    ]);
    expect(hints).toContainEqual(['shim out 1.30 mm   opening 231 bar', 'Fit 1.50 mm (now 1.30 mm): expect 255 bar']);
    expect(hints).toContainEqual([
      'choose shim to bring opening to opening by shim-rate',
      'one step of 0.05 mm brings 5.91 bar',
    ]);
    expect(hints.some(([line]) => line!.includes('253 bar'))).toBe(false);
  });

  it('stands nothing where the drawer is uneven', () => {
    const shop = instead('from 1.00 mm to 1.95 mm by 0.05 mm', 'of 1.00 mm, 1.05 mm, 1.11 mm');
    const made = job('unit 1 number A-250', { shop });
    expect(hintsOf([made.procedure], [made.job])).toEqual([]);
  });
});
