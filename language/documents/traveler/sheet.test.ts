import { describe, expect, test } from 'vitest';
import { jobOf, procedure, q, step } from '../../../tests/fixtures/injector.ts';
import { wordsIn } from '../../i18n/index.ts';
import { spanText } from '../../i18n/message.ts';
import type { Procedure, Step, StepOf } from '../../model/index.ts';
import { verbs } from '../../model/verbs.ts';
import { holdTables } from '../figures/hold-table.ts';
import { holdLookup } from '../figures/lookups.ts';
import type { Block, StepBlock } from '../model.ts';
import { buildPrintContext, type SheetOptions } from '../print-context.ts';
import { renderText } from '../texts.ts';
import { conditionsOf } from '../tools.ts';
import { buildSheetContext } from './context.ts';
import { failPath } from './fail-path.ts';
import { buildSentence } from './sentences.ts';
import { buildSheet } from './sheet.ts';
import { stepBlock } from './steps.ts';

const blank: SheetOptions = {
  job: null,
  number: null,
  paper: 'a4',
  draft: false,
  diagnostics: [],
  hash: 'ab'.repeat(32),
};
const flat = (text: string) => text.replace(/[\u00a0\u202f]/gu, ' ');
const say = (one: Step, made: Procedure = procedure) =>
  flat(spanText(buildSentence({ procedure: made, words: wordsIn('en') }, one)));
const stepsOf = (blocks: readonly Block[]) => blocks.filter((block): block is StepBlock => block.kind === 'step');
const stepAt = (number: string) => procedure.stages.flatMap(({ steps }) => steps).find((one) => one.number === number)!;

describe('sentences', () => {
  test('parts in the author’s words, with what locates them', () => {
    expect(say(stepAt('6.5'))).toBe(
      'Fit the setting shim, pressure spring, spring seat, spacer disc (on its two dowels) and nozzle (on its two dowels) with the needle.',
    );
  });
  test('all parts, and all but some', () => {
    const [all] = [stepAt('5.6')];
    expect(say(all!)).toBe('Blow dry all parts.');
    expect(say({ ...all!, objects: all!.objects.slice(1) })).toBe('Blow dry all parts except the holder.');
  });
  test('what an adjuster or a reading is called comes from its spec', () => {
    expect(say(stepAt('2.3'))).toBe('Read the opening pressure, as found.');
    expect(say(stepAt('7.3'))).toBe('Test opening pressure.');
  });
  test('every verb makes a sentence that begins large', () => {
    for (const verb of verbs) {
      const text = say(step(verb, 'body', { text: 'Author’s words', reading: 'opening' }));
      expect(text, verb).toMatch(/^\p{Lu}/u);
      expect(text, verb).not.toMatch(/undefined|null|\s{2}/u);
    }
  });
  test('copies by cylinder are said once', () => {
    const copies = [1, 2, 3].map((position) => ({
      ...procedure.family.parts[0]!,
      name: `body-${position}`,
      base: 'body',
      title: `Holder, cylinder ${position}`,
      position,
    }));
    const made = {
      ...procedure,
      family: { ...procedure.family, parts: copies },
    };
    expect(say(step('remove', 'body-1 body-2 body-3'), made)).toBe('Remove the 3 holders.');
    expect(say(step('remove', 'body-1 body-3'), made)).toBe('Remove the holder, cylinders 1 and 3.');
  });
});

describe('fail paths', () => {
  const context = buildSheetContext(procedure, blank);
  const path = (number: string) =>
    failPath(context, stepAt(number), (one) => stepBlock(context, one))!.ways.map(({ mark, when, stops, end }) =>
      [
        `${mark} ${when}`.trim(),
        ...stops.map((stop) =>
          [
            stop.number,
            stop.title,
            ...stop.steps.map(({ sentence }) => spanText(sentence)),
            `(${[stop.tries, stop.back].filter((word) => word !== '').join(', ')})`,
          ]
            .filter((word) => word !== '')
            .join(' '),
        ),
        end,
      ]
        .filter((word) => word !== '')
        .join(' → '),
    );
  test('from repair to repair by their numbers where they are under the tests, and the lead at the end', () => {
    expect(path('7.3')).toEqual(['✗ → R1 (3 attempts max.) → HOLD']);
    expect(path('7.4')).toEqual(['✗ → R2 (1 attempt) → R3 (1 attempt) → HOLD']);
  });
  test('across the set, of the unit furthest out', () => {
    expect(path('8.1')).toEqual(['✗ → R1 Reshim (on the unit furthest from the others, 3 attempts max.) → HOLD']);
  });
  test('verdicts have each their own, with what is done; one that is never used up leads nowhere', () => {
    expect(path('6.3')).toEqual([
      'L lap: stained → R5 Lap the end face of the holder (no limit)',
      'R reject: scored or pitted → HOLD',
    ]);
  });
  test('a repair of one step is where it is called for', () => {
    expect(path('6.2')).toEqual(['✗ → R4 Replace the nozzle and needle (1 attempt) → HOLD']);
  });
});

