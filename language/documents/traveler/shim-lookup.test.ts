import { describe, expect, it } from 'vitest';
import { instead, procedureWith } from '../../../tests/fixtures/sound-procedure.ts';
import { checkFiles } from '../../db/workspace.ts';
import { wordsIn } from '../../i18n/index.ts';
import { inRows, shimLookup, shimLookups } from '../figures/lookups.ts';
import { rateText } from '../figures/rates.ts';
import { shimTables } from '../figures/shim-table.ts';
import { buildPrintContext } from '../print-context.ts';
import { renderText } from '../renderers/index.ts';
import { buildSheet } from './index.ts';
import { buildSentence } from './sentences.ts';

/** The tables of the repair's `choose`, with plain blanks and signs. */
function tables(change: Parameters<typeof procedureWith>[0] = {}) {
  const { procedures } = checkFiles([{ uri: 'x', text: procedureWith(change) }]);
  const { procedure } = procedures[0]!;
  const step = procedure.repairs.flatMap(({ steps }) => steps).find(({ verb }) => verb === 'choose')!;
  const setting = buildPrintContext(procedure, {
    job: null,
    number: null,
    paper: 'a4',
    draft: false,
    diagnostics: [],
    hash: '',
  });
  const plain = (text: string) => text.replaceAll('\u00a0', ' ').replaceAll('−', '-');
  const lookups = shimTables(setting, step).flatMap((group, index) =>
    inRows(shimLookup(setting, step, group, index > 0)),
  );
  return lookups.map(({ title, from, to, pairs }) => ({
    title: plain(title),
    heads: [plain(from), plain(to)],
    pairs: pairs.map((pair) => [plain(pair.from), plain(pair.to)] as const),
  }));
}

const stock = (text: string) => ({ shop: instead('by 0.05 mm', text) });

