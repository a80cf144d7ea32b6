import { describe, expect, test } from 'vitest';
import { jobOf, nominal, procedure, q, range, shop } from '../../../tests/fixtures/injector.ts';
import { withStanding } from '../../analysis/limits.ts';
import { wordsIn } from '../../i18n/index.ts';
import { ceilingText } from '../../i18n/limit-words.ts';
import type { Procedure, Step } from '../../model/index.ts';
import { isAsFound, isTestOf } from '../../model/steps.ts';
import { english, type Limit } from '../../quantities/index.ts';
import { shownLimit } from '../../quantities/shown-limit.ts';
import { limitFigure } from '../figures/limit-figure.ts';
import { unitOfScale } from '../figures/scales.ts';
import { stepFigures } from '../figures/step-figures.ts';
import { buildPrintContext, type PrintContext, type SheetOptions } from '../print-context.ts';
import { stepLimits } from './limits.ts';

const blank: SheetOptions = {
  job: null,
  number: null,
  paper: 'a4',
  draft: false,
  diagnostics: [],
  hash: 'ab'.repeat(32),
};
const limitsAt = (setting: PrintContext, step: Step, station: string | null) =>
  stepLimits(setting, stepFigures(setting, step, { station, steps: [] }));
/** Plain spaces, to read the expectations by. */
const flat = <T>(value: T): T => JSON.parse(JSON.stringify(value).replace(/[\u00a0\u202f]/gu, ' ')) as T;

describe('a limit as a hand needs it', () => {
  const shown = (limit: Limit, unit: Parameters<typeof shownLimit>[1]['unit'], setToNominal: boolean) => {
    const { value, also } = flat(shownLimit(limit, { unit, setToNominal, wording: english }));
    return [value, also];
  };

  test('a reading gets its window, with what was written beside', () => {
    expect(shown(nominal('250 bar', '8', '0'), null, false)).toEqual(['250 to 258 bar', '250 bar +8 −0']);
  });
  test('a wrench gets its setting, with the window beside', () => {
    expect(shown(nominal('60 N·m', '5'), null, true)).toEqual(['60 N·m', '55 to 65 N·m']);
  });
  test('of a pair, the half in the unit of the tool is large, and beside it is the pair as written', () => {
    const written = '45 N·m (33 lbf·ft)';
    const pair = nominal('45 N·m', null, null, nominal('33 lbf·ft'));
    expect(shown(pair, 'N·m', true)).toEqual(['45 N·m', written]);
    expect(shown(pair, 'lbf·ft', true)).toEqual(['33 lbf·ft', written]);
    expect(shown(pair, null, true)).toEqual([written, '']);
    const band = nominal('250 bar', '8', '0', nominal('3626 psi', '116', '0'));
    expect(shown(band, 'bar', false)).toEqual(['250 to 258 bar', '250 bar +8 −0 (3626 psi +116 −0)']);
    expect(shown(band, 'psi', false)).toEqual(['3626 to 3742 psi', '250 bar +8 −0 (3626 psi +116 −0)']);
    // As the grammar reads it: the bracket has no “at least” of its own, and no tolerance of the shop either.
    const least: Limit = { form: 'at least', least: q('20000 kPa'), pair: nominal('2900 psi') };
    expect(shown(least, 'psi', false)).toEqual(['at least 2900 psi', 'at least 20 000 kPa (2900 psi)']);
  });
  test("in the tool's unit, never loosened, with the author's beside", () => {
    // 250 bar is 3625.94 psi and 258 bar 3741.97: up and down to the inside.
    expect(shown(nominal('250 bar', '8', '0'), 'psi', false)).toEqual(['3630 to 3740 psi', '250 bar +8 −0']);
    expect(shown({ form: 'at least', least: q('200 bar') }, 'psi', false)[0]).toBe('at least 2910 psi');
    expect(shown(range('55', '65 N·m'), 'lbf·ft', true)).toEqual(['40.6 to 47.9 lbf·ft', '55 to 65 N·m']);
  });
  test('a bare figure goes to the nearest mark, or keeps within half a percent', () => {
    const psi = (mark: ReturnType<typeof q> | null) =>
      flat(
        shownLimit(nominal('10 MPa'), {
          unit: 'psi',
          mark,

          setToNominal: true,
          wording: english,
        }).value,
      );
    expect(psi(q('50 psi'))).toBe('1450 psi');
    expect(psi(null)).toBe('1450 psi');
  });
  test('what must never be passed rounds down', () => {
    expect(flat(ceilingText(wordsIn('en'), q('300 bar'), 'psi'))).toBe('4350 psi (300 bar)');
    expect(flat(ceilingText(wordsIn('en'), q('300 bar'), null))).toBe('300 bar');
  });
  test('a torque and an angle stay together', () => {
    const then = {
      form: 'then' as const,
      first: nominal('40 N·m') as never,
      angle: nominal('90 °', '5') as never,
    };
    expect(shown(then, null, true)).toEqual(['40 N·m then 90°', '85° to 95°']);
  });
});

