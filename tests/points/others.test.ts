/** A turbocharger and a rail injector: planes, points that follow each other, readings that are worked out, codes and words. */
import { describe, expect, it } from 'vitest';
import { unitLines } from '../../language/drafting/unit-lines.ts';
import { jobOf } from './job.ts';

const done = 'done by "A. B." on 2026-10-05';
const lines = (...all: readonly string[]) => all.map((one) => `    ${one}\n`).join('');

describe('a turbocharger', () => {
  const turbo = (...all: readonly string[]) =>
    jobOf(
      'turbocharger-balanced-at-two-planes',
      'balance-turbo',
      `  unit 1 number T-1 serial 77 {\n${lines(...all)}  }`,
    );
  const whole = [
    'damage "Rub marks on the housing"',
    'balance 0.30 g·mm at turbine with BAL-1',
    'balance compressor 0.22 g·mm with BAL-1',
    'sheet "00417"',
    'travel begins 1.0 mm with SG-10   travel half 5.8 mm with SG-10   travel ends 10.4 mm with SG-10',
    done,
  ];
  const without = (word: string) => turbo(...whole.filter((one) => !one.includes(word)));

  it('is certified by both planes, all points and what was found', () => {
    expect(turbo(...whole).found).toEqual([]);
    expect(turbo(...whole).missing()).toEqual([]);
    const text = turbo(...whole)
      .certificate()
      .join('\n');
    for (const one of [
      'Unbalance left, Turbine plane',
      '0.30 g·mm',
      'What was found',
      'Rub marks on the housing',
      '00417',
    ])
      expect(text).toContain(one);
  });

  it('misses what is left out', () => {
    expect(without('compressor').missing()).toEqual([
      'unit 1 T-1 77: Unbalance left, Compressor plane: no result is written down. Write what was read, or pass or fail.',
    ]);
    expect(without('damage').missing()).toEqual([
      'unit 1 T-1 77: What was found: nothing is written down, and the procedure asks for it. Write it in quotes behind its name.',
    ]);
  });

  it('takes the code of the right length, and no other', () => {
    expect(turbo('sheet "417"').found).toEqual([
      'result-unreadable: “417” is no code of 5 digits. Read it again and write it whole, without blanks.',
    ]);
    expect(turbo('balance 0.30 g·mm at exhaust').found).toEqual([
      'result-unreadable: There is no plane exhaust: they are turbine, compressor.',
    ]);
  });
});

describe('a rail injector', () => {
  const injector = (...all: readonly string[]) =>
    jobOf(
      'rail-injector-with-codes-and-a-lift',
      'code-injector',
      `  unit 1 number R-1 serial 78 {\n${lines(...all)}  }`,
    );
  const whole = (before = '1.82', after = '1.37') => [
    'seat "stained"',
    `depth-before ${before} mm with DI-10   depth-after ${after} mm with DI-10`,
    'delivery full 62.5 mL on GC-100   delivery idle 8.1 mL on GC-100   delivery pilot 2.2 mL on GC-100',
    'return-flow 31 mL on GC-100',
    'trim "A7K2Q9"',
    done,
  ];

  it('is held to a lift that is worked out of two depths', () => {
    expect(injector(...whole()).found).toEqual([]);
    expect(injector(...whole()).missing()).toEqual([]);
    expect(
      injector(...whole())
        .certificate()
        .join('\n'),
    ).toContain('0.45 mm ✓');
    expect(injector(...whole('1.90')).missing()).toEqual([
      'unit 1 R-1 78: Lift: the last reading, 0.53 mm, is outside 0.42 to 0.48 mm. Correct the unit and write what was changed and read, or put it on hold.',
    ]);
    expect(injector(...whole().map((one) => one.replace(/ {3}depth-after.*/u, ''))).missing()).toEqual([
      'unit 1 R-1 78: Lift: no result is written down. Write what was read, or pass or fail.',
    ]);
  });

  it('has lines with its words, and with what its lift is worked out of', () => {
    expect(unitLines(injector(...whole()).procedure, (like) => `(${like})`)).toEqual([
      'seat "(words)"',
      'depth-before (figure) mm on DI-1',
      'depth-after (figure) mm on DI-1',
      'delivery full (figure) mL on GC-100',
      'delivery idle (figure) mL on GC-100',
      'delivery pilot (figure) mL on GC-100',
      'return-flow (figure) mL on GC-100',
      'trim "(words)"',
      'done by "(name)" on (date)',
    ]);
  });

  it('takes one of the words', () => {
    expect(injector('seat "fine"').found).toEqual([
      'result-unreadable: “fine” is none of the words to choose from. Write "bright", "stained" or "pitted".',
    ]);
  });
});
