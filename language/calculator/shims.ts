import type Fraction from 'fraction.js';
import { layOut } from '../engineering/drawer.ts';
import { fitLine, newPointAt } from '../engineering/fit-line.ts';
import { leastSpread } from '../engineering/matching.ts';
import { base, quantityOf } from '../engineering/measured.ts';
import { exactTurns } from '../engineering/screw-turns.ts';
import { type ShimAdvice, type ShimChoice, shimAdvice } from '../engineering/shim-advice.ts';
import { medianOf, resolutionOf, slipOf, unslipped } from '../engineering/slip.ts';
import {
  amount,
  asDifference,
  compare,
  formatQuantity,
  kindOfUnit,
  lastPlace,
  sizesOf,
  unitOf,
} from '../quantities/index.ts';
import type { Quantity } from '../quantities/types.ts';
import { type Filling, joined, listed, type Said, say } from '../say/say.ts';
import type { Answer, Calculation, Given, Input } from './calculation.ts';
import { figure, plain } from './figures.ts';

/** No shim of a unit at a bench is thicker. */
const most = '20 mm';

/** Nothing at a bench is under more. */
const mostPressure = '10000 bar';

const drawerInputs: readonly Input[] = [
  { name: 'shims', kind: 'length', words: say`thicknesses in the drawer`, many: true, optional: true, most },
  { name: 'from', kind: 'length', words: say`or the thinnest,`, optional: true, most },
  { name: 'to', kind: 'length', words: say`the thickest,`, optional: true, most },
  { name: 'by', kind: 'length', words: say`and the step`, optional: true, most },
];

/** Thicknesses of the drawer: a list, or from, to and by. */
function drawer(given: Given): readonly Quantity[] | { problem: Said } {
  const series = ['from', 'to', 'by'].filter((name) => given.has(name));
  if (given.has('shims') === series.length > 0 || (series.length > 0 && series.length < 3))
    return { problem: say`Say what is in the drawer, in one way: shims="1.00 mm, 1.05 mm", or from=, to= and by=.` };
  const sizes = given.has('shims')
    ? given.quantities('shims')
    : sizesOf(given.quantity('from'), given.quantity('to'), asDifference(given.quantity('by')));
  return (
    sizes ?? {
      problem: say`The drawer goes from a thickness up to a thicker one, and has at most 10 000 sizes. Look at from, to and by.`,
    }
  );
}

/** The rate of a shim in base units; or why it is none. */
function rateOf(given: Given): Fraction | { problem: Said } {
  const rate = given.quantity('rate');
  if (kindOfUnit(rate.unit) !== 'setting rate')
    return { problem: say`The rate of a shim is in pressure per length, such as 96 bar per mm.` };
  if (given.has('rate-error') && kindOfUnit(given.quantity('rate-error').unit) !== 'setting rate')
    return { problem: say`The error of the rate has the unit of the rate, such as 4 bar per mm.` };
  if (given.has('rate-error') && compare(given.quantity('rate-error'), rate) !== -1)
    return {
      problem: say`The error of the rate is as large as the rate: it says nothing. Fit the rate to more readings.`,
    };
  return amount(rate);
}

/** A shim that cannot have come out of this drawer: less than a third of its thinnest, or more than its thickest stack by as much. */
function strange(now: Quantity, sizes: readonly Quantity[]): Said | null {
  const all = sizes.map(base);
  const [thinnest, thickest] = [Math.min(...all), Math.max(...all)];
  const size = base(now);
  return size < thinnest / far || size > thickest * far
    ? say`A shim of ${formatQuantity(now)} is not of a drawer of ${figure(quantityOf(thinnest, now.unit)!)} to ${figure(quantityOf(thickest, now.unit)!)}. Look at the decimal mark.`
    : null;
}

const far = 3;

/** Units times sizes: an exact figure is worked out for each. */
const mostPairs = 100_000;

/** No adjusting screw has a longer thread. */
const mostTurns = 100;

