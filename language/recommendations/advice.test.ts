import { describe, expect, it } from 'vitest';
import { ofProcedures } from '../../tests/fixtures/of-procedures.ts';
import { instead, procedureWith } from '../../tests/fixtures/sound-procedure.ts';
import { checkFiles } from '../db/workspace.ts';
import { buildHints } from './hints.ts';
import { matchLines, shimLines } from './report.ts';

/** A job of the example procedure, 3 bar per 0.001 in and shims by 0.05 mm, with such units. */
function job(units: string, change: Parameters<typeof procedureWith>[0] = {}) {
  const text = `${procedureWith(change)}\njob 7 of example at bench {\n${units}\n}\n`;
  const { jobs, diagnostics, procedures } = checkFiles([{ uri: 'x', text }]);
  expect(ofProcedures(diagnostics).map(({ message }) => message)).toEqual([]);
  return { job: jobs[0]!, procedure: procedures[0]!.procedure, lines: text.split('\n') };
}

/** The same for a procedure that the check reports something about. */
function roughJob(units: string, change: Parameters<typeof procedureWith>[0]) {
  const text = `${procedureWith(change)}\njob 7 of example at bench {\n${units}\n}\n`;
  const { jobs, diagnostics } = checkFiles([{ uri: 'x', text }]);
  return { job: jobs[0]!, codes: diagnostics.map(({ rule }) => rule) };
}

const plain = (lines: readonly string[]) => lines.map((line) => line.replaceAll('\u00a0', ' '));
const lines = (units: string) => plain(shimLines(job(units).job));

