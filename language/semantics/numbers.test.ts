import { readFileSync } from 'node:fs';
import { type AstNode, AstUtils } from 'langium';
import { describe, expect, it } from 'vitest';
import { checkFiles } from '../db/workspace.ts';
import { fullMessage } from '../model/diagnostic.ts';
import { parse } from '../syntax/parse.ts';
import { isProblemCode } from '../syntax/problem-code.ts';

/*
 * Every place of the language that takes a number: a slip in it is reported at its place, and never taken in silence.
 * `@` stands for the number. A row may say that a sign is right there.
 */

type Where = 'shop' | 'family' | 'specs' | 'steps' | 'job' | 'like';
type Row = readonly [where: Where, line: string, signed?: 'negative'];

const rows: readonly Row[] = [
  ['shop', 'wrench W-9 range @..9000 N·m'],
  ['shop', 'wrench W-9 range 1..@ N·m'],
  ['shop', 'gauge G-9 range 0..9000 bar within @ bar'],
  ['shop', 'gauge G-9 range 0..9000 bar class @'],
  ['shop', 'gauge G-9 range 0..9000 bar graduated @ bar'],
  ['shop', 'gauge G-9 range 0..9000 bar due 2027-01-01 found @ bar high at 250 bar'],
  ['shop', 'gauge G-9 range 0..9000 bar due 2027-01-01 found 3 bar high at @ bar'],
  ['shop', 'wrench W-9 range 8..80 N·m length @ mm'],
  ['shop', 'fluid spirit flammable @ °C', 'negative'],
  ['shop', 'stock discs from @ mm to 9.00 mm by 0.05 mm'],
  ['shop', 'stock discs from 0.50 mm to @ mm by 0.05 mm'],
  ['shop', 'stock discs from 0.50 mm to 9.00 mm by @ mm'],
  ['shop', 'stock discs of @ mm, 1.05 mm'],
  ['shop', 'stock discs of 1.00 mm (@), 1.05 mm'],
  ['shop', 'unless stated length ±@ mm'],
  ['shop', 'unless stated length +@ mm -0 mm'],
  ['shop', 'unless stated length +0 mm -@ mm'],
  ['shop', 'air below @ bar'],
  ['family', 'part plunger "Plunger" on body for each cylinder @..3'],
  ['family', 'part plunger "Plunger" on body for each cylinder 1..@'],
  ['family', 'places bank @..3'],
  ['family', 'places bank 1..@'],
  ['family', 'part coil "Coil" on shim binds over @ mm'],
  ['family', 'part coil "Coil" on shim quantity @'],
  ['family', 'part coil "Coil" on shim weight @ kg'],
  ['family', 'part coil "Coil" on shim heavy @ kg'],
  ['family', 'part coil "Coil" on shim rotating @ rpm'],
  ['family', 'part coil "Coil" on shim cold @ °C', 'negative'],
  ['family', 'joint bolt to body "M8" solid class @'],
  ['family', 'adjuster bolt sets opening, @ bar per turn'],
  ['specs', 'spec other pressure @ bar source "x"'],
  ['specs', 'spec other pressure 900 bar ±@ source "x"'],
  ['specs', 'spec other pressure 900 bar ±@ bar source "x"'],
  ['specs', 'spec other pressure 900 bar +@ -0 source "x"'],
  ['specs', 'spec other pressure 900 bar +8 -@ source "x"'],
  ['specs', 'spec other pressure @..9000 bar source "x"'],
  ['specs', 'spec other pressure 1..@ bar source "x"'],
  ['specs', 'spec other pressure at least @ bar source "x"'],
  ['specs', 'spec other pressure at most @ bar source "x"'],
  ['specs', 'spec other pressure 900 bar (@ psi) source "x"'],
  ['specs', 'spec other pressure 900 bar ±5, in service at least @ bar source "x"'],
  ['specs', 'spec other pressure 900 bar ±5, new shim @ bar ±5 source "x"'],
  ['specs', 'spec other pressure 900 bar ±5, settling @ bar source "x"'],
  ['specs', 'spec other torque 40 N·m ±4 then @° ±5 source "x"'],
  ['specs', 'spec other rate @ bar per 0.001 in source "x"'],
  ['specs', 'spec other rate 3 bar per @ in source "x"'],
  ['specs', 'spec other rate from stiffness @ N/mm, guide 6 mm, seat 3 mm source "x"'],
  ['specs', 'spec other rate from stiffness 200 N/mm, guide @ mm, seat 3 mm source "x"'],
  ['specs', 'spec other rate from stiffness 200 N/mm, guide 6000 mm, seat @ mm source "x"'],
  ['specs', 'number A-9 { opening @ bar ±5 }'],
  ['steps', 'torque nut @ N·m with W-1'],
  ['steps', 'torque nut 60 N·m ±5 with W-1 passes @ % 100 %'],
  ['steps', 'torque nut by stretch @ mm'],
  ['steps', 'torque nut 60 N·m ±5 with W-1 and adapter @ mm at 0°'],
  ['steps', 'torque nut 60 N·m ±5 with W-1 and adapter 50 mm at @°'],
  ['steps', 'torque nut 60 N·m ±5 with wrench @..9000 N·m'],
  ['steps', 'wash nut in solvent for @ min'],
  ['steps', 'wash nut in solvent at @ °C', 'negative'],
  ['steps', 'blow-dry nut with air at most @ bar'],
  ['steps', 'prime @ strokes'],
  ['steps', 'wait @ min'],
  ['steps', 'measure nut within @ mm with W-1'],
  ['steps', 'test other read pressure within @ bar'],
  ['steps', 'test other hold @ bar for 10 s accept "dry"'],
  ['steps', 'test other hold @ bar below opening for 10 s accept "dry"'],
  ['steps', 'test other hold 20 bar for @ s accept "dry"'],
  ['steps', 'test other from @ bar to 100 bar in 6..20 s'],
  ['steps', 'test other from 9000 bar to @ bar in 6..20 s'],
  ['steps', 'test other from 150 bar to 100 bar in @..9000 s'],
  ['steps', 'test other from 150 bar to 100 bar in 1..@ s'],
  ['steps', 'test other read volume within 40..44 mL at @ rpm'],
  ['steps', 'test other read pressure within 40..44 bar never above @ bar'],
  ['steps', 'test other accept at most @ drops for 10 s'],
  ['steps', 'test other accept "dry" on fail fix (@ times)'],
  ['steps', 'across the set opening spread at most @ bar'],
  ['steps', 'choose shim to bring opening to @ bar'],
  ['steps', 'set opening to @ bar'],
  ['steps', 'wash nut in solvent takes @ min'],
  ['steps', 'record look as @ digits'],
  ['steps', 'fit nut @'],
  ['like', 'after torque nut (@) in build { wait 1 min }'],
  ['job', 'unit @ number A'],
  ['job', 'unit 1 number A { opening @ bar on G-1 }'],
  ['job', 'unit 1 number A { shim in @ mm }'],
  ['job', 'unit 1 number A { amount 5 mL at bore @ }'],
  ['job', 'unit 1 number A { amount @, 2, 3 mL }'],
  ['job', 'unit 1 number A { amount 1, 2, @ mL }'],
];