describe('limits of a step', () => {
  const opening = procedure.stages.flatMap(({ steps }) => steps).find((one) => isTestOf(one, 'opening'))!;
  const found = procedure.stages.flatMap(({ steps }) => steps).find(isAsFound)!;
  const torque = procedure.stages.flatMap(({ steps }) => steps).find(({ verb }) => verb === 'torque')!;
  const at = (made: Procedure, options: Partial<SheetOptions>, step: Step = opening, station = 'tester') =>
    flat(
      limitsAt(buildPrintContext(made, { ...blank, ...options }), step, station).map(
        ({ head, label, value, sources = [] }) => [
          [head, label].filter((word) => word !== '').join(', '),
          value,
          sources.join('; '),
        ],
      ),
    );

  test('all numbers side by side without a job', () => {
    expect(at(procedure, {})).toEqual([
      ['A-250', '250 to 258 bar', "Maker's test sheet, page 4"],
      ['A-220', '220 to 228 bar', "Maker's test sheet, page 4"],
    ]);
  });
  test('one number, with no label', () => {
    expect(at(procedure, { number: 'A-220' }).map(([label, value]) => [label, value])).toEqual([
      ['', '220 to 228 bar'],
    ]);
  });
  test('those that occur in a mixed job', () => {
    expect(at(procedure, { job: jobOf(6) }).map(([label]) => label)).toEqual(['A-250', 'A-220']);
    expect(at(procedure, { job: jobOf(3) }).map(([label]) => label)).toEqual(['']);
  });
  test('as found is held to the limit in service, with that of a rebuilt unit beside it', () => {
    expect(at(procedure, {}, found).map(([label, value]) => [label, value])).toEqual([
      ['In service, A-250', 'at least 200 bar'],
      ['A-220', 'at least 175 bar'],
      ['As rebuilt, A-250', '250 to 258 bar'],
      ['A-220', '220 to 228 bar'],
    ]);
  });
  test('numbers that agree share a line', () => {
    expect(at(procedure, {}, torque, 'clean-room')).toHaveLength(1);
  });
  test("the shop's tolerance with its source where none is written", () => {
    const made = {
      ...procedure,
      specs: procedure.specs.map((spec) => (spec.name === 'nut-fit' ? { ...spec, rebuilt: nominal('60 N·m') } : spec)),
    };
    const [line] = flat(limitsAt(buildPrintContext(made, blank), torque, null));
    expect(line).toMatchObject({
      value: '60 N·m',
      also: '54 to 66 N·m',
      sources: ["Maker's test sheet, page 2", 'Tolerance ±10 %: Shop standard'],
    });
  });
  test('a spec that a number does not need says so', () => {
    const numbers = [
      procedure.numbers[0]!,
      {
        ...procedure.numbers[1]!,
        values: [
          {
            ...procedure.numbers[1]!.values[0]!,
            rebuilt: null,
            inService: null,
            notRequired: true,
            sourceText: 'Maker',
          },
        ],
      },
    ];
    expect(at({ ...procedure, numbers }, {})[1]).toEqual(['A-220', 'not required', 'Maker']);
  });
  test('a spec with no value says so, and invents none', () => {
    const made = {
      ...procedure,
      numbers: [],
      specs: procedure.specs.map((spec) => ({ ...spec, rebuilt: null })),
    };
    expect(at(made, {}).map(([, value]) => value)).toEqual(['no limit given']);
  });
  test('a gauge in psi shows psi', () => {
    const assets = shop.assets.map((asset) =>
      asset.kind === 'gauge' ? { ...asset, range: range('0', '6000 psi'), graduated: null } : asset,
    );
    expect(at({ ...procedure, shop: { ...shop, assets } }, { number: 'A-250' })[0]![1]).toBe('3630 to 3740 psi');
  });
});