describe('boxes', () => {
  test('a blank sheet has a set of six where something is done together, else one unit', () => {
    expect(buildPrintContext(procedure, blank).columns).toHaveLength(6);
    const alone = {
      ...procedure,
      stages: procedure.stages.filter(({ together }) => !together),
    };
    expect(buildPrintContext(alone, blank).columns).toHaveLength(1);
  });
  test('a mixed set carries its numbers, a unit on hold says so', () => {
    expect(buildPrintContext(procedure, { ...blank, job: jobOf(6) }).columns.map(({ detail }) => detail)).toEqual([
      'A-250',
      'A-250',
      'A-250',
      'A-220',
      'A-250',
      'on hold',
    ]);
    expect(buildPrintContext(procedure, { ...blank, job: jobOf(3) }).columns.map(({ detail }) => detail)).toEqual([
      '',
      '',
      'on hold',
    ]);
  });
  test('the log has a column for all that is set, tightened and tested, and a line for each time', () => {
    const made = buildSheet(procedure, { ...blank, job: jobOf(3) });
    const [log] = made.blocks.filter((block) => block.kind === 'log');
    expect(log!.columns.map(({ step, name, unit }) => `${step} ${name}, ${unit}`.trim())).toEqual([
      'Repair done,',
      'Shim out, mm',
      'Shim in, mm',
      expect.stringContaining('Nozzle nut, Torqued ✓ 60'),
      expect.stringMatching(/^7\.3 Opening pressure, 250 to 258.bar$/u),
      '7.4 Seat leak, ✓ or ✗',
      '7.5 Chatter, ✓ or ✗',
      '7.6 Spray, ✓ or ✗',
      expect.stringMatching(/^7\.7 Back leak, 6 to 20.s$/u),
      'Initials,',
    ]);
    expect(log!.units.map(({ lines }) => lines.length)).toEqual([6, 6, 6]);
    expect(log!.units[0]!.lines[0]!.cells[0]).toBe('as built');
  });
});

