/** The boxes of points and places: none is lost, and what the job has written down is in them. */
import { describe, expect, it } from 'vitest';
import type { StepBlock, TableBlock } from '../../language/documents/model.ts';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import { jobOf } from './job.ts';

const about = { paper: 'a4', draft: false, diagnostics: [], hash: 'ab'.repeat(32), number: null } as const;
const boxes = ({ rows }: TableBlock) => rows.flatMap((row) => row.filter(({ fill }) => fill === true));
const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/gu, ' ');

const pump = (units: string, changes?: readonly (readonly [string, string])[]) =>
  jobOf('pump-phased-and-calibrated-by-a-table', 'calibrate-six', units, changes);

/** The tables of the test of a name. */
function tablesOf(made: ReturnType<typeof pump>, step: string): readonly TableBlock[] {
  const found = made.card().blocks.find((block): block is StepBlock => block.kind === 'step' && block.key === step);
  return found?.tables ?? [];
}

describe('the card of a pump', () => {
  const two = `  unit 1 number P-6 serial 0411 {
    delivery full 92.1, 91.5, 92.0, 91.8, 92.3, 91.9 mL on GC-100
    delivery full 91.6 mL at cylinder 2 on GC-100
  }
  unit 2 number P-6L serial 0412`;

  it('has a table for each unit, points down and cylinders across, with the limit of its part number', () => {
    const [first, second, again] = tablesOf(pump(two), 'prove/test delivery');
    expect([first, second].map((table) => boxes(table!).length)).toEqual([24, 24]);
    expect(plain(first!.title)).toBe('Delivery, mL, each cylinder: Unit 1');
    const texts = (table: TableBlock) => table.rows.map((row) => row.map(({ text }) => plain(text)));
    expect(texts(first!)[0]).toEqual([
      'Full load',
      '1000 rpm, rack 9.0 mm ±0.05, 1000 strokes',
      '91 to 93 mL',
      ...['92.1', '91.5', '92.0', '91.8', '92.3', '91.9'],
      'at most 1.5 mL',
    ]);
    expect(texts(second!)[0]).toEqual([
      'Full load',
      '1000 rpm, rack 9.0 mm ±0.05, 1000 strokes',
      '83 to 85 mL',
      ...Array.from({ length: 6 }, () => ''),
      'at most 1.5 mL',
    ]);
    // What was measured again has a line of its own.
    expect(texts(again!)[0]).toEqual(['1', 'Full load', 'cylinder 2', '91.6', '']);
  });

  it('has units down where there are places alone, with the limit at each, and none where the others are read from', () => {
    const [phasing] = tablesOf(pump(two), 'prove/test phasing');
    expect(phasing!.columns.map(({ head }) => head)).toEqual(['Unit', '2', '3', '4', '5', '6']);
    expect(phasing!.rows[0]!.map(({ text }) => plain(text))).toEqual([
      'Limit',
      '239.5 to 240.5 cam °',
      '119.5 to 120.5 cam °',
      '299.5 to 300.5 cam °',
      '59.5 to 60.5 cam °',
      '179.5 to 180.5 cam °',
    ]);
    expect(boxes(phasing!)).toHaveLength(10);
  });

  it('has units across where there are points alone', () => {
    const [governor] = tablesOf(pump(two), 'prove/test governor');
    expect(governor!.columns.map(({ head }) => head)).toEqual(['Point', 'At', 'Limit', 'Unit 1', 'Unit 2']);
    expect(governor!.rows.map((row) => plain(row[2]!.text))).toEqual([
      '1025 to 1055 rpm',
      '1090 to 1150 rpm, above break-off begins',
    ]);
  });

  it('loses none of 24 points and 6 places', () => {
    const points = Array.from(
      { length: 24 },
      (_, at) => `      point p${at + 1} at ${200 + 50 * at} rpm for 1000 strokes within ${20 + at} mL ±2\n`,
    ).join('');
    const from = '      point torque "Peak torque"';
    const [table] = tablesOf(
      pump('  unit 1 number P-6 serial 0411', [[from, `${points}${from}`]]),
      'prove/test delivery',
    );
    expect(boxes(table!)).toHaveLength((4 + 24) * 6);
  });

  it('is on the record too, and on an instruction without boxes', () => {
    const made = pump(two);
    const steps = (form: 'record' | 'instruction') =>
      buildSheet(made.procedure, { ...about, job: form === 'record' ? made.job : null, form }).blocks.filter(
        (block): block is StepBlock => block.kind === 'step' && block.key === 'prove/test delivery',
      );
    expect(steps('record')[0]!.tables.flatMap(boxes).length).toBeGreaterThan(48);
    const [only, ...others] = steps('instruction')[0]!.tables;
    expect(others).toEqual([]);
    expect(boxes(only!)).toEqual([]);
    expect(only!.rows[3]!.map(({ text }) => plain(text)).slice(0, 3)).toEqual([
      'Starting',
      '100 rpm, rack 20 mm ±0.5, 200 strokes',
      '24 to 28 mL',
    ]);
  });

  it('says with a repair for which cylinders it is, and what is measured again', () => {
    const heads = pump(two)
      .card()
      .blocks.flatMap((block) => (block.kind === 'repairs' ? block.repairs : []));
    expect(heads.map(({ texts }) => texts.join(' '))).toEqual([
      'For each cylinder that failed. Then measure again only what failed.',
      'For each cylinder that failed. Then measure again only what failed.',
      'Then measure again only what failed.',
    ]);
  });
});