/** A workspace with one line put in, and the number of that line. */
function withLine([where, line]: Row, number: string) {
  const put = (own: Where) => (where === own ? [`MARK${line.replace('@', number)}`] : []);
  const text = [
    'shop bench {',
    '  station tester pressure',
    '  wrench W-1 range 16..80 N·m within 4 % length 300 mm',
    '  gauge G-1 range 0..400 bar class 0.25 graduated 1 bar at tester',
    '  fluid solvent',
    '  stock shims from 1.00 mm to 1.95 mm by 0.05 mm',
    ...put('shop'),
    '}',
    'family holder {',
    '  part body "Body"',
    '  part nut "Nut" on body',
    '  part bolt "Bolt" on body',
    '  part shim "Shim" in body chosen from shims',
    '  joint nut to body',
    '  places bore 1..3',
    ...put('family'),
    '}',
    'procedure p for holder at bench revision A {',
    '  spec opening pressure 250 bar ±5 source "x"',
    '  number A',
    ...put('specs'),
    '  stage build at tester {',
    '    torque nut 60 N·m ±5 with W-1',
    '    prime 6 strokes with gauge shut',
    ...put('steps'),
    '    test opening read pressure within opening',
    '    test amount read volume at each bore within 1..9000 mL source "x"',
    '  }',
    '  repair fix { wash nut in solvent }',
    '}',
    'procedure q like p for holder at bench revision A {',
    ...put('like'),
    '}',
    'job 1 of p revision A at bench {',
    ...put('job'),
    '}',
    '',
  ];
  const at = text.findIndex((one) => one.startsWith('MARK'));
  return { text: text.join('\n').replace('MARK', ''), at };
}

