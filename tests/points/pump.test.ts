/** An in-line pump: phasing from one cylinder, deliveries at points and cylinders, a governor whose points follow each other. */
import { describe, expect, it } from 'vitest';
import { unitLines } from '../../language/drafting/unit-lines.ts';
import { jobOf } from './job.ts';

const deliveries = `delivery full 92.1, 91.5, 92.0, 91.8, 92.3, 91.9 mL on GC-100
    delivery torque 96.0, 95.5, 96.2, 95.8, 96.4, 95.9 mL on GC-100
    delivery idle 14.0, 13.5, 14.5, 14.0, 13.8, 14.1 mL on GC-100
    delivery starting 26.0, 25.5, 26.5, 26.0, 25.8, 26.1 mL on GC-100`;
const phasing = 'phasing 240.1, 120.2, 300.0, 59.9, 180.3 cam °';
const governor = 'governor begins 1042 rpm with TM-1   governor ends 1118 rpm with TM-1';
const done = 'done by "A. B." on 2026-10-05';
const whole = `${phasing}\n    ${deliveries}\n    ${governor}\n    ${done}`;

const pump = (lines: string, changes?: readonly (readonly [string, string])[]) =>
  jobOf(
    'pump-phased-and-calibrated-by-a-table',
    'calibrate-six',
    `  unit 1 number P-6 serial 0411 {\n    ${lines}\n  }`,
    changes,
  );