describe("the window of a shop's standing tolerance", () => {
  const tolerance = (kind: 'pressure' | 'torque', plus: string, minus: string) => ({
    kind,
    limit: { form: 'tolerance' as const, plus: q(plus), minus: q(minus) },
    sourceText: null,
    source: shop.source,
  });
  const unlessStated = [tolerance('pressure', '3 %', '0 %'), tolerance('torque', '10 %', '10 %')];
  const complete = (limit: Limit) => withStanding({ ...shop, unlessStated }, limit).limit;
  const shown = (
    limit: Limit,
    unit: Parameters<typeof shownLimit>[1]['unit'],
    mark: string | null,
    setToNominal = false,
  ) => {
    const { value, also } = flat(
      shownLimit(limit, { unit, mark: mark === null ? null : q(mark), complete, setToNominal, wording: english }),
    );
    return [value, also];
  };
  const pair = nominal('25855 kPa', null, null, nominal('3750 psi'));

  test('is in whole marks of the gauge beside a written pair', () => {
    expect(shown(pair, 'psi', '10 psi')).toEqual(['3750 to 3860 psi', '25 855 kPa (3750 psi)']);
    expect(shown(pair, 'psi', '50 psi')).toEqual(['3750 to 3850 psi', '25 855 kPa (3750 psi)']);
    // 258.55 to 266.3 bar
    expect(shown(pair, 'bar', '1 bar')).toEqual(['259 to 266 bar', '25 855 kPa (3750 psi)']);
    // It is for a nominal alone.
    const least: Limit = { form: 'at least', least: q('20000 kPa'), pair: nominal('2900 psi') };
    expect(shown(least, 'psi', '10 psi')[0]).toBe('at least 2900 psi');
  });
  test('has few digits where the tool has no marks, or none lies inside', () => {
    expect(shown(pair, 'psi', null)).toEqual(['3750 to 3860 psi', '25 855 kPa (3750 psi)']);
    expect(shown(pair, null, null)).toEqual(['25 855 kPa (3750 psi)', '25 855 to 26 630 kPa']);
    expect(shown(pair, 'psi', '1000 psi')).toEqual(['3750 to 3860 psi', '25 855 kPa (3750 psi)']);
  });
  test('of a bare nominal has no endless decimals either', () => {
    // 40.5 to 49.5 N·m, 29.87 to 36.51 lbf·ft
    expect(shown(nominal('45 N·m'), 'lbf·ft', null, true)).toEqual(['33.2 lbf·ft', '30 to 36 lbf·ft; 45 N·m']);
    expect(shown(nominal('45 N·m', null, null, nominal('33 lbf·ft')), 'lbf·ft', null, true)).toEqual([
      '33 lbf·ft',
      '30 to 36 lbf·ft; 45 N·m (33 lbf·ft)',
    ]);
    expect(shown(nominal('8 N·m'), 'N·m', null, true)).toEqual(['8 N·m', '7.2 to 8.8 N·m']);
    expect(shown(nominal('12.35 N·m'), 'N·m', null, true)).toEqual(['12.35 N·m', '11.12 to 13.58 N·m']);
  });
  test('never loosens, and keeps the most of it', () => {
    for (let bar = 7; bar < 400; bar += 13) {
      const [value] = shown(nominal(`${bar} bar`), 'psi', null);
      const [low, high] = value!
        .replace(/(\d) (\d)/gu, '$1$2')
        .match(/[\d.]+/gu)!
        .map(Number);
      const exact = bar * 14.503773773;
      expect(low! >= exact * 0.999999 && high! <= exact * 1.030001, value).toBe(true);
      expect(high! - low!, value).toBeGreaterThanOrEqual(exact * 0.03 * 0.7499);
    }
  });
});

describe('the gauge that a limit is read on', () => {
  const opening = procedure.stages.flatMap(({ steps }) => steps).find((one) => isTestOf(one, 'opening'))!;
  const gauge = shop.assets.find(({ kind }) => kind === 'gauge')!;
  const at = (assets: readonly Partial<typeof gauge>[], limit: Limit) => {
    const made = { ...procedure, shop: { ...shop, assets: assets.map((own) => ({ ...gauge, ...own })) } };
    const setting = buildPrintContext(made, blank);
    const { scale } = limitFigure(setting, opening, { station: 'tester' }, limit);
    return [unitOfScale(scale), scale?.graduated?.number ?? null];
  };
  const needle = { range: range('0', '1 mm') as typeof gauge.range, graduated: q('0.002 mm') };
  const small = { range: range('0', '60 bar') as typeof gauge.range, graduated: q('0.5 bar') };
  const large = { range: range('0', '6000 psi') as typeof gauge.range, graduated: q('20 psi') };

  test('is of its kind', () => {
    expect(at([needle, small], nominal('50 bar'))).toEqual(['bar', '0.5']);
    expect(at([needle], nominal('50 bar'))).toEqual([null, null]);
  });
  test('holds it, of several; else it is the first', () => {
    expect(at([small, large], nominal('250 bar', '8', '0'))).toEqual(['psi', '20']);
    expect(at([small, large], nominal('50 bar'))).toEqual(['bar', '0.5']);
    expect(at([small, large], nominal('900 bar'))).toEqual(['bar', '0.5']);
  });
  test('has its own marks or none, not those of its neighbor', () => {
    expect(at([small, { ...large, graduated: null }], nominal('250 bar'))).toEqual(['psi', null]);
  });
});