/** The rules that judge a number as it is read. */
const reads = (rule: string) => isProblemCode(rule) || ['unit-pair-disagrees', 'implausible-result'].includes(rule);

/** Lines that are whole without their number; where one is wanted, a rule of its own asks for it. */
const whole = [
  'part coil "Coil" on shim heavy @ kg',
  'part coil "Coil" on shim rotating @ rpm',
  'part coil "Coil" on shim cold @ °C',
  'fit nut @',
  'prime @ strokes',
  'wait @ min',
  'torque nut @ N·m with W-1',
  'torque nut 60 N·m ±5 with W-1 passes @ % 100 %',
  'spec other pressure @ bar source "x"',
];

/** The report on the line. */
function told(row: Row, number: string): string {
  const { text, at } = withLine(row, number);
  const { diagnostics } = checkFiles([{ uri: 'x', text }]);
  return diagnostics
    .filter(({ rule, source }) => reads(rule) && source.range.start.line === at)
    .map((one) => fullMessage(one).replaceAll('\u00a0', ' '))
    .join('\n');
}

describe.each(rows.map((row) => [row[1], row] as const))('%s', (line, row) => {
  it('takes no comma, and says what it can be', () => {
    expect(told(row, '0,6')).toContain('0.6');
    expect(told(row, '1,250')).toContain('can be read as 1250 or as 1.25');
  });

  it('takes no mark of thousands', () => {
    for (const number of ["1'250", '1’250', '1 250']) expect(told(row, number), number).toContain('1250');
    expect(told(row, '1.250,5')).toContain('1250.5');
  });

  it('takes no sign but where one is right', () => {
    expect(told(row, '+5')).not.toBe('');
    if (row[2] === undefined) expect(told(row, '-5')).not.toBe('');
    else expect(told(row, '-5')).toBe('');
  });

  it('says that it is missing', () => {
    // With its unit; where the line is whole without it, nothing is missing.
    const without: Row = [row[0], line.replace(/@ ?(N·m|N\/mm|bar per turn|[°%]C?|[a-zA-Z]+)?/u, '@')];
    if (!whole.includes(line)) expect(told(without, '')).not.toBe('');
  });
});

/** A line, a figure that makes it sound, an impossible one, and the report on that one. */
type Absurd = readonly [where: Where, line: string, sound: string, absurd: string, told: string];