describe('the readings of a pump', () => {
  it('are one for each point and place', () => {
    const { found, job } = pump(whole);
    expect(found).toEqual([]);
    const { results } = job.units[0]!;
    const read = results.flatMap((one) =>
      one.form === 'reading' ? [`${one.name} ${one.value.number} ${one.value.unit}`] : [],
    );
    expect(read).toHaveLength(5 + 24 + 2);
    expect(read.slice(0, 7)).toEqual([
      // From cylinder 1, in the order in which the family lists them.
      'phasing//2 240.1 cam °',
      'phasing//3 120.2 cam °',
      'phasing//4 300.0 cam °',
      'phasing//5 59.9 cam °',
      'phasing//6 180.3 cam °',
      'delivery/full/1 92.1 mL',
      'delivery/full/2 91.5 mL',
    ]);
  });

  it('can be certified when all are inside', () => {
    const { missing, certificate } = pump(whole);
    expect(missing()).toEqual([]);
    expect(certificate().join('\n')).not.toContain('not required');
    // One source for all points and places of a test.
    const sources = certificate().find((text) => text.startsWith('Source of limits'))!;
    expect(sources).toContain('delivery');
    expect(sources).not.toMatch(/cylinder|full load/iu);
    expect(certificate().join('\n')).toContain(
      'Full load: 1000 rpm, rack 9.0 mm ±0.05, 1000 strokes; Peak torque: 600 rpm',
    );
  });

  it('are each held to the limit of their point, their place in the order, and their part number', () => {
    const wrong = (from: string, to: string) => pump(whole.replace(from, to)).missing();
    const sentence = (from: string, to: string) => wrong(from, to).map((one) => one.replace(/(?<!P)\. .*$/u, ''));
    expect(sentence('91.5, 92.0', '90.8, 92.0')).toEqual([
      'unit 1 P-6 0411: Delivery, Full load, cylinder 2: the last reading, 90.8 mL, is outside 91 to 93 mL',
    ]);
    // The fifth after cylinder 1 in 1, 5, 3, 6, 2, 4 is cylinder 4.
    expect(sentence('300.0', '300.6')).toEqual([
      'unit 1 P-6 0411: Phasing, cylinder 4: the last reading, 300.6 cam °, is outside 299.5 to 300.5 cam °',
    ]);
    expect(
      jobOf(
        'pump-phased-and-calibrated-by-a-table',
        'calibrate-six',
        `  unit 1 number P-6L serial 0411 {\n    ${whole}\n  }`,
      )
        .missing()
        .filter((one) => one.includes('is outside')),
    ).toHaveLength(6);
  });

  it('lie no further apart than the spread, and on their side of an earlier point', () => {
    const missing = (from: string, to: string) => pump(whole.replace(from, to)).missing();
    expect(missing('14.0, 13.5, 14.5', '12.2, 13.5, 15.6')).toEqual([
      'unit 1 P-6 0411: Delivery, Idle: the places of the unit are 3.4 mL apart, and at most 3 mL is allowed. Correct those that are furthest out, and write the new readings.',
    ]);
    const wide: readonly (readonly [string, string])[] = [['1040 rpm ±15', '1040 rpm ±100']];
    expect(pump(whole.replace('begins 1042', 'begins 1120'), wide).missing()).toEqual([
      'unit 1 P-6 0411: Governor, Break-off ends: 1118 rpm is not above what was read at break-off begins, 1120 rpm. Check both readings, or correct the unit and test both points again.',
    ]);
  });

  it('are reported in the text of the job where one of them is', () => {
    const hints = (from: string, to: string, wide: readonly (readonly [string, string])[] = []) =>
      pump(whole.replace(from, to), wide).found;
    expect(hints('14.0, 13.5, 14.5', '12.2, 13.5, 15.6')).toEqual([
      'signed-and-fails: Delivery, Idle: the places of the unit are 3.4 mL apart, and at most 3 mL is allowed: whoever reads the signature takes the unit for a good one, and it cannot be certified. Correct those that are furthest out, and write the new readings.',
    ]);
    expect(hints('begins 1042', 'begins 1120', [['1040 rpm ±15', '1040 rpm ±100']])).toEqual([
      'signed-and-fails: Governor, Break-off ends: 1118 rpm is not above what was read at break-off begins, 1120 rpm: whoever reads the signature takes the unit for a good one, and it cannot be certified. Check both readings, or correct the unit and test both points again.',
    ]);
  });

  it('are conceded one by one', () => {
    const outside = whole.replace('91.5, 92.0', '93.2, 92.0');
    const concession = 'by "Lead" on 2026-11-05 "agreed by telephone"';
    const signed = (line: string) => pump(outside.replace(done, `${line}\n    ${done}`));
    expect(signed('').missing()).not.toEqual([]);
    expect(signed(`concession delivery full at cylinder 3 ${concession}`).missing()).toEqual(signed('').missing());
    expect(signed(`concession delivery full at cylinder 2 ${concession}`).missing()).toEqual([]);
    expect(signed(`concession delivery full ${concession}`).found).toContain(
      'result-unreadable: A concession is for one reading, and delivery is read at each cylinder: write at which behind it.',
    );
    expect(signed(`concession phasing at cylinder 7 ${concession}`).found).toContain(
      'result-unreadable: There is no cylinder 7: they are 2, 3, 4, 5, 6.',
    );
  });

  it('are written in a line for each point, with a gap for all places', () => {
    const { procedure } = pump(whole);
    const gaps = ['92.1, 91.5, 92.0, 91.8, 92.3, 91.9', '96.0, 95.5, 96.2, 95.8, 96.4, 95.9'];
    gaps.push('14.0, 13.5, 14.5, 14.0, 13.8, 14.1', '26.0, 25.5, 26.5, 26.0, 25.8, 26.1');
    const figures = [...gaps, '240.1, 120.2, 300.0, 59.9, 180.3', ...gaps, '1042', '1118'];
    const words: Readonly<Record<string, string>> = { name: 'A. B.', date: '2026-10-05' };
    const made = unitLines(procedure, (like) => words[like] ?? figures.shift()!);
    expect(made[4]).toBe('phasing 240.1, 120.2, 300.0, 59.9, 180.3 cam °');
    expect(figures).toEqual([]);
    const { found, missing } = pump(made.join('\n    '));
    expect(found).toEqual([]);
    expect(missing()).toEqual([]);
  });

  it('are missed one by one', () => {
    const missing = pump(`${phasing}\n    ${done}`).missing();
    expect(missing).toHaveLength(24 + 2);
    expect(missing[0]).toBe(
      'unit 1 P-6 0411: Delivery, Full load, cylinder 1: no result is written down. Write what was read, or pass or fail.',
    );
    // One place alone, and all of them.
    expect(pump(whole.replace('phasing 240.1, 120.2, 300.0', 'phasing 240.1, 120.2'))).toMatchObject({
      found: [
        'not-proven: Phasing, cylinder 2: no result is written down: the certificate is not made out without it. Write what was read, or pass or fail.',
        'result-unreadable: These are 4 figures, and 5 are read: one for each cylinder, 2, 3, 4, 5, 6.',
      ],
    });
    expect(pump(`${whole}\n    phasing 300.2 cam ° at cylinder 4\n    ${done}`).missing()).toEqual([]);
  });

  it('say where they were read, or are refused', () => {
    const found = (line: string) => pump(line).found;
    expect(found('delivery 92 mL')).toEqual([
      'result-unreadable: delivery is read at full, torque, idle, starting: write at which, behind its name.',
    ]);
    expect(found('delivery full 92 mL')).toEqual([
      'result-unreadable: delivery is read at each cylinder: write one figure for each of 1, 2, 3, 4, 5, 6, separated by commas, or at which behind the figure.',
    ]);
    expect(found('delivery full 92 mL at cylinder 7')).toEqual([
      'result-unreadable: There is no cylinder 7: they are 1, 2, 3, 4, 5, 6.',
    ]);
    expect(found('phasing 0 cam ° at cylinder 1')).toEqual([
      'result-unreadable: The others are read from cylinder 1, so it has no reading.',
    ]);
    expect(found('delivery full 92 bar at cylinder 3')).toEqual([
      'unit-of-another-kind: 92 bar is a pressure, and a volume is read here. Check the unit.',
    ]);
    expect(found('governor begins 1042 rpm at cylinder 2')).toEqual([
      'result-unreadable: “cylinder” is no part of this result.',
    ]);
  });

  it('of the other cylinders stay good when one is set again', () => {
    const again = `${whole.replace('91.5, 92.0', '90.8, 92.0').replace(done, '')}
    renewed sleeve-2
    delivery full 91.6 mL at cylinder 2 on GC-100  delivery torque 95.5 mL at cylinder 2 on GC-100
    delivery idle 13.5 mL at cylinder 2 on GC-100  delivery starting 25.5 mL at cylinder 2 on GC-100
    ${phasing}
    ${governor}
    ${done}`;
    expect(pump(again).missing()).toEqual([]);
    const all: readonly (readonly [string, string])[] = [
      ['on fail reset-sleeve (3 times)\n    test gov', 'on fail reset-sleeve (3 times) then all again\n    test gov'],
    ];
    expect(
      pump(again, all)
        .missing()
        .filter((one) => one.includes('was changed')),
    ).toHaveLength(4 * 5);
  });
});
