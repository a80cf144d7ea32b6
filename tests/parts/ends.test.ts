/** From which end a part goes in, and the line of the family that a finding follows from. */
import { describe, expect, it } from 'vitest';
import { type Changes, coverWith } from './cover.ts';

/** A spring from above presses on a seat that goes in from below, and is fitted when the seat is there already. */
const spring = (ends: string, seatEnd: string): Changes => [
  [
    '  part gasket',
    `  part seat "Seat" in body ${seatEnd}\n  part spring "Spring" in bore of body ${ends} not spring-loaded\n  part guide "Guide" on spring bears on seat\n  part gasket`,
  ],
  ['    remove bush\n', '    remove guide, spring, seat, bush\n'],
  ['    keep bush, cover, shaft at tank', '    keep bush, cover, shaft, guide, spring, seat at tank'],
  ['wash body, shaft, bush, cover in', 'wash body, shaft, bush, cover, guide, spring, seat in'],
  ['blow-dry body, shaft, bush, cover with', 'blow-dry body, shaft, bush, cover, guide, spring, seat with'],
  ['keep shaft, bush, cover at build', 'keep shaft, bush, cover, guide, spring, seat at build'],
  ['rinse body, shaft, bush, cover in', 'rinse body, shaft, bush, cover, guide, spring, seat in'],
  ['    fit bush\n', '    fit bush\n    fit seat\n    fit spring, guide\n'],
];
const about = (changes: Changes) =>
  coverWith(changes)
    .found.filter((one) => /spring|seat|guide/iu.test(one))
    .join('\n');

describe('the end that a part goes in from', () => {
  it('decides whether what is pressed on is in the way', () => {
    expect(about(spring('', ''))).toContain('seat');
    expect(about(spring('from above', 'from below'))).toBe('');
    // One of them alone says nothing of the other.
    expect(about(spring('', 'from below'))).toContain('seat');
  });

  it('is one end', () => {
    expect(about(spring('from above from below', ''))).toContain('spring goes in from below and from above');
  });
});

describe('a finding that follows from a line of the family', () => {
  const related = (changes: Changes) =>
    coverWith(changes).diagnostics.flatMap((one) =>
      (one.related ?? []).map(({ message, source }) => `${one.rule} ${source.range.start.line + 1}: ${message}`),
    );

  it('leads to it', () => {
    expect(related([['    slacken screw\n    discard screw\n', '']])).toContain(
      'part-still-held 15: It follows from this line of the family: screw holds cover.',
    );
    expect(related([['    fit gasket, cover, screw\n', '    fit cover, screw\n    fit gasket\n']])).toContain(
      'way-not-clear 15: It follows from this line of the family: screw holds cover.',
    );
  });
});
