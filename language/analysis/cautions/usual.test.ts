import { describe, expect, test } from 'vitest';
import { procedure, q, shop, step } from '../../../tests/fixtures/injector.ts';
import { renderText } from '../../documents/renderers/index.ts';
import { buildSheet } from '../../documents/traveler/index.ts';
import { wordsIn } from '../../i18n/index.ts';
import type { Procedure, Step } from '../../model/index.ts';
import { topics, usualCautions, usualHazards } from './index.ts';

/** A procedure of one stage with these steps. */
function of(steps: readonly Step[], more: Partial<Procedure> = {}, station = 'strip'): Procedure {
  return {
    ...procedure,
    repairs: [],
    ...more,
    stages: [
      {
        ...procedure.stages[0]!,
        name: 'only',
        station,
        together: false,
        steps,
      },
    ],
  };
}

const headOf = (made: Procedure) => (usualCautions(made).stages.get('only') ?? []).map(({ topic }) => topic);

describe('the texts', () => {
  test('there is one for each topic, with a signal word, short enough to be read', () => {
    expect(usualHazards.map(({ topic }) => topic).sort()).toEqual([...topics].sort());
    for (const { topic, word, repeats } of usualHazards) {
      const { text, short }: { text: string; short?: string } = wordsIn('en').cautions[topic];
      expect(['DANGER', 'WARNING', 'CAUTION', 'NOTICE']).toContain(word);
      expect(text.split(' ').length).toBeLessThanOrEqual(60);
      expect(short?.length ?? 0).toBeLessThanOrEqual(90);
      // A step or the head of a stage prints the short line; a rule of the whole shop is printed once, in full.
      expect(short === undefined, topic).toBe(['alone', 'disposal', 'oil-on-skin', 'rags'].includes(topic));
      expect(repeats && short === undefined, topic).toBe(false);
    }
  });

  test("where they are printed, the last word is left to local codes, the maker's data and the data sheets", () => {
    const sheet = buildSheet(procedure, {
      job: null,
      number: null,
      paper: 'a4',
      draft: false,
      diagnostics: [],
      hash: '',
    });
    const safety = sheet.blocks.find((block) => block.kind === 'safety')!;
    expect(safety.rows.length).toBeGreaterThan(0);
    const precedence = /local codes.*manufacturer['’]s data.*safety data sheets.*precedence/giu;
    expect(renderText(sheet).join('\n').match(precedence)).toHaveLength(1);
  });
});

describe('what calls for which', () => {
  const cases: [string, Step, string, string[]][] = [
    ['connecting', step('connect', 'port:inlet'), 'tester', ['injection', 'alone']],
    [
      'priming',
      step('prime', '', { count: { form: 'nominal', nominal: q('6 strokes'), plus: null, minus: null } }),
      'tester',
      ['injection', 'mist', 'oil-on-skin'],
    ],
    ['disconnecting', step('disconnect', 'port:inlet'), 'strip', ['let-down']],
    [
      'washing in flammable solvent',
      step('wash', 'body', { fluid: 'solvent' }),
      'tank',
      ['flammable', 'solvent', 'rags', 'disposal'],
    ],
    ['rinsing in test oil', step('rinse', 'body', { fluid: 'cal-oil' }), 'clean-room', ['oil-on-skin', 'disposal']],
    ['buffing', step('buff', 'body'), 'wheel', ['wheel', 'noise', 'alone']],
    ['blasting', step('blast', 'body'), 'wheel', ['blasting', 'noise']],
    ['taking off a spring', step('remove', 'spring'), 'strip', ['spring']],
    ['taking off a spring seat', step('remove', 'seat'), 'strip', []],
    ['compressing', step('compress', 'body'), 'strip', ['spring']],
    ['pressing', step('press', 'body'), 'strip', ['press']],
    ['blowing dry', step('blow-dry', 'body'), 'tank', ['air', 'noise']],
    ['wiping', step('wipe', 'body'), 'strip', ['rags']],
    ['lapping', step('lap', 'body.end'), 'strip', ['lapping']],
    [
      'words, whatever they sound like',
      step('do', '', { text: 'Drive the solenoid with the hoist over the oven' }),
      'strip',
      [],
    ],
    ['clamping', step('clamp', 'body'), 'strip', []],
  ];
  test.each(cases)('%s', (_, one, station, expected) => {
    expect(headOf(of([one], {}, station))).toEqual(expected);
  });

  test('a caustic tank', () => {
    const fluids = [
      {
        ...shop.fluids[0]!,
        name: 'lye',
        kind: 'caustic' as const,
        flammable: null,
      },
    ];
    expect(headOf(of([step('soak', 'body', { fluid: 'lye' })], { shop: { ...shop, fluids } }, 'tank'))).toEqual([
      'caustic',
      'alone',
      'disposal',
    ]);
  });
});

describe('where they are printed', () => {
  const uncap = step('uncap', 'port:inlet');
  const connect = step('connect', 'port:inlet');
  const prime = step('prime');
  const relieve = step('relieve');

  test('in full again before connect and prime, but not twice on end', () => {
    const { steps } = usualCautions(of([uncap, connect, prime, relieve], {}, 'tester'));
    expect(steps.get(connect)!.full.map(({ topic }) => topic)).toEqual(['injection']);
    expect(steps.get(prime)!.full.map(({ topic }) => topic)).toEqual(['mist']);
    expect(steps.get(prime)!.short.map(({ topic }) => topic)).toEqual(['injection']);
  });

  test('the first step of a stage does not repeat what is right above it', () => {
    const { steps } = usualCautions(of([connect, prime], {}, 'tester'));
    expect(steps.get(connect)!.full).toEqual([]);
    expect(steps.get(connect)!.short).toEqual([]);
  });

  test('a short line at later steps', () => {
    const { steps } = usualCautions(of([uncap, relieve], {}, 'tester'));
    expect(steps.get(relieve)!.short.map(({ topic }) => topic)).toEqual(['let-down']);
    expect(steps.has(uncap)).toBe(false);
  });

  test('first aid wherever there is test pressure, and nowhere else', () => {
    expect(usualCautions(of([connect], {}, 'tester')).pressure).toBe(true);
    expect(usualCautions(of([uncap])).pressure).toBe(false);
  });
});