const absurd: readonly Absurd[] = [
  ['shop', 'gauge G-9 range 0..400 bar class @', '0.6', '0', 'cannot be of class 0'],
  ['shop', 'gauge G-9 range 0..400 bar class @', '0.6', '60', 'cannot be of class 60'],
  ['shop', 'gauge G-9 range 0..400 bar graduated @', '1 bar', '0 bar', 'cannot be 0 bar'],
  ['shop', 'gauge G-9 range 0..400 bar graduated @', '1 bar', '500 bar', 'its whole scale is 400 bar long'],
  ['shop', 'gauge G-9 range 0..400 bar within @', '1 bar', '0 bar', 'cannot be 0 bar'],
  ['shop', 'gauge G-9 range 0..400 bar within @', '1 %', '0 %', 'cannot be 0 %'],
  ['shop', 'gauge G-9 range 0..400 bar within @', '1 %', '100 %', 'off by as much as it reads'],
  ['shop', 'gauge G-9 range 0..400 bar within @', '1 bar', '1000 bar', 'its whole scale is 400 bar long'],
  ['shop', 'gauge G-9 range @', '-1..5 bar', '-12..60 bar', 'no pressure is lower than a full vacuum'],
  ['shop', 'gauge G-9 range @', '0..400 bar', '400..0 bar', 'goes down'],
  ['shop', 'gauge G-9 range @', '0..400 bar', '400..400 bar', 'has no length'],
  ['shop', 'gauge G-9 range @', '0..400 bar', '0 mm..400 bar', 'goes from a length to a pressure'],
  ['shop', 'gauge G-9 range @', '0..400 bar', 'at most 400 bar', 'A range has two ends'],
  ['shop', 'gauge G-9 range @', '0..4 bar class 1', '0..4 bar class 1 class 1.6', 'nobody knows which one counts'],
  ['shop', 'wrench W-9 range @', '12..60 N·m', '-12..60 N·m', 'a torque cannot be below zero'],
  ['shop', 'wrench W-9 range 12..60 N·m length @', '300 mm', '0 mm', 'cannot be 0 mm'],
  ['shop', 'wrench W-9 range 12..60 N·m length @', '300 mm', '300 N', 'is a length, and 300 N is a force'],
  ['shop', 'tool TH-9 range @', '-10..120 °C', '-300..120 °C', 'nothing is colder than'],
  ['shop', 'tool DI-9 range @', '-5..5 mm', '-9..-5 mm', 'a length cannot be below zero'],
  ['shop', 'fluid spirit flammable @', '62 °C', '62 K', 'flash points of liquids range from −60 to 400 °C'],
  ['shop', 'fluid spirit flammable @', '-40 °C', '6200 °C', 'flash points of liquids range from'],
  ['shop', 'fluid spirit flammable @', '144 °F', '62 bar', '62 bar is a pressure'],
  [
    'shop',
    'stock discs @',
    'from 1.00 mm to 1.95 mm by 0.05 mm',
    'from 1 bar to 1.95 mm by 0.05 mm',
    '1 bar is a pressure',
  ],
  ['shop', 'stock discs @', 'from 1.00 mm to 1.95 mm by 0.05 mm', 'from 0 mm to 1.95 mm by 0.05 mm', 'cannot be 0 mm'],
  ['shop', 'stock discs @', 'from 1.00 mm to 1.95 mm by 0.05 mm', 'from 1.00 mm to 1.95 mm by 0 mm', 'cannot be 0 mm'],
  [
    'shop',
    'stock discs @',
    'from 1.00 mm to 1.95 mm by 0.05 mm',
    'from 1.95 mm to 1.00 mm by 0.05 mm',
    'must be less than the last',
  ],
  [
    'shop',
    'stock discs @',
    'from 1.00 mm to 1.95 mm by 0.05 mm',
    'from 1.00 mm to 1.95 mm by 1 mm',
    'it would have one size',
  ],
  [
    'shop',
    'stock discs @',
    'from 1.00 mm to 1.95 mm by 0.05 mm',
    'from 1.00 mm to 1.95 mm by 0.05 µm',
    'has more than 10000 sizes',
  ],
  ['shop', 'stock discs of @', '1.00 mm, 1.05 mm', '1.00 bar, 1.05 mm', 'is a pressure'],
  ['shop', 'stock discs of @', '1.00 mm, 1.05 mm', '0 mm, 1.05 mm', 'cannot be 0 mm'],
  ['shop', 'air below @', '1.5 bar', '0 bar', 'cannot be 0 bar'],
  ['shop', 'air below @', '1.5 bar', '5 mm', 'is a pressure, and 5 mm is a length'],
  ['shop', 'unless stated torque @', '±10 %', '±0 %', 'lets no reading through'],
  ['shop', 'unless stated torque @', '±10 %', '±100 %', 'reaches down to zero'],
  ['shop', 'unless stated torque @', '±10 %', '±5 bar', '5 bar is a pressure'],
  ['shop', 'unless stated torque @', '±10 %', '±10 %, torque ±5 %', 'twice'],
  ['family', 'part coil "Coil" on shim binds over @', '1.90 mm', '0 mm', 'cannot be 0 mm'],
  ['family', 'part coil "Coil" on shim binds over @', '1.90 mm', '1.90 bar', 'is a length'],
  ['family', 'part coil "Coil" on shim heavy @', '30 kg', '-30 kg', 'a mass cannot be below zero'],
  ['family', 'part coil "Coil" on shim heavy @', '30 kg', '0 kg', 'that is zero, which is no figure to work to'],
  ['family', 'part coil "Coil" on shim live @', '160 V', '-160 V', 'a voltage cannot be below zero'],
  ['family', 'part coil "Coil" on shim stored pressure @', '900 bar', '-900 bar', 'a pressure cannot be below zero'],
  ['family', 'part coil "Coil" on shim cold @', '-40 °C', '-400 °C', 'nothing is colder than'],
  ['shop', 'station oven hot @', '120 °C', '-300 °C', 'nothing is colder than'],
  ['steps', 'wash nut in solvent rotating @', '300 rpm', '-300 rpm', 'a speed cannot be below zero'],
  ['family', 'adjuster bolt sets opening, @', '25 bar per turn', '0 bar per turn', 'above zero'],
  ['specs', 'spec other pressure @ source "x"', '250 bar ±5', '-250 bar ±5', 'no pressure is lower than a full vacuum'],
  [
    'specs',
    'spec other pressure @ source "x"',
    '-0.5 bar ±0.1',
    '-5 bar ±0.1',
    'no pressure is lower than a full vacuum',
  ],
  ['specs', 'spec other torque @ source "x"', '60 N·m ±5', '-60 N·m ±5', 'a torque cannot be below zero'],
  ['specs', 'spec other torque @ source "x"', '60 N·m ±5', '0 N·m ±5', 'a torque cannot be below zero'],
  ['specs', 'spec other torque @ source "x"', '60 N·m ±5', '5 N·m ±6', 'reaches −1 N·m: a torque cannot be below zero'],
  ['specs', 'spec other torque @ source "x"', '60 N·m ±5 %', '60 N·m ±120 %', 'reaches −12 N·m'],
  [
    'specs',
    'spec other torque @ source "x"',
    '60 N·m ±5',
    'at most 0 N·m',
    'that is zero, which is no figure to work to',
  ],
  [
    'specs',
    'spec other torque @ source "x"',
    '40 N·m ±4 then 90° ±5',
    '40 N·m ±4 then 0° ±5',
    'how far the joint is turned on',
  ],
  ['specs', 'spec other length @ source "x"', '-0.05..0.10 mm', '-0.10..-0.05 mm', 'a length cannot be below zero'],
  ['specs', 'spec other time @ source "x"', '6..20 s', '-6..20 s', 'a time cannot be below zero'],
  ['specs', 'spec other time @ source "x"', '6..20 s', '0 s ±0', 'that is zero, which is no figure to work to'],
  ['specs', 'spec other temperature @ source "x"', '-20..40 °C', '-300..40 °C', 'nothing is colder than'],
  ['specs', 'spec other temperature @ source "x"', '-459 °F ±0.5', '-460 °F ±0.5', 'nothing is colder than'],
  ['specs', 'spec other volume @ source "x"', '40..44 mL', '-40..44 mL', 'a volume cannot be below zero'],
  ['specs', 'spec other rate @ source "x"', '3 bar per 0.001 in', '3 bar per 0 in', 'cannot be 0 in'],
  [
    'specs',
    'spec other rate @ source "x"',
    '3 bar per 0.001 in',
    '0 bar per 0.001 in',
    'The rate of other of 0 bar makes no sense',
  ],
  [
    'specs',
    'spec other rate @ source "x"',
    '96 bar per mm',
    '0 bar per mm',
    'that is zero, which is no figure to work to',
  ],
  ['specs', 'number A-9 { opening @ }', '250 bar ±5', '-250 bar ±5', 'no pressure is lower than a full vacuum'],
  ['steps', 'prime @ with gauge shut', '6 strokes', '0 strokes', 'that is zero, which is no figure to work to'],
  ['steps', 'wait @', '6 min', '0 min', 'that is zero, which is no figure to work to'],
  ['steps', 'wash nut in solvent for @', '10 min', '0 min', 'that is zero, which is no figure to work to'],
  ['steps', 'wash nut in solvent takes @', '10 min', '0 min', 'cannot be 0 min'],
  ['steps', 'wash nut in solvent takes @', '10 min', '10 bar', 'is a time'],
  ['steps', 'blow-dry nut with air @', '1.5 bar', '0 bar', 'Air of 0 bar makes no sense'],
  ['steps', 'torque nut @ with W-1', '60 N·m ±5', '-60 N·m ±5', 'a torque cannot be below zero'],
  ['steps', 'torque nut 60 N·m ±5 with W-1 passes @', '50 % 75 % 100 %', '50 % 120 %', 'more than the whole torque'],
  [
    'steps',
    'torque nut 60 N·m ±5 with W-1 passes @',
    '50 % 75 % 100 %',
    '75 % 50 % 100 %',
    'no more than the one before it',
  ],
  ['steps', 'torque nut 60 N·m ±5 with W-1 passes @', '50 % 100 %', '0 % 100 %', 'turns nothing'],
  ['steps', 'torque nut 60 N·m ±5 with W-1 passes @', '20 N·m 40 N·m', '20 bar 40 bar', 'is a pressure'],
  ['steps', 'torque nut 60 N·m ±5 with W-1 passes @', '50 % 100 %', '50 % 60 N·m', 'mix percentages and torques'],
  ['steps', 'torque nut 60 N·m ±5 with W-1 and adapter @', '50 mm at 0°', '0 mm at 0°', 'cannot be 0 mm'],
  ['steps', 'torque nut 60 N·m ±5 with W-1 and adapter @', '50 mm at 0°', '50 bar at 0°', 'is a length'],
  ['steps', 'torque nut 60 N·m ±5 with W-1 and adapter @', '50 mm at 90°', '50 mm at 400°', '0° to 180°'],
  ['steps', 'torque nut 60 N·m ±5 with wrench @', '16..80 N·m', '80..16 N·m', 'goes down'],
  [
    'steps',
    'test other hold 20 bar for @ accept "dry" on fail fix (once)',
    '10 s',
    '0 s',
    'that is zero, which is no figure to work to',
  ],
  [
    'steps',
    'test other hold @ below opening for 10 s accept "dry" on fail fix (once)',
    '20 bar',
    '-1 bar',
    'of −1 bar makes no sense',
  ],
  ['steps', 'test other hold 20 bar for 10 s accept "dry" on fail fix (@)', '3 times', '0 times', '0 is not a count'],
  [
    'steps',
    'test other hold 20 bar for 10 s accept "dry" never above @ on fail fix (once)',
    '40 bar',
    '0 bar',
    'cannot be 0 bar',
  ],
  [
    'steps',
    'across the set opening spread @ on fail fix (once)',
    'at most 5 bar',
    '-1 bar',
    'A spread of −1 bar makes no sense',
  ],
  [
    'steps',
    'across the set opening spread @ on fail fix (once)',
    'at most 5 bar',
    'at most 0 bar',
    'A spread of at most 0 bar makes no sense',
  ],
  ['steps', 'across the set opening spread @ on fail fix (once)', 'at most 5 bar', '5 bar', 'has no upper end'],
  [
    'steps',
    'across the set opening spread @ on fail fix (once)',
    'at most 5 bar',
    'at least 5 bar',
    'has no upper end',
  ],
];

