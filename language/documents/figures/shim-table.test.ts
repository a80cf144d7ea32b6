import fc from 'fast-check';
import { expect, it } from 'vitest';
import { procedureWith } from '../../../tests/fixtures/sound-procedure.ts';
import { checkFiles } from '../../db/workspace.ts';
import { shimAdvice } from '../../engineering/shim-advice.ts';
import { convert } from '../../quantities/index.ts';
import { unitReadings } from '../../recommendations/unit-shims.ts';
import { buildPrintContext } from '../print-context.ts';
import { shimTables } from './shim-table.ts';

/*
 * The table of a sheet against random windows, rates, drawers and gauges: what it says for a reading lands in the window,
 * by plain arithmetic, and is what the advice for a unit says.
 */

interface Made {
  /** In bar. */
  readonly low: number;
  readonly width: number;
  /** In bar per mm. */
  readonly rate: number;
  /** Hundredths of a millimeter. */
  readonly step: number;
  readonly gauge: string;
  readonly error: string;
}

const makes = fc.record<Made>({
  low: fc.integer({ min: 100, max: 300 }),
  width: fc.constantFrom(4, 8, 12),
  rate: fc.integer({ min: 60, max: 200 }),
  step: fc.constantFrom(1, 2, 5, 10),
  gauge: fc.constantFrom(
    'range 0..400 bar graduated 1 bar class 0.25',
    'range 0..6000 psi graduated 10 psi class 0.25',
    'range 0..40 MPa graduated 0.1 MPa class 0.6',
    'range 0..400 bar graduated 0.5 bar',
  ),
  error: fc.constantFrom('', ' ±4'),
});

function read({ low, width, rate, step, gauge, error }: Made, reading: string) {
  const text = procedureWith({
    shop: (shop) =>
      shop
        .replace(/(gauge\s+PG-400[^\n]*?)\s+range[^\n]*?(\s+at )/u, `$1 ${gauge}$2`)
        .replace(/from 1\.00 mm to \S+ mm by 0\.05 mm/u, `from 0.50 mm to 4.50 mm by ${(step / 100).toFixed(2)} mm`),
    specs: (specs) =>
      specs
        .replaceAll('250 bar +8 -0', `${low} bar +${width} -0`)
        .replace('3 bar per 0.001 in', `${rate} bar per mm${error}`),
  });
  const job = `job 7 of example at bench { unit 1 number A-250 { shim out 2.50 mm  opening ${reading} } }`;
  const { jobs, procedures } = checkFiles([{ uri: 'x', text: `${text}\n${job}\n` }]);
  return { job: jobs[0]!, procedure: procedures[0]!.procedure };
}

it('lands in the window with every change, whatever is read, and agrees with the advice', () => {
  let looked = 0;
  let asked = 0;
  fc.assert(
    fc.property(makes, (made) => {
      const { job, procedure } = read(made, `${made.low} bar`);
      const step = procedure.repairs.flatMap(({ steps }) => steps).find(({ verb }) => verb === 'choose')!;
      const setting = buildPrintContext(procedure, {
        job: null,
        number: 'A-250',
        paper: 'a4',
        draft: false,
        diagnostics: [],
        hash: '',
      });
      const [table] = shimTables(setting, step).map((group) => group.made);
      if (table === undefined) return;
      const mark = Number(table.mark.number);
      const unit = made.gauge.includes('psi') ? 'psi' : made.gauge.includes('MPa') ? 'MPa' : 'bar';
      expect(table.unit).toBe(unit);
      expect(table.stairs.length).toBeLessThanOrEqual(35);
      const [stand] = unitReadings(job);
      let before: number | null = null;
      const stairs = table.stairs.map((stair) => ({
        low: Number(stair.low.number),
        high: Number(stair.high.number),
        change: stair.change === null ? null : Number(stair.change.number),
      }));
      for (const { low, high, change } of stairs) {
        // Every mark is in the table once, lowest first.
        if (before !== null) expect(low).toBeCloseTo(before + mark, 6);
        before = high;
        for (const at of new Set([low, (low + high) / 2, high])) {
          const own = Math.round(at / mark) * mark;
          const value = { number: own.toFixed(4), unit } as const;
          const bar = convert(value, 'bar')!.valueOf();
          const inside = (thicker: number) =>
            bar + made.rate * thicker >= made.low - 1e-9 && bar + made.rate * thicker <= made.low + made.width + 1e-9;
          if (change === null) {
            asked++;
            // Nothing that the drawer has would land.
            for (let steps = -100; steps <= 100; steps++) expect(inside((steps * made.step) / 100)).toBe(false);
            continue;
          }
          looked++;
          expect(inside(change)).toBe(true);
          const advice = shimAdvice({ ...stand!.question, reading: value });
          const single = stairs.some(
            (one) => one.change !== null && Math.abs(Math.abs(one.change) - made.step / 100) < 1e-9,
          );
          if (single && 'choice' in advice) expect(Number(advice.choice.shims[0]!.number) - 2.5).toBeCloseTo(change, 6);
        }
      }
    }),
    { numRuns: 60, seed: 10 },
  );
  expect(looked).toBeGreaterThan(500);
  expect(asked).toBeGreaterThan(10);
}, 60_000);
