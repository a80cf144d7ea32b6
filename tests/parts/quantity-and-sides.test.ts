/** Several alike are one line and one finding; what is told apart by side is said by side. */
import { describe, expect, it } from 'vitest';
import { coverWith } from './cover.ts';

describe('quantity', () => {
  it('checks as one part, and prints as a person would say it', () => {
    const { found, card } = coverWith();
    expect(found).toEqual([]);
    const text = card().join('\n');
    expect(text).toContain('Slacken the 3 cover screws.');
    expect(text).toContain('Fit the gasket, cover and 3 cover screws.');
  });

  it('is one line of what to renew, three per unit', () => {
    const lines = coverWith().card();
    const at = lines.indexOf('Cover screw');
    expect(lines.slice(at, at + 2)).toEqual(['Cover screw', '3']);
  });

  it('is one finding, not three', () => {
    const { found } = coverWith([['    torque screw to screw-fit with TW-20\n', '']]);
    expect(found.filter((one) => one.startsWith('left-hand-tight'))).toHaveLength(1);
    expect(found.join('\n')).toContain('The cover screw is only hand-tight');
  });

  it('says how many where several parts are named', () => {
    const { found } = coverWith([['    keep bush, cover, shaft at tank\n', '']]);
    expect(found.join('\n')).toContain('two bearing bushes');
  });

  it('counts where the order of tightening matters', () => {
    const { found } = coverWith([['quantity 3', 'quantity 6']]);
    expect(found.join('\n')).toContain('no-tightening-pattern');
    expect(found.join('\n')).toContain('6 fasteners hold the cover down');
  });

  it('is a whole number, and more than one', () => {
    expect(coverWith([['quantity 3', 'quantity 1']]).found.join('\n')).toContain('1 is not a count');
    expect(coverWith([['quantity 3', 'quantity 2.5']]).found.join('\n')).toContain('2.5 is not a count');
  });

  it('has a plural in English alone', () => {
    expect(coverWith().card('de').join('\n')).toContain('3 × Cover screw');
  });
});

describe('sides', () => {
  it('are said where a part is named, all of them or one', () => {
    const { card, found } = coverWith([['    fit bush\n', '    fit bush-drive\n    fit bush-cover-end\n']]);
    expect(found).toEqual([]);
    const text = card().join('\n');
    expect(text).toContain('Remove the 2 bearing bushes (drive and cover end).');
    expect(text).toContain('Fit the bearing bush, drive.');
    expect(text).toContain('Fit the bearing bush, cover end.');
  });

  it('are followed one by one', () => {
    const { found } = coverWith([['    fit bush\n', '    fit bush-drive\n']]);
    expect(found.join('\n')).toContain('bearing bush, cover end');
    expect(found.filter((one) => one.includes('bearing bush, drive'))).toEqual([]);
  });

  it('are named by side, not by number', () => {
    expect(coverWith([['    fit bush\n', '    fit bush 1\n']]).found.join('\n')).toContain(
      'bush is told apart by side, not by number. Write bush-drive or bush-cover-end, or bush for all of them.',
    );
  });

  it('are two at least, each once, and not for each cylinder as well', () => {
    const saying = (text: string) => coverWith([['sides drive, cover-end', text]]).found.join('\n');
    expect(saying('sides drive')).toContain('bush has one side only');
    expect(saying('sides drive, drive')).toContain('bush has the same side twice');
    expect(saying('sides drive, cover-end for each cylinder 1..2')).toContain(
      'bush is told apart by cylinder and by side',
    );
  });

  it('go with the same side of another part', () => {
    const { procedure } = coverWith([
      ['  part gasket', '  part ring "Ring" on bush sides drive, cover-end\n  part gasket'],
    ]);
    const ring = procedure.family.parts.find(({ name }) => name === 'ring-drive')!;
    expect(ring.on).toEqual(['bush-drive']);
  });
});
