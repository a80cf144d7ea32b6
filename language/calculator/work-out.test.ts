import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { english } from '../say/say.ts';
import { calculations, usage, workOut } from './work-out.ts';

const named = (name: string) => calculations.find((one) => one.name === name)!;

/** The lines of the answer, with plain blanks. */
function answer(name: string, ...typed: string[]): string {
  const made = workOut(named(name), typed);
  const text = 'problem' in made ? `refused: ${english(made.problem)}` : made.text.trimEnd().split('\n\n').at(-1)!;
  return text.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ');
}

describe('every calculation', () => {
  it.each(calculations.map((one) => [one.name, one] as const))(
    '%s works its own example out, with its way',
    (_, one) => {
      const made = workOut(one, one.example);
      expect(made).not.toHaveProperty('problem');
      const { text } = made as { text: string };
      expect(text).toContain(english(one.source));
      for (const line of one.formula) expect(text).toContain(english(line));
      for (const figure of one.example) expect(text).toContain(figure.split('=')[0]!);
      expect(text).not.toMatch(/NaN|Infinity|undefined|null/u);
      for (const input of one.inputs) expect(english(usage(one))).toContain(input.name);
    },
  );

  it('is refused, and never gives nonsense, for figures that make no sense', () => {
    const units = ['bar', 'mm', 'N', 'N/mm', 'N·m', 'bar per mm', '°', '', 'psi', 'in'];
    const number = fc.oneof(
      fc.constantFrom('0', '-1', '1e12', '0.000000001', '999999999999', 'NaN', '1,5', ''),
      fc.integer({ min: -100, max: 1000 }).map(String),
    );
    const value = fc.tuple(number, fc.constantFrom(...units)).map(([figure, unit]) => `${figure} ${unit}`);
    const calls = fc.constantFrom(...calculations).chain((one) =>
      fc.record({
        one: fc.constant(one),
        typed: fc.tuple(
          ...one.inputs.map((input) =>
            fc.oneof(
              {
                weight: 4,
                arbitrary: fc.constant(one.example.find((text) => text.startsWith(`${input.name}=`)) ?? ''),
              },
              { weight: 1, arbitrary: value.map((text) => `${input.name}=${text}`) },
            ),
          ),
        ),
      }),
    );
    let refused = 0;
    fc.assert(
      fc.property(calls, ({ one, typed }) => {
        const made = workOut(
          one,
          typed.filter((text) => text !== ''),
        );
        if ('problem' in made) refused++;
        expect('problem' in made ? english(made.problem) : made.text).not.toMatch(
          /NaN(?! ?(?:bar|mm|N|psi|in|°|”|"|$))|Infinity|undefined/mu,
        );
      }),
      { numRuns: 3000, seed: 3 },
    );
    expect(refused).toBeGreaterThan(300);
  });
});

/** What a hand may type that is no figure, or none that can be. */
const absurd: Readonly<Record<string, (unit: string) => string>> = {
  nothing: () => '',
  'no unit': (unit) => (unit === '' ? 'x' : '5'),
  'unit only': (unit) => unit,
  negative: (unit) => `-5 ${unit}`,
  zero: (unit) => `0 ${unit}`,
  'minus zero': (unit) => `-0 ${unit}`,
  comma: (unit) => `0,6 ${unit}`,
  'thousands or decimals': (unit) => `3,750 ${unit}`,
  thousands: (unit) => `1.234.567 ${unit}`,
  huge: (unit) => `999999999999 ${unit}`,
  overflow: (unit) => `1e400 ${unit}`,
  exponent: (unit) => `1e3 ${unit}`,
  tiny: (unit) => `0.000000000001 ${unit}`,
  digits: (unit) => `1.2345678901234567890 ${unit}`,
  NaN: (unit) => `NaN ${unit}`,
  Infinity: (unit) => `Infinity ${unit}`,
  word: () => 'about a hand',
  'another kind': (unit) => (unit === 'V' ? '5 A' : '5 V'),
  'unknown unit': () => '5 furlongs',
  range: (unit) => `1..2 ${unit}`,
  tolerance: (unit) => `5 ${unit} ±1`,
  prototype: () => 'toString',
  markup: () => '<b>5</b>',
};

/** Each is refused, whatever is calculated. */
const never = [
  'nothing',
  'no unit',
  'comma',
  'thousands or decimals',
  'thousands',
  'overflow',
  'exponent',
  'digits',
  'NaN',
  'Infinity',
  'word',
  'unknown unit',
  'range',
  'tolerance',
  'prototype',
  'markup',
];

describe('absurd figures', () => {
  const cases = calculations.flatMap((one) => one.inputs.map((input) => [one.name, input.name, one, input] as const));

  it.each(cases)('%s, %s: each gets a sentence, or a figure that makes sense', (_, __, one, input) => {
    const own = one.example.find((text) => text.startsWith(`${input.name}=`));
    const unit =
      input.kind === 'number'
        ? ''
        : (/[^\d\s.,].*$/u.exec(own?.split('=')[1]?.split(',')[0] ?? '')?.[0] ?? unitOfKind(input.kind));
    const rest = one.example.filter((text) => !text.startsWith(`${input.name}=`));
    // Both ways to say what is in a drawer are one too many.
    const typed =
      input.name === 'shims' && own === undefined ? rest.filter((text) => !/^(from|to|by)=/u.test(text)) : rest;
    for (const [what, make] of Object.entries(absurd)) {
      const value = make(unit).trim();
      const made = workOut(one, [...typed, `${input.name}=${value}`]);
      const text = 'problem' in made ? english(made.problem) : made.text;
      const told = `${one.name} ${input.name}=${value}`;
      expect(text.replaceAll(value, ''), told).not.toMatch(/NaN|Infinity|undefined|null|\[object|e[+-]\d/u);
      expect(text, told).not.toMatch(
        /(?:expect|pressure|rate|torque|setting|opening|closing|error|stiffness|probability) [−-]\d/u,
      );
      if (never.includes(what)) expect(made, told).toHaveProperty('problem');
      if (input.from === undefined && ['negative', 'zero', 'minus zero'].includes(what))
        expect(made, told).toHaveProperty('problem');
      if (input.from === 'nothing' && what === 'negative') expect(made, told).toHaveProperty('problem');
      if ('problem' in made) {
        // What is wrong, and what is expected.
        expect(text.length, told).toBeGreaterThan(20);
        expect(text, told).toMatch(/[.?]$|\)$|"$/u);
      }
    }
  });

  it('of a length, a shim or a pressure say what a slip they are', () => {
    const unit = [
      'reading=231 bar',
      'low=250 bar',
      'high=258 bar',
      'rate=96 bar per mm',
      'from=1.00 mm',
      'to=1.95 mm',
      'by=0.05 mm',
    ];
    expect(answer('choose-shim', ...unit, 'now=1300 mm')).toMatch(
      /1300 mm is more than 20 mm, and it is shim that is in: that is a slip/u,
    );
    expect(answer('choose-shim', ...unit, 'now=13.0 mm')).toMatch(/13\.0 mm is not of a drawer of 1 mm to 1\.95 mm/u);
    expect(answer('choose-shim', ...unit, 'now=1,30 mm')).toMatch(/write 1\.30/u);
    expect(answer('choose-shim', ...unit, 'now=1.30')).toBe(
      'refused: now: 1.30 has no unit. Write it with one, such as 1.30 mm.',
    );
    expect(answer('choose-shim', ...unit.slice(0, 4), 'now=1.30 mm', 'shims=1,30 mm, 1,35 mm')).toMatch(
      /Write each figure with its unit, a comma between two of them, and decimals with a point/u,
    );
    expect(answer('choose-shim', ...unit, 'now=1.30 mm', 'aim=270 bar')).toMatch(
      /The aim, 270 bar, is outside the window/u,
    );
    expect(answer('gauge-error', 'class=100', 'low=0 bar', 'high=400 bar')).toMatch(
      /100 is more than 10, and it is accuracy class on the dial/u,
    );
    expect(answer('gauge-error', 'class=0,6', 'low=0 bar', 'high=400 bar')).toMatch(/write 0\.6/u);
    expect(answer('turn-screw', 'reading=0 bar', 'aim=250 bar', 'rate=0.001 bar per turn')).toMatch(
      /no screw has so many/u,
    );
    expect(answer('proof-load', 'torque=50 N·m', 'diameter=8 mm', 'pitch=1.25 mm', 'factor=0.2', 'class=8.84')).toMatch(
      /There is no class 8\.84/u,
    );
  });
});

function unitOfKind(kind: string): string {
  const units: Readonly<Record<string, string>> = {
    pressure: 'bar',
    length: 'mm',
    rate: 'bar per mm',
    angle: '°',
    same: 'bar',
  };
  return units[kind] ?? '';
}

describe('figures as they are typed', () => {
  it('are given by name and kind, and once', () => {
    expect(answer('shim-rate', 'stiffness')).toMatch(/is not a name, an equals sign and a value/u);
    expect(answer('shim-rate', 'stifness=200 N/mm')).toMatch(/Did you mean stiffness\?/u);
    expect(answer('shim-rate', 'stiffness=200 bar')).toMatch(/200 bar is a pressure, but a stiffness is needed/u);
    expect(answer('shim-rate', 'guide=6 mm', 'guide=5 mm')).toMatch(/given twice/u);
    expect(answer('shim-rate', 'guide=6 mm')).toMatch(/^refused: Not given: stiffness, seat/u);
    expect(answer('gauge-error', 'class=1', 'low=0 bar', 'high=25 mm')).toMatch(/must be of one kind/u);
  });
});

describe('answers', () => {
  it('of a wrench: TM 9-254, 12 and 6 in, 30 lbf·ft wanted, set 20; at 90° no change', () => {
    expect(answer('wrench-setting', 'torque=30 lbf·ft', 'wrench=12 in', 'adapter=6 in')).toBe('setting 20 lbf·ft');
    expect(answer('wrench-setting', 'torque=30 lbf·ft', 'wrench=12 in', 'adapter=6 in', 'angle=90°')).toBe(
      'setting 30 lbf·ft',
    );
  });

  it('of a gauge: 250 bar +8 −0 on 0 to 400 bar leaves 252 to 256 at class 0.6, and nothing at class 1.6', () => {
    const limit = ['low=250 bar', 'high=258 bar', 'mark=1 bar', 'r=0.83'];
    expect(answer('gauge-error', 'class=0.6', 'low=0 bar', 'high=400 bar')).toBe('error ±2.4 bar');
    expect(answer('gauge-window', ...limit, 'error=2.4 bar')).toBe(
      'lowest reading that passes 252 bar\nhighest reading that passes 256 bar',
    );
    // Cut to five figures the low end would be 3750.1.
    expect(answer('gauge-window', 'low=3750.16 psi', 'error=0 psi', 'mark=0.01 psi')).toBe(
      'lowest reading that passes 3750.16 psi',
    );
    expect(answer('gauge-window', ...limit, 'error=6.4 bar')).toMatch(/^No mark of this gauge is safe to pass/u);
    expect(answer('gauge-window', ...limit.slice(0, 3), 'r=0.5', 'error=1 bar')).toMatch(/r is 0, 0.83 or 1, not 0.5/u);
  });

  it('of a thermometer: its limit is converted as a value, its error as a difference', () => {
    const typed = ['low=68 °F', 'high=86 °F', 'error=1.8 °F', 'mark=0.5 °C', 'r=1'];
    expect(answer('gauge-window', ...typed)).toBe(
      'lowest reading that passes 21 °C\nhighest reading that passes 29 °C',
    );
    expect(answer('gauge-error', 'class=1', 'low=0 °C', 'high=212 °F')).toBe('error ±1.8 °F');
    expect(answer('conformance', 'low=20 °C', 'high=30 °C', 'reading=29 °C', 'uncertainty=1.8 °F')).toBe(
      'probability 84.134 %',
    );
  });

  it('of a micrometer too: limit ±0.003 mm, uncertainty 0.001, fully guarded: ±0.002', () => {
    expect(answer('gauge-window', 'low=9.997 mm', 'high=10.003 mm', 'error=0.001 mm', 'mark=0.001 mm', 'r=1')).toBe(
      'lowest reading that passes 9.998 mm\nhighest reading that passes 10.002 mm',
    );
  });

  it('of a set: which shim for which unit, within the counts of the drawer', () => {
    const set = [
      'readings=240 bar, 240 bar',
      'now=1.30 mm, 1.30 mm',
      'rate=100 bar per mm',
      'low=250 bar',
      'high=258 bar',
    ];
    expect(answer('match-set', ...set, 'shims=1.40 mm, 1.45 mm')).toBe(
      'unit 1: fit 1.45 mm (now 1.30 mm): expect 255 bar\nunit 2: fit 1.40 mm (now 1.30 mm): expect 250 bar\nspread 62.5 % of the window, 5 bar',
    );
    expect(answer('match-set', ...set, 'shims=1.40 mm, 1.45 mm', 'counts=0, 2')).toContain('spread 0 % of the window');
    expect(answer('match-set', ...set, 'shims=1.40 mm')).toMatch(/too few of some size/u);
    expect(answer('match-set', ...set, 'shims=1.60 mm')).toMatch(/unit 1 can be brought to 270 bar to 270 bar/u);
    expect(answer('match-set', ...set)).toMatch(/Say what is in the drawer/u);
  });

  it('of a shim: one that fits, or why none does', () => {
    const unit = ['reading=240 bar', 'now=1.30 mm', 'low=250 bar', 'high=258 bar', 'rate=100 bar per mm'];
    expect(answer('choose-shim', ...unit, 'shims=1.40 mm, 1.45 mm')).toBe('fit 1.45 mm (now 1.30 mm): expect 255 bar');
    expect(answer('choose-shim', ...unit, 'shims=0.70 mm, 0.75 mm', 'together=2')).toBe(
      'fit 0.70 mm and 0.75 mm (now 1.30 mm): expect 255 bar',
    );
    expect(answer('choose-shim', ...unit, 'shims=1.45 mm', 'scatter=1 bar')).toMatch(
      /expect 255 bar, 252\.23 bar to 257\.77 bar \(95 %\)\nlands in the window: 98\.2/u,
    );
    expect(answer('choose-shim', ...unit, 'shims=1.35 mm')).toMatch(/^Nothing in the drawer is thick enough/u);
    expect(answer('choose-shim', ...unit, 'shims=1.60 mm')).toMatch(/^Nothing in the drawer is thin enough/u);
    expect(answer('choose-shim', ...unit, 'shims=1.35 mm, 1.50 mm')).toMatch(/^The drawer steps over the window/u);
    expect(answer('choose-shim', ...unit.slice(0, 4), 'rate=25 bar per turn', 'shims=1.5 mm')).toMatch(
      /in pressure per length/u,
    );
  });

  it('of a screw, and of a bolt', () => {
    const screw = ['reading=270 bar', 'aim=250 bar'];
    expect(answer('turn-screw', ...screw, 'rate=20 bar per turn')).toBe('1 turn out, 360°');
    expect(answer('turn-screw', ...screw, 'rate=96 bar per mm')).toMatch(/in pressure per turn/u);
    const bolt = ['diameter=8 mm', 'pitch=1.25 mm', 'factor=0.2'];
    expect(answer('proof-load', ...bolt, 'class=8.8', 'torque=50 N·m')).toMatch(
      /^147\.18 % of the proof load: the bolt/u,
    );
    expect(answer('proof-load', ...bolt, 'class=8.8', 'torque=20 N·m')).toBe('58.871 % of the proof load');
    expect(answer('proof-load', ...bolt, 'class=7.7', 'torque=20 N·m')).toMatch(/There is no class 7\.7/u);
  });

  it('of readings of the shop: three at least, and a thicker shim brings more', () => {
    expect(answer('fit-rate', 'shims=1.2 mm, 1.3 mm', 'pressures=220 bar, 230 bar')).toMatch(
      /at least three readings/u,
    );
    expect(answer('fit-rate', 'shims=1.2 mm, 1.3 mm, 1.4 mm', 'pressures=230 bar, 220 bar, 210 bar')).toMatch(
      /brought no more pressure/u,
    );
    expect(answer('fit-rate', 'shims=1.2 mm, 1.3 mm, 1.4 mm', 'pressures=220 bar, 230 bar, 240 bar')).toMatch(
      /^rate 100 bar per mm, standard error 0?/u,
    );
  });
});