/** As the sheet says it: `Fit 1.45 mm (now 1.30 mm): expect 253 bar, 249 bar to 257 bar`. */
function sentence({ shims, expected, low, high }: ShimChoice, now: Quantity): Said {
  const fit = say`fit ${listed(shims.map((shim) => formatQuantity(shim)))} (now ${formatQuantity(now)}): expect ${figure(expected)}`;
  return low.number === high.number ? fit : say`${fit}, ${figure(low)} to ${figure(high)} (95 %)`;
}

/** The last digit that is written, in base units. */
function digitOf({ number, unit }: Quantity): number {
  return 10 ** lastPlace(number) * unitOf(unit).factor.valueOf();
}

/** A figure beside which the others are ten times as large, or a tenth. Null: there is none. */
function slipAmong(what: string, figures: readonly Quantity[]): Said | null {
  const usual = medianOf(figures.map(base));
  for (const [index, one] of figures.entries()) {
    const tens = usual === null ? 0 : slipOf(base(one), usual);
    if (tens !== 0)
      return say`${what} ${index + 1}, ${formatQuantity(one)}, is off by a power of ten beside the others. Is it ${formatQuantity(unslipped(one, tens))}?`;
  }
  return null;
}

const upsideDown = say`The low end of the window is over the high one. Look at what was typed.`;

/** A choice, or why there is none, as the answer of a calculation. */
function answerOf(advice: ShimAdvice, now: Quantity, steps: readonly Filling[]): Answer {
  if ('choice' in advice) {
    const { choice } = advice;
    const sure =
      choice.low.number === choice.high.number ? [] : [say`lands in the window: ${plain(choice.probability * 100)} %`];
    return { steps, answer: [sentence(choice, now), ...sure] };
  }
  const { nothing } = advice;
  switch (nothing.reason) {
    case 'empty':
      return { problem: say`There is no shim in the drawer that may be fitted.` };
    case 'settles out':
      return { problem: say`The spring loses more by settling than the window is wide: no reading allows for it.` };
    case 'absurd':
      return {
        problem: say`By these figures every shim brings less than nothing, or more than can be written out. Look at the reading, the shim that is in, and the rate.`,
      };
    case 'too thin': {
      const most = sentence(nothing.nearest, now);
      return {
        steps,
        answer: [
          nothing.held
            ? say`Nothing in the drawer that may be fitted is thick enough. The most it can do: ${most}.`
            : say`Nothing in the drawer is thick enough. The most it can do: ${most}.`,
        ],
      };
    }
    case 'too thick':
      return {
        steps,
        answer: [say`Nothing in the drawer is thin enough. The least it can do: ${sentence(nothing.nearest, now)}.`],
      };
    case 'too coarse':
      return {
        steps,
        answer: [
          say`The drawer steps over the window:`,
          `  ${sentence(nothing.under, now)}`,
          `  ${sentence(nothing.over, now)}`,
          say`Grind a shim between the two, or put finer ones into the drawer.`,
        ],
      };
  }
}