describe('what a shim is chosen from, on the sheet', () => {
  const sentence = (text: string) => {
    const shop = (whole: string) => whole.replace(/from 1\.00 mm to \S+ mm by 0\.05 mm/u, text);
    const { procedure } = checkFiles([{ uri: 'x', text: procedureWith({ shop }) }]).procedures[0]!;
    const step = procedure.repairs.flatMap(({ steps }) => steps).find(({ verb }) => verb === 'choose')!;
    return buildSentence({ procedure, words: wordsIn('en') }, step)
      .map((span) => span.text)
      .join('')
      .replaceAll('\u00a0', ' ');
  };

  it('says how many there are, and that two may be stacked', () => {
    expect(sentence('of 1.00 mm (3), 1.05 mm (0), 1.10 mm stacks of two')).toContain(
      'from stock, 1.00 mm (3), 1.05 mm (none), 1.10 mm; two may be stacked',
    );
    expect(sentence('of 1.00 mm, 1.05 mm')).not.toMatch(/lie on|\(/u);
  });
});

describe('what all shims together may not pass, on the sheet', () => {
  const never = (change: Parameters<typeof procedureWith>[0]) => {
    const { procedure } = checkFiles([{ uri: 'x', text: procedureWith(change) }]).procedures[0]!;
    const sheet = buildSheet(procedure, {
      job: null,
      number: null,
      paper: 'a4',
      draft: true,
      diagnostics: [],
      hash: '',
    });
    const texts = renderText(sheet).map((text) => text.replaceAll('\u00a0', ' '));
    return texts[texts.indexOf('Never above') + 1] ?? null;
  };
  const family = instead('"Pressure spring"', '"Pressure spring" binds over 1.70 mm');

  it('is what the step says, or where the spring binds, whichever is less', () => {
    expect(never({ repairs: instead('by shim-rate', 'by shim-rate never above 1.80 mm') })).toBe('1.80 mm');
    expect(never({ family })).toBe('1.70 mm');
    expect(never({ family, repairs: instead('by shim-rate', 'by shim-rate never above 1.80 mm') })).toBe('1.70 mm');
    expect(never({ family, repairs: instead('by shim-rate', 'by shim-rate never above 1.60 mm') })).toBe('1.60 mm');
  });
});

describe('the rate of a shim, on the sheet', () => {
  const rate = (spec: string, own = '') => {
    const specs = (text: string) =>
      instead('220 bar +8 -0', `220 bar +8 -0  source "x"  ${own}`)(instead('3 bar per 0.001 in', spec)(text));
    const { procedures, diagnostics } = checkFiles([{ uri: 'x', text: procedureWith({ specs }) }]);
    expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
    const { procedure } = procedures[0]!;
    const setting = buildPrintContext(procedure, {
      job: null,
      number: null,
      paper: 'a4',
      draft: false,
      diagnostics: [],
      hash: '',
    });
    return rateText(setting, 'shim-rate').replaceAll('\u00a0', ' ');
  };
  const worked = 'from stiffness 200 N/mm, guide 6 mm, seat 3 mm';
  const printed = '94.31 bar per mm, from 200 N/mm, guide 6 mm, seat 3 mm';

  it('says what it was worked out from', () => {
    expect(rate(worked)).toBe(printed);
    expect(rate('3 bar per 0.001 in')).toBe('3 bar per 0.001 in');
  });

  it('is given by part number where one has its own', () => {
    expect(rate(worked, 'shim-rate 96 bar per mm')).toBe(`A-250: ${printed}; A-220: 96 bar per mm`);
  });

  it('is reckoned with like one that is written', () => {
    const specs = (text: string) => ({ specs: instead('3 bar per 0.001 in', text) });
    expect(tables(specs(worked))).toEqual(tables(specs('94.31 bar per mm')));
    expect(tables(specs(worked)).length).toBeGreaterThan(0);
  });
});

describe('a shim for a reading, on the sheet', () => {
  it('has a title for each part number, and rows that can be read', () => {
    const all = tables();
    expect(all.map(({ title }) => title).filter((title) => title !== '')).toEqual([
      'A-250: opening read, bar; under it, change of setting shim, mm (+ thicker, - thinner). Aim: 254 bar. Outside the table: ask the lead.',
      'A-220: Aim 224 bar',
    ]);
    for (const { pairs, heads } of all) {
      // In the unit of the gauge, and as many as the width of the page holds.
      expect(pairs.length).toBeLessThanOrEqual(14);
      expect(heads).toEqual(['', '']);
    }
  });

  it('is one table for part numbers that have the same changes: a row of readings for each', () => {
    const made = (change: Parameters<typeof procedureWith>[0]) => {
      const { procedure } = checkFiles([{ uri: 'x', text: procedureWith(change) }]).procedures[0]!;
      const step = procedure.repairs.flatMap(({ steps }) => steps).find(({ verb }) => verb === 'choose')!;
      const options = { job: null, number: null, paper: 'a4', draft: false, diagnostics: [], hash: '' } as const;
      const setting = buildPrintContext(procedure, options);
      const groups = shimTables(setting, step);
      return {
        together: shimLookups(setting, step, groups),
        apart: groups.map((one) => shimLookup(setting, step, one)),
      };
    };
    const { together, apart } = made({});
    expect(together).toHaveLength(1);
    const [table] = together;
    expect(table!.title.replaceAll('\u00a0', ' ')).toContain('Aim: A-250 254 bar, A-220 224 bar.');
    expect([table!.from, ...table!.besides!.map(({ from }) => from)]).toEqual(['A-250', 'A-220']);
    const readings = [table!.pairs.map(({ from }) => from), ...table!.besides!.map(({ reads }) => reads)];
    readings.forEach((row, index) => {
      const columns = table!.pairs.map(({ to }, at) => ({ from: row[at]!, to })).filter(({ from }) => from !== '');
      expect(columns).toEqual(apart[index]!.pairs);
    });
    // The same rows, whichever the page has room for.
    const rows = inRows(table!);
    expect(rows.flatMap(({ besides }) => besides![0]!.reads)).toEqual(readings[1]);
  });

  it('gives every mark of the gauge one change, and lands in the window with each, lowest first', () => {
    const [first, ...rest] = tables();
    const rows = [
      first!,
      ...rest.slice(
        0,
        rest.findIndex(({ title }) => title !== ''),
      ),
    ];
    const pairs = rows.flatMap((row) => row.pairs);
    const rate = 3 / 0.0254;
    let next: number | null = null;
    for (const [read, change] of pairs) {
      const [low, high] = read.split('–').map(Number) as [number, number?];
      if (next !== null) expect(low).toBe(next);
      next = (high ?? low) + 1;
      for (const reading of [low, high ?? low]) {
        const lands = reading + rate * Number(change);
        expect(lands).toBeGreaterThanOrEqual(250);
        expect(lands).toBeLessThanOrEqual(258);
      }
    }
    // 15 % under 250 bar is 212.5: as low as a settled unit is looked for where no limit in service says it; and 3 % over.
    expect(pairs[0]![0]).toMatch(/^212/u);
    expect(next).toBe(267);
  });

  it('is not made where the drawer has no even steps, or no rate is given', () => {
    const uneven = {
      shop: (text: string) => text.replace(/from 1\.00 mm to \S+ mm by 0\.05 mm/u, 'of 1.00 mm, 1.10 mm, 1.15 mm'),
    };
    expect(tables(uneven)).toEqual([]);
    const bare = { repairs: instead(' by shim-rate', '') };
    expect(tables(bare)).toEqual([]);
  });

  it('counts two on each other, where they go on in the same steps', () => {
    expect(tables(stock('by 0.05 mm stacks of two'))).toEqual(tables());
    // Two of 1.00 to 1.90 mm by 0.10 mm make 2.00 mm next; without 1.90 mm there is a hole.
    const made = (last: string) => ({
      shop: (text: string) => text.replace(/from 1\.00 mm to \S+ mm by 0\.05 mm/u, `of ${last} stacks of two`),
    });
    const tenths = Array.from({ length: 9 }, (_, tenth) => `1.${tenth}0 mm`).join(', ');
    expect(tables(made(`${tenths}, 1.90 mm`)).length).toBeGreaterThan(0);
    expect(tables(made(`${tenths}, 1.90 mm (0)`))).toEqual([]);
  });

  it('does not grow beyond four rows, however fine the drawer is', () => {
    const fine = tables(stock('by 0.01 mm'));
    expect(fine.length).toBeLessThanOrEqual(8);
    expect(fine.flatMap(({ pairs }) => pairs).length).toBeLessThanOrEqual(56);
  });
});