describe('a figure that cannot be has a sentence of its own, and nothing else follows from it', () => {
  const findingsOf = (row: Row, figure: string) => {
    const { text, at } = withLine(row, figure);
    return checkFiles([{ uri: 'x', text }]).diagnostics.map(({ rule, source, ...said }) => ({
      rule,
      message: fullMessage(said).replaceAll('\u00a0', ' '),
      here: source.range.start.line === at,
      key: `${source.range.start.line} ${rule} ${fullMessage(said)}`,
    }));
  };

  it.each(absurd)('%s %s: %s, and not %s', (where, line, sound, wrong, said) => {
    const right = findingsOf([where, line], sound);
    expect(right.filter(({ rule }) => isProblemCode(rule))).toEqual([]);
    const known = new Set(right.map(({ key }) => key));
    const more = findingsOf([where, line], wrong).filter(({ key }) => !known.has(key));
    expect(more.map((one) => `${one.rule}${one.here ? '' : ' elsewhere'}: ${fullMessage(one)}`)).toEqual([
      expect.stringMatching(/^(?:impossible-figure|unit-of-another-kind|wrong-form-of-limit|written-twice): /u),
    ]);
    expect(more[0]!.message).toContain(said);
  });

  it.each([
    ['wrench W-9 range 0..60 mm', 'wrong-kind-of-unit'],
    ['tool MIC-9 range 0..25 bar within 0.003 mm', 'wrong-kind-of-unit'],
    ['gauge G-9 range 0..400 bar graduated 1 mm', 'wrong-kind-of-unit'],
  ])('%s is of the wrong kind', (line, rule) => {
    expect(findingsOf(['shop', line], '').map((one) => one.rule)).toContain(rule);
  });
});

