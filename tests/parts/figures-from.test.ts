/** One source for many figures, said once. */
import { describe, expect, it } from 'vitest';
import { type Changes, coverWith } from './cover.ts';

const once: Changes = [
  [' source "Test sheet, page 2"', ''],
  ['  spec screw-fit', '  figures from "Test sheet 12, issue 3" unless stated\n  spec screw-fit'],
];

describe('figures from', () => {
  it('is the source of each spec that has none of its own, and is printed beside it', () => {
    const { found, card, procedure } = coverWith(once);
    expect(found).toEqual([]);
    expect(procedure.specs[0]!.sourceText).toBe('Test sheet 12, issue 3');
    expect(card().join('\n')).toContain('Test sheet 12, issue 3');
  });

  it('leaves alone what says where it is from', () => {
    const { procedure } = coverWith([once[1]!]);
    expect(procedure.specs[0]!.sourceText).toBe('Test sheet, page 2');
  });

  it('is the source of figures in steps, and of no other step', () => {
    const { found, procedure } = coverWith([
      ...once,
      ['to screw-fit with TW-20', 'to 9 N·m ±1 with TW-20'],
      ['  spec screw-fit "Cover screw" torque 9 N·m ±1\n', ''],
    ]);
    expect(found).toEqual([]);
    const steps = procedure.stages.flatMap((stage) => stage.steps);
    expect(steps.filter(({ sourceText }) => sourceText !== null).map(({ verb }) => verb)).toEqual(['torque']);
  });

  it('may be another for a part number', () => {
    const { found, procedure } = coverWith([
      ...once,
      [
        '  stage strip',
        '  number P-1\n  number P-2 {\n    figures from "Test sheet 14" unless stated\n    screw-fit 11 N·m ±1\n  }\n  number P-3 {\n    screw-fit 12 N·m ±1\n  }\n  stage strip',
      ],
    ]);
    expect(found).toEqual([]);
    expect(procedure.numbers.map(({ values }) => values[0]?.sourceText)).toEqual([
      undefined,
      'Test sheet 14',
      'Test sheet 12, issue 3',
    ]);
  });

  it('is said once', () => {
    const { found } = coverWith([...once, ['  stage strip', '  figures from "Another" unless stated\n  stage strip']]);
    expect(found.join('\n')).toContain(
      '“figures from” is written twice here, and a figure cannot come from both. Delete one, and write “source "…"” at the figures that are from elsewhere.',
    );
  });
});