describe('what to fit, by the last reading', () => {
  it('uses the shim that was in at the reading', () => {
    // 3 bar per 0.001 in is 118.11 bar/mm: 231 bar needs 0.161 mm more for 250 bar; 0.15 mm leaves 248.7, 0.20 mm 254.6.
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

  it('uses the limits of the part number', () => {
    expect(lines('unit 1 number A-220 { shim out 1.30 mm  opening 210 bar }')).toEqual([
      'unit 1 A-220: opening 210 bar. Fit 1.40 mm (now 1.30 mm): expect 222 bar',
    ]);
  });

  it('says which units are right, which are on hold, and what is not known yet', () => {
    expect(
      lines(`unit 1 number A-250 serial 0411 { shim in 1.50 mm  opening 253 bar }
        unit 2 number A-250 { opening 231 bar }
        unit 3 number A-250 { opening 231 bar  shim in 1.50 mm }
        unit 4 number A-250 { on hold "cracked" }
        unit 5 number A-250`),
    ).toEqual([
      'unit 1 A-250 0411: opening 253 bar, inside its window: it stays',
      'unit 2 A-250: opening is read, but the shim that was in is not written down. Write into the job, for instance: shim out 1.30 mm   opening 231 bar',
      'unit 3 A-250: the shim was changed after opening was read: read it again with the one that is in, and write it behind it',
      'unit 4 A-250: on hold, cracked',
      'unit 5 A-250: no reading of opening with its shim yet. Write into the job, for instance: shim out 1.30 mm   opening 231 bar',
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

  it('uses what is in the drawer, and lays two on each other where the stock says so', () => {
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
      /No shim is thick enough: 1\.95 mm gives 206 bar\. Check the spring/u,
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
      'opening, A-250: 3 of 3 units read',
      '  unit 1 A-250: fit 1.50 mm (now 1.30 mm): expect 255 bar',
      '  unit 2 A-250: fit 1.45 mm (now 1.30 mm): expect 255 bar',
      '  unit 3 A-250: 1.40 mm stays, it stays closed: 254 bar read',
      '  spread 0.8 bar expected: no choice opens fewer, and none of those has less',
      'opening, A-220: 1 of 1 unit read',
      '  unit 4 A-220: fit 1.40 mm (now 1.30 mm): expect 222 bar',
      '  spread 0.0 bar expected: no choice opens fewer, and none of those has less',
    ]);
  });

  it('say so where one cannot be brought in, or nothing was read', () => {
    const far = job('unit 1 number A-250 { shim out 1.90 mm  opening 200 bar }');
    expect(matchLines(far.job)[0]).toMatch(/Not every one can be brought into its window from this drawer/u);
    expect(matchLines(job('unit 1 number A-250').job)[0]).toMatch(/^No unit of this job can be calculated yet/u);
  });
});

const across = {
  prove: (text: string) =>
    `${text}\n    stage match at tester, the set together { across the set opening spread at most 5 bar source "x" on fail reshim (once) of the furthest out }`,
};

describe('a set that is compared', () => {
  const told = (units: string, change = {}) => plain(matchLines(roughJob(units, { ...across, ...change }).job));
  const read = (...readings: number[]) =>
    readings.map((bar, index) => `unit ${index + 1} number A-250 { shim in 1.40 mm  opening ${bar} bar }`).join('\n');

  it('stays closed where every unit passes and the spread is kept, whatever a shim could bring', () => {
    expect(told(read(252, 255, 253, 254, 252, 255))).toEqual([
      'opening, A-250: 6 of 6 units read, all inside their window, spread 3.0 bar measured (at most 5 bar): nothing to do',
    ]);
    // Just as wide as is let through.
    expect(told(read(251, 256))[0]).toMatch(/nothing to do$/u);
  });

  it('opens the one furthest out, and no other', () => {
    expect(told(read(250, 255, 256, 254))).toEqual([
      'opening, A-250: 4 of 4 units read',
      '  unit 1 A-250: fit 1.45 mm (now 1.40 mm): expect 256 bar',
      '  unit 2 A-250: 1.40 mm stays, it stays closed: 255 bar read',
      '  unit 3 A-250: 1.40 mm stays, it stays closed: 256 bar read',
      '  unit 4 A-250: 1.40 mm stays, it stays closed: 254 bar read',
      '  spread 2.0 bar expected (at most 5 bar): no choice opens fewer, and none of those has less',
    ]);
    // 251 and 0.05 mm would be 256.9 of 258 bar: nearer to the end than the gauge can tell.
    expect(told(read(251, 255, 257, 256))[0]).toMatch(
      /spread 6\.0 bar measured \(at most 5 bar\): this drawer has nothing/u,
    );
  });

  it('leaves out units on hold and unread ones, and says how many are left', () => {
    const units = `${read(240)}
      unit 2 number A-250 on hold "cracked" { shim in 1.40 mm  opening 254 bar }
      unit 3 number A-250`;
    expect(told(units)[0]).toBe('opening, A-250: 1 of 3 units read');
  });

  it('aims no nearer to an end than the gauge can tell: 0.25 % of 400 bar is 1 bar', () => {
    // 233 bar needs 1.55 mm: 250.7 is inside, and nearer to the end than 1 bar. 1.60 mm brings 256.6.
    expect(told(read(233))[1]).toMatch(/fit 1\.60 mm \(now 1\.40 mm\): expect 257 bar/u);
  });

  it('gives the result with new springs: as the gauge shows it, and settled', () => {
    const specs = instead('250 bar +8 -0', '250 bar +8 -0, settling 4 bar');
    const units = `unit 1 number A-250 { renewed spring  shim in 1.40 mm  opening 256 bar }
      unit 2 number A-250 { shim in 1.40 mm  opening 256 bar }`;
    expect(told(units, { specs })).toEqual([
      'opening, A-250: 2 of 2 units read, all inside their window, spread 0.0 bar measured (at most 5 bar); 4.0 bar when new springs have settled: nothing to do',
    ]);
  });
});

describe('a drawer that is shared', () => {
  const shop = (text: string) => ({ shop: instead('from 1.00 mm to 1.95 mm by 0.05 mm', text) });
  const two = `unit 1 number A-250 { shim out 1.30 mm  opening 231 bar }
    unit 2 number A-250 { shim out 1.30 mm  opening 232 bar }`;

  it('gives the only shim of a size to one unit', () => {
    const made = (drawer: string) => plain(shimLines(roughJob(two, shop(drawer)).job));
    expect(made('of 1.50 mm (1), 1.30 mm')).toEqual([
      expect.stringMatching(/^unit 1 A-250: opening 231 bar\. Fit 1\.50 mm/u),
      expect.stringMatching(
        /^unit 2 A-250: opening 232 bar\. No shim is thick enough.* The shim that would fit goes into another unit\.$/u,
      ),
    ]);
    // Both go in where the second has another that will do.
    expect(made('of 1.50 mm (1), 1.48 mm (1)')).toEqual([
      expect.stringMatching(/Fit 1\.50 mm/u),
      expect.stringMatching(/Fit 1\.48 mm/u),
    ]);
    expect(made('of 0.70 mm, 0.80 mm (1), stacks of two')).toEqual([
      expect.stringMatching(/Fit 0\.70 mm and 0\.80 mm/u),
      expect.stringMatching(/The shim that would fit goes into another unit/u),
    ]);
  });

  it('is one drawer for all part numbers of a job', () => {
    const mixed = `unit 1 number A-250 { shim out 1.30 mm  opening 231 bar }
      unit 2 number A-220 { shim out 1.30 mm  opening 200 bar }`;
    const of = (drawer: string) => plain(matchLines(roughJob(mixed, shop(drawer)).job));
    expect(of('of 1.50 mm (2), 1.30 mm').filter((line) => line.includes('fit 1.50'))).toHaveLength(2);
    expect(of('of 1.50 mm (1), 1.30 mm').filter((line) => line.includes('fit 1.50'))).toHaveLength(1);
  });
});

describe('the limit of use', () => {
  const stock = instead('from 1.00 mm to 1.95 mm by 0.05 mm', 'of 0.70 mm, 0.75 mm, 0.80 mm stacks of two');
  const unit = 'unit 1 number A-250 { shim out 1.30 mm  opening 231 bar }';
  const never = (most: string) => ({
    shop: stock,
    repairs: instead('by shim-rate', `by shim-rate never above ${most}`),
  });

  it('holds for two on each other: advice, set and hint', () => {
    expect(lines(unit)[0]).toMatch(/Fit 1\.50 mm/u);
    const made = job(unit, never('1.49 mm'));
    const held =
      /No shim is thick enough up to 1\.49 mm, which must not be exceeded: 0\.70 mm and 0\.75 mm gives 249 bar\. Check the spring/u;
    expect(plain(shimLines(made.job))[0]).toMatch(held);
    expect(plain(buildHints([], [made.job]).map(({ text }) => text))[0]).toMatch(held);
    expect(matchLines(made.job)[0]).toMatch(/Not every one can be brought into its window/u);
    expect(plain(shimLines(job(unit, never('1.52 mm')).job))[0]).toMatch(
      /Fit 0\.70 mm and 0\.80 mm|Fit 0\.75 mm and 0\.75 mm/u,
    );
  });

  it('is that of the spring where the step does not say it', () => {
    const binds = { shop: stock, family: instead('"Pressure spring"', '"Pressure spring" binds over 1.40 mm') };
    const made = roughJob(unit, binds);
    expect(made.codes).toContain('shim-coil-bind');
    expect(plain(shimLines(made.job))[0]).toMatch(/up to 1\.40 mm, which must not be exceeded/u);
  });

  it('takes a shim out that is over it, though the unit reads what it should', () => {
    const made = job('unit 1 number A-250 { shim in 1.60 mm  opening 254 bar }', {
      repairs: instead('by shim-rate', 'by shim-rate never above 1.55 mm'),
    });
    expect(plain(shimLines(made.job))[0]).toMatch(
      /Fit 1\.55 mm \(now 1\.60 mm\): expect 248 bar|No shim is thick enough up to 1\.55 mm/u,
    );
  });
});

describe('all kinds of readings and rates', () => {
  it('a rate as a band: its middle, and half of it as the doubt', () => {
    const specs = instead('3 bar per 0.001 in', '96..104 bar per mm');
    const made = job('unit 1 number A-250 { shim out 1.30 mm  opening 231 bar }', { specs });
    expect(plain(shimLines(made.job))).toEqual([
      'unit 1 A-250: opening 231 bar. Fit 1.55 mm (now 1.30 mm): expect 256 bar, 254 to 258 bar',
    ]);
  });

  it('a delivery, by a rate in two quantities', () => {
    const made = roughJob('unit 1 number A-250 { shim out 1.30 mm  delivery 44 mm³ }', {
      specs: (text) =>
        `${text}\n    spec delivery volume 50 mm³ ±2 source "x"\n    spec by-shim rate 2 mm³ per 0.1 mm source "x"`,
      prove: (text) =>
        text.replace('relieve', 'test delivery read volume within delivery on fail reshim\n      relieve'),
      repairs: instead('bring opening to opening by shim-rate', 'bring delivery to delivery by by-shim'),
    });
    expect(plain(shimLines(made.job))[0]).toBe(
      'unit 1 A-250: delivery 44 mm³. Fit 1.60 mm (now 1.30 mm): expect 50 mm³',
    );
  });

  it('says what is wrong with the rate', () => {
    const specs = instead('3 bar per 0.001 in', 'at least 90 bar per mm');
    const made = roughJob('unit 1 number A-250 { shim out 1.30 mm  opening 231 bar }', { specs });
    expect(plain(shimLines(made.job))[0]).toMatch(/nothing says how far a shim moves opening/u);
  });

  it('a reading or a shim off by a power of ten is named, and nothing is worked out from it', () => {
    expect(lines('unit 1 number A-250 { shim out 13.0 mm  opening 231 bar }')[0]).toBe(
      'unit 1 A-250: a shim of 13.0 mm cannot be: nothing is worked out from it. Is it 1.30 mm? Put it right in the job',
    );
    expect(lines('unit 1 number A-250 { shim out 1300 mm  opening 231 bar }')[0]).toMatch(/Is it 1\.3 mm\?/u);
    expect(lines('unit 1 number A-250 { shim out 1.30 mm  opening 2310 bar }')[0]).toMatch(/Is it 231 bar\?/u);
    expect(lines('unit 1 number A-250 { shim out 1.30 mm  opening 0 bar }')[0]).toMatch(/opening 0 bar cannot be/u);
  });
});

describe('beside the text', () => {
  it('shows what to fit at the reading it uses, and the change for one step of the drawer at a choice', () => {
    const made = job(
      '  unit 1 number A-250 {\n    shim out 1.30 mm   opening 231 bar\n  }\n  unit 2 number A-250 { shim in 1.5 mm  opening 253 bar }',
    );
    const hints = buildHints([made.procedure], [made.job]).map(({ source, text }) => [
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

  it('shows nothing where the drawer is uneven', () => {
    const shop = instead('from 1.00 mm to 1.95 mm by 0.05 mm', 'of 1.00 mm, 1.05 mm, 1.11 mm');
    const made = job('unit 1 number A-250', { shop });
    expect(buildHints([made.procedure], [made.job])).toEqual([]);
  });
});