it('these are all places of the grammar', () => {
  const grammar = readFileSync(new URL('../syntax/rebuild.langium', import.meta.url), 'utf8');
  const wanted = new Set<string>();
  for (const rule of grammar.replaceAll(/\/\*.*?\*\/|\/\/[^\n]*/gsu, '').split(/;\s*$/mu)) {
    const head = /^\s*(?:fragment\s+)?(\w+)[^:]*:/u.exec(rule)?.[1];
    if (head === undefined) continue;
    for (const part of rule.split(/(?=\{infer )/u)) {
      const type = /^\{infer (\w+)\}/u.exec(part)?.[1] ?? (head === 'Tries' ? 'FailEntry' : head);
      for (const [, property] of part.matchAll(/(\w+)\+?=(?:QUANTITY|NUMBER|Figure)\b/gu))
        wanted.add(`${type}.${property}`);
    }
  }
  const claimed = new Set(rows.flatMap((row) => placesOf(parse(withLine(row, '731').text).ast)));
  expect([...claimed].sort()).toEqual([...wanted].sort());
});

/** The place of the number in a tree. */
function placesOf(root: AstNode): string[] {
  return AstUtils.streamAst(root)
    .flatMap((node) =>
      Object.entries(node).flatMap(([property, value]) =>
        !property.startsWith('$') && [value].flat().some((one) => typeof one === 'string' && /^731\b/u.test(one))
          ? [`${node.$type}.${property}`]
          : [],
      ),
    )
    .toArray();
}