describe('the sheet', () => {
  const sheet = buildSheet(procedure, { ...blank, job: jobOf(6) });

  test('is plain data, the same each time', () => {
    expect(JSON.parse(JSON.stringify(sheet))).toEqual(sheet);
    expect(buildSheet(procedure, { ...blank, job: jobOf(6) })).toEqual(sheet);
  });
  test('has every step of the stages once, in order, with its number', () => {
    const wanted = procedure.stages.flatMap(({ steps }) => steps.map(({ number }) => number));
    expect(stepsOf(sheet.blocks).map(({ number }) => number)).toEqual(wanted);
  });
  test('works out what to hold for every reading, for each number', () => {
    const leak = stepsOf(sheet.blocks).find(({ number }) => number === '7.4')!;
    expect(leak.lookups.map(({ title, pairs }) => [title, pairs[0], pairs.at(-1)])).toEqual([
      ['A-250: Hold pressure for each opening pressure, bar', { from: '250', to: '230' }, { from: '258', to: '238' }],
      ['A-220', { from: '220', to: '200' }, { from: '228', to: '208' }],
    ]);
  });
  test('works out what to hold for what passes with a new part, too', () => {
    const newSpring = { form: 'range', low: q('258 bar'), high: q('266 bar') } as const;
    const whole = {
      ...procedure,
      specs: procedure.specs.map((one) => (one.name === 'opening' ? { ...one, whenNew: newSpring } : one)),
    };
    const made = buildSheet({ ...whole, numbers: [] }, { ...blank, job: null });
    const leak = stepsOf(made.blocks).find(({ number }) => number === '7.4')!;
    expect(leak.lookups[0]!.pairs.at(-1)).toEqual({ from: '266', to: '246' });
  });
  test("works out what to hold in the shop's window too, on the marks of its gauge", () => {
    const psi = { form: 'nominal', nominal: q('3750 psi'), plus: null, minus: null } as const;
    const opening = { form: 'nominal', nominal: q('25855 kPa'), plus: null, minus: null, pair: psi } as const;
    const pairs = (graduated: string | null) => {
      const made: Procedure = {
        ...procedure,
        numbers: [],
        specs: procedure.specs.map((spec) => (spec.name === 'opening' ? { ...spec, rebuilt: opening } : spec)),
        shop: {
          ...procedure.shop,
          unlessStated: [
            {
              kind: 'pressure',
              limit: { form: 'tolerance', plus: q('3 %'), minus: q('0 %') },
              sourceText: null,
              source: procedure.shop.source,
            },
          ],
          assets: procedure.shop.assets.map((asset) =>
            asset.kind === 'gauge' && graduated !== null
              ? {
                  ...asset,
                  range: { form: 'range', low: q('0 psi'), high: q('6000 psi') },
                  graduated: q(graduated),
                }
              : { ...asset, at: graduated === null ? null : asset.at },
          ),
        },
      };
      const test = stepAt('7.4') as StepOf<'test'>;
      const hold = { ...test.test.hold!, amount: { ...psi, nominal: q('500 psi') } };
      const leak = { ...test, test: { ...test.test, hold } };
      const setting = buildPrintContext(made, blank);
      return holdLookup(setting, holdTables(setting, leak, { station: 'tester' })).map((table) => [
        flat(table.title).split(', ').at(-1),
        table.pairs.map(({ from, to }) => `${from}-${to}`).join(' '),
      ]);
    };
    const all = '3750-3250 3770-3270 3790-3290 3810-3310 3830-3330 3850-3350 3860-3360';
    expect(pairs('10 psi')).toEqual([['psi', all]]);
    expect(pairs('50 psi')).toEqual([['psi', '3750-3250 3800-3300 3850-3350']]);
    // With no gauge, the unit of what is taken off.
    expect(pairs(null)).toEqual([['psi', '3750-3250 3770-3270 3790-3290 3810-3310 3830-3330 3850-3350 3862-3362']]);
  });
  test('leaves out steps for other numbers, and keeps the gap', () => {
    const numbers = stepsOf(buildSheet(procedure, { ...blank, number: 'A-250' }).blocks).map(({ number }) => number);
    expect(numbers).toContain('6.8');
    expect(numbers).not.toContain('6.9');
    expect(stepsOf(sheet.blocks).find(({ number }) => number === '6.9')!.only).toBe('Only A-220, unit 4');
  });
  test('a job of one number alone can be printed', () => {
    const only = buildSheet(procedure, {
      ...blank,
      job: jobOf(6),
      number: 'A-220',
    });
    const units = only.blocks.find((block) => block.kind === 'table' && block.title === 'Units');
    expect(units?.kind === 'table' ? units.rows.map(([place]) => place!.text) : []).toEqual(['4']);
  });
  test('renewed parts are counted for the set', () => {
    const tables = sheet.blocks.flatMap((block) => (block.kind === 'tables' ? block.tables : []));
    const table = tables.find(({ title }) => title === 'Replace every time');
    expect(table !== undefined ? table.rows.map((row) => row.map(({ text }) => text)) : []).toEqual([
      ['Sealing washer', '1', '6', ''],
      ['Dust seal', '1', '6', ''],
    ]);
  });
  test('a draft, or an error, has a watermark; a warning only its line', () => {
    const diagnostic = {
      rule: 'gate-stale',
      message: 'The gate is stale.',
      source: procedure.source,
      step: '7.3',
    } as const;
    expect(sheet.watermark).toBeNull();
    expect(buildSheet(procedure, { ...blank, draft: true }).watermark).toBe('DRAFT');
    expect(
      buildSheet(procedure, {
        ...blank,
        diagnostics: [{ ...diagnostic, severity: 'error' }],
      }).watermark,
    ).toBe('DRAFT');
    const warned = buildSheet(procedure, {
      ...blank,
      diagnostics: [{ ...diagnostic, severity: 'warning' }],
    });
    expect(warned.watermark).toBeNull();
    expect(renderText(warned)).toContain('The gate is stale.');
    expect(
      renderText(
        buildSheet(procedure, {
          ...blank,
          diagnostics: [{ ...diagnostic, severity: 'hint' }],
        }),
      ),
    ).not.toContain('The gate is stale.');
  });
  test('not approved is said large', () => {
    expect(sheet.header.alarm).toBeNull();
    expect(buildSheet({ ...procedure, approvedBy: null, approvedOn: null }, blank).header.alarm).toBe('NOT APPROVED');
  });
  test('the code is a link to what it was printed from', () => {
    expect(sheet.header.qr.text).toBe(
      `vscode://handtight.handtight/sheet?procedure=rebuild-injector-17&revision=B&job=2207&hash=${blank.hash.slice(0, 12)}`,
    );
  });
  test('each page is identified by one line; for whom and by whom appears once', () => {
    const titled = {
      ...procedure,
      numbers: procedure.numbers.map((number) => ({ ...number, title: 'Old pattern with grooved spacer' })),
    };
    const job = { ...jobOf(6), customer: 'Harbour towing company (invented), port main engine' };
    for (const made of [buildSheet(titled, { ...blank, job }), buildSheet(titled, blank)]) {
      const written = made.header.facts.map(({ label, text }) => `${label} ${text}`).join(' ');
      expect(written).toContain('rebuild-injector-17');
      expect(written.length).toBeLessThan(90);
      const [facts] = made.blocks.filter((block) => block.kind === 'facts');
      expect(facts!.facts.find(({ label }) => label === 'Part number')?.text).toBe('A-250, A-220');
      expect(renderText(made).join('\n')).toContain('A-250 Old pattern with grooved spacer');
    }
  });
  test('concessions are at their step and in the last table', () => {
    const last = sheet.blocks.at(-1)!;
    expect(last.kind === 'table' ? last.rows.map((row) => row.map(({ text }) => text)) : []).toEqual([
      ['Spec shim rate', 'rate-not-measured', 'Shop rule; the prediction is checked by the re-test'],
      ['Step 7.3', 'gauge-too-coarse', 'Gauge of class 0.1 is on order'],
    ]);
    expect(stepsOf(sheet.blocks).find(({ number }) => number === '7.3')!.notes).toEqual([
      {
        label: 'Allowed',
        text: 'gauge-too-coarse because Gauge of class 0.1 is on order',
      },
    ]);
  });
  test('an empty procedure still makes a sheet', () => {
    const empty = {
      ...procedure,
      stages: [],
      repairs: [],
      specs: [],
      numbers: [],
    };
    expect(renderText(buildSheet(empty, blank))).toContain(sheet.header.title);
  });
  test('a left-hand thread is mentioned at each turn, in the right direction', () => {
    const joints = procedure.family.joints.map((joint) => ({
      ...joint,
      leftHand: true,
    }));
    const made = { ...procedure, family: { ...procedure.family, joints } };
    const blocks = stepsOf(buildSheet(made, blank).blocks);
    const told = (number: string) =>
      blocks.find((one) => one.number === number)!.facts.find(({ text }) => text.includes('LEFT-HAND'))?.text;
    expect(told('3.3')).toBe('LEFT-HAND THREAD: turn clockwise to slacken');
    expect(told('6.7')).toBe('LEFT-HAND THREAD: turn counterclockwise to tighten');
  });
  test('the class of a solid bolt is printed beside its thread, where it is tightened', () => {
    const joints = procedure.family.joints.map((joint) => ({
      ...joint,
      solid: { diameter: q('20 mm'), pitch: q('1.5 mm'), propertyClass: '8.8' },
    }));
    const made = { ...procedure, family: { ...procedure.family, joints } };
    const factsAt = (number: string) =>
      stepsOf(buildSheet(made, blank).blocks).find((one) => one.number === number)!.facts;
    expect(factsAt('6.6')).toContainEqual({ label: 'Thread', text: 'M20x1.5, class 8.8' });
    // Said in the same breath, where it is run down.
    expect(factsAt('6.7').filter(({ label }) => label === 'Thread')).toEqual([]);
    expect(factsAt('3.3').filter(({ text }) => text.includes('class'))).toEqual([]);
  });
  test('a step with takes, passes, holder and the rest prints each', () => {
    const made = {
      ...procedure,
      stages: [
        {
          ...procedure.stages[5]!,
          steps: [
            {
              ...stepAt('6.7'),
              passes: [q('50 %'), q('100 %')],
              holder: 'pin spanner',
              takes: q('10 min'),
              oiled: true,
              note: 'Slowly',
            },
          ],
        },
      ],
    };
    const text = flat(renderText(buildSheet(made, blank)).join(' | '));
    for (const wanted of ['50 %, 100 %', 'pin spanner', '10 min', 'Oil the threads', 'Slowly', 'M20x1.5', 'TW-80'])
      expect(text).toContain(wanted);
  });
});

test('air and vacuum are conditions in the language of the sheet, before the words of the author', () => {
  const tight = step('test', '', { reading: 'tight', gas: 'vacuum', conditions: ['upright'] });
  expect(conditionsOf(wordsIn('en'), tight)).toEqual(['vacuum', 'upright']);
  expect(conditionsOf(wordsIn('es'), tight)).toEqual(['vacío', 'upright']);
  expect(conditionsOf(wordsIn('de'), step('do', '', { gas: 'air' }))).toEqual([]);
});