export const shimCalculations: readonly Calculation[] = [
  {
    name: 'choose-shim',
    title: say`The shim that most surely brings a reading into its window`,
    formula: [
      say`expected = reading + rate · (shim − shim now in), from low + settling to high`,
      say`doubt = √((shim − shim now in)² · rate error² + 2 · scatter²)`,
      say`the nearest to the aim of those that land with 95 %; else the surest`,
    ],
    source: say`Straight line; a second opening and its rate are given or fitted, never taken from the needle`,
    inputs: [
      { name: 'reading', kind: 'pressure', words: say`what the unit reads now`, most: mostPressure },
      { name: 'now', kind: 'length', words: say`shim that is in`, most },
      { name: 'low', kind: 'pressure', words: say`low end of the window`, most: mostPressure },
      { name: 'high', kind: 'pressure', words: say`high end of the window`, most: mostPressure },
      {
        name: 'aim',
        kind: 'pressure',
        words: say`where it should land; the surest place where none is given`,
        optional: true,
        most: mostPressure,
      },
      { name: 'rate', kind: 'rate', words: say`what a shim brings` },
      {
        name: 'rate-error',
        kind: 'rate',
        words: say`standard error of the rate (fit-rate works it out)`,
        optional: true,
        from: 'nothing',
      },
      {
        name: 'scatter',
        kind: 'pressure',
        most: mostPressure,
        words: say`standard deviation of one reading of the same build`,
        optional: true,
        from: 'nothing',
      },
      {
        name: 'settling',
        kind: 'pressure',
        most: mostPressure,
        words: say`what a new spring will lose by settling: it must read so much more`,
        optional: true,
        from: 'nothing',
      },
      ...drawerInputs,
      { name: 'together', kind: 'number', words: say`shims that may lie on each other: 1 or 2`, optional: true },
      {
        name: 'never-above',
        kind: 'length',
        words: say`what they may never pass, all together (where the spring binds)`,
        optional: true,
        most,
      },
    ],
    example: [
      'reading=231 bar',
      'now=1.30 mm',
      'low=250 bar',
      'high=258 bar',
      'rate=96 bar per mm',
      'rate-error=4 bar per mm',
      'scatter=1 bar',
      'from=1.00 mm',
      'to=1.95 mm',
      'by=0.05 mm',
    ],
    work(given) {
      const optional = (name: string) => (given.has(name) ? given.quantity(name) : null);
      const [low, high, now] = ['low', 'high', 'now'].map((name) => given.quantity(name)) as [
        Quantity,
        Quantity,
        Quantity,
      ];
      const rate = rateOf(given);
      if ('problem' in rate) return rate;
      if (compare(low, high) === 1) return { problem: upsideDown };
      const aim = optional('aim');
      if (aim !== null && (compare(aim, low) === -1 || compare(aim, high) === 1))
        return {
          problem: say`The aim, ${formatQuantity(aim)}, is outside the window: what lands on it does not pass.`,
        };
      const together = given.has('together') ? given.number('together') : 1;
      if (together !== 1 && together !== 2)
        return { problem: say`One shim or two lie on each other: together is 1 or 2.` };
      const sizes = drawer(given);
      if ('problem' in sizes) return sizes;
      const wrong = strange(now, sizes);
      if (wrong !== null) return { problem: wrong };
      const rateError = optional('rate-error');
      const scatter = optional('scatter');
      const neverAbove = optional('never-above');
      const advice = shimAdvice({
        reading: given.quantity('reading'),
        now,
        low,
        high,
        aim,
        rate,
        rateError: rateError === null ? null : amount(rateError),
        scatter: scatter === null ? null : asDifference(scatter),
        resolution: null,
        guard: null,
        settling: given.has('settling') ? asDifference(given.quantity('settling')) : null,
        drawer: layOut({ sizes, counts: sizes.map(() => null), stacks: together === 2 }, neverAbove),
      });
      const limit = neverAbove === null ? '' : say`, never above ${formatQuantity(neverAbove)}`;
      return answerOf(advice, now, [
        say`${sizes.length} sizes in the drawer${limit}, rate ${figure(given.quantity('rate'))}`,
      ]);
    },
  },
  {
    name: 'turn-screw',
    title: say`How far to turn an adjusting screw`,
    formula: ['turns = (aim − reading) / rate'],
    source: say`Straight line`,
    inputs: [
      { name: 'reading', kind: 'pressure', words: say`what the unit reads now`, from: 'nothing', most: mostPressure },
      { name: 'aim', kind: 'pressure', words: say`what it should read`, most: mostPressure },
      { name: 'rate', kind: 'rate', words: say`how much one turn in adds` },
    ],
    example: ['reading=231 bar', 'aim=254 bar', 'rate=25 bar per turn'],
    work(given) {
      const rate = given.quantity('rate');
      if (kindOfUnit(rate.unit) !== 'screw rate')
        return { problem: say`The rate of a screw is in pressure per turn, such as 25 bar per turn.` };
      const turns = exactTurns(given.quantity('reading'), given.quantity('aim'), rate);
      if (Math.abs(turns) > mostTurns)
        return {
          problem: say`That would be ${plain(Math.abs(turns))} turns: no screw has so many. Look at the figures and their units.`,
        };
      return {
        steps: [`turns = (${figure(given.quantity('aim'))} − ${figure(given.quantity('reading'))}) / ${figure(rate)}`],
        answer: [
          turns === 0
            ? say`it is where it should be`
            : `${plain(Math.abs(turns))} ${Math.abs(turns) === 1 ? 'turn' : 'turns'} ${turns > 0 ? 'in' : 'out'}, ${plain(Math.abs(turns) * 360)}°`,
        ],
      };
    },
  },
  {
    name: 'fit-rate',
    title: say`What a shim brings, fitted from readings of the shop`,
    formula: [
      say`pressure = a + rate · shim, by least squares`,
      say`scatter = √(about the line² + (mark / √12)² + (rate · last digit of the shim / √12)²)`,
      say`doubt of the rate: its standard error; of a new reading: Student’s t`,
    ],
    source: say`Least squares by ml-regression-multivariate-linear, held against NIST StRD Norris and GUM H.3; marks and digits: GUM 4.3.7`,
    inputs: [
      { name: 'shims', kind: 'length', words: say`thicknesses that were in`, many: true, most },
      {
        name: 'pressures',
        kind: 'pressure',
        words: say`what each one read, in the same order`,
        many: true,
        most: mostPressure,
      },
      {
        name: 'mark',
        kind: 'pressure',
        most: mostPressure,
        words: say`from one mark of the gauge to the next; the last digit written where none is given`,
        optional: true,
      },
    ],
    example: ['shims=1.20 mm, 1.30 mm, 1.40 mm, 1.50 mm', 'pressures=221 bar, 231 bar, 240 bar, 250 bar'],
    work(given) {
      const [shims, pressures] = [given.quantities('shims'), given.quantities('pressures')];
      if (shims.length !== pressures.length)
        return {
          problem: say`${shims.length} shims and ${pressures.length} pressures: give one pressure for each shim.`,
        };
      const slip = slipAmong('shim', shims) ?? slipAmong('pressure', pressures);
      if (slip !== null) return { problem: slip };
      const mark = given.has('mark') ? base(given.quantity('mark')) : Math.max(...pressures.map(digitOf));
      const line = fitLine(
        shims.map((shim, index) => ({ x: base(shim), y: base(pressures[index]!) })),
        { x: resolutionOf(Math.max(...shims.map(digitOf))), y: resolutionOf(mark) },
      );
      if (line === null) return { problem: say`A line needs at least three readings, with different shims.` };
      if (line.slope <= 0)
        return {
          problem: say`A thicker shim brought no more pressure: something else was changed between these readings.`,
        };
      const rate = (value: number) => figure(quantityOf(value, 'bar per mm')!);
      const middle = shims.reduce((sum, shim) => sum + base(shim), 0) / shims.length;
      const { low, high } = newPointAt(line, middle, 0.95);
      return {
        steps: [
          say`${shims.length} readings, scatter ${figure(quantityOf(line.residual, 'bar')!)} (one standard deviation, marks and digits included)`,
        ],
        answer: [
          say`rate ${rate(line.slope)}, standard error ${rate(line.slopeError)}`,
          say`at ${figure(quantityOf(middle, 'mm')!)} a new reading falls between ${figure(quantityOf(low, 'bar')!)} and ${figure(quantityOf(high, 'bar')!)} (95 %)`,
        ],
      };
    },
  },
  {
    name: 'match-set',
    title: say`Shims for a set: every unit in its window, and the least spread across it`,
    formula: [
      say`expected = reading + rate · (shim − shim now in)`,
      say`of all ways to give out the drawer, the least of highest − lowest`,
    ],
    source: say`Exact (bottleneck assignment): no other choice from this drawer has less spread`,
    inputs: [
      {
        name: 'readings',
        kind: 'pressure',
        words: say`opening pressure of each unit as it is`,
        many: true,
        most: mostPressure,
      },
      { name: 'now', kind: 'length', words: say`shim that is in each, in the same order`, many: true, most },
      { name: 'rate', kind: 'rate', words: say`what a shim brings` },
      { name: 'low', kind: 'pressure', words: say`low end of the window`, most: mostPressure },
      { name: 'high', kind: 'pressure', words: say`high end of the window`, most: mostPressure },
      ...drawerInputs,
      {
        name: 'counts',
        kind: 'number',
        words: say`how many there are of each; one of each where none is given`,
        many: true,
        optional: true,
        from: 'nothing',
      },
    ],
    example: [
      'readings=231 bar, 240 bar, 247 bar',
      'now=1.30 mm, 1.35 mm, 1.30 mm',
      'rate=96 bar per mm',
      'low=250 bar',
      'high=258 bar',
      'from=1.00 mm',
      'to=1.95 mm',
      'by=0.05 mm',
    ],
    work(given) {
      const [readings, now] = [given.quantities('readings'), given.quantities('now')];
      if (readings.length !== now.length)
        return {
          problem: say`${readings.length} readings and ${now.length} shims: give the shim that is in each unit.`,
        };
      const rate = rateOf(given);
      if ('problem' in rate) return rate;
      const [low, high] = [given.quantity('low'), given.quantity('high')];
      if (compare(low, high) === 1) return { problem: upsideDown };
      const sizes = drawer(given);
      if ('problem' in sizes) return sizes;
      const wrong = now.map((shim) => strange(shim, sizes)).find((one) => one !== null);
      if (wrong != null) return { problem: wrong };
      if (sizes.length * readings.length > mostPairs)
        return {
          problem: say`${readings.length} units and ${sizes.length} sizes are more than can be looked through: give the sizes about what is wanted.`,
        };
      const counts = given.has('counts') ? given.numbers('counts') : sizes.map(() => 1);
      if (counts.length !== sizes.length || counts.some((count) => !Number.isInteger(count) || count < 0))
        return { problem: say`Give a whole number of pieces for each of the ${sizes.length} sizes.` };
      // Exact: a reading just on the end of the window is inside.
      const expected = readings.map((reading, unit) =>
        sizes.map((size) => amount(reading).add(rate.mul(amount(size).sub(amount(now[unit]!))))),
      );
      const inside = expected.map((row) =>
        row.map((value) =>
          value.compare(amount(low)) >= 0 && value.compare(amount(high)) <= 0 ? value.valueOf() : null,
        ),
      );
      const bar = (value: number) => figure(quantityOf(value, low.unit)!);
      const reach = inside.flatMap((row, unit) => {
        const able = row.filter((value) => value !== null).length;
        return able > 0
          ? []
          : [
              say`unit ${unit + 1} can be brought to ${bar(Math.min(...expected[unit]!.map(Number)))} to ${bar(Math.max(...expected[unit]!.map(Number)))}`,
            ];
      });
      const found = leastSpread(inside, counts, (base(low) + base(high)) / 2);
      if (found === null)
        return {
          problem:
            reach.length > 0
              ? say`No shim of this drawer brings every unit into the window: ${joined(reach, '; ')}, in steps. Grind a shim, or make the drawer finer.`
              : say`Each unit could be brought into the window, but not all from this drawer at once: there are too few of some size.`,
        };
      return {
        steps: [say`${readings.length} units, ${sizes.length} sizes, rate ${figure(given.quantity('rate'))}`],
        answer: [
          ...found.choice.map(
            (column, unit) =>
              `unit ${unit + 1}: fit ${formatQuantity(sizes[column]!)} (now ${formatQuantity(now[unit]!)}): expect ${bar(expected[unit]![column]!.valueOf())}`,
          ),
          say`spread ${plain(((found.high - found.low) / (base(high) - base(low) || 1)) * 100)} % of the window, ${figure(quantityOf(found.high - found.low, low.unit)!)}`,
        ],
      };
    },
  },
];
