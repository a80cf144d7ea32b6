import {
  closingPressure,
  liftingArea,
  needleProblem,
  openingPressure,
  seatOverGuide,
  shimRateOf,
} from '../engineering/needle.ts';
import { springStiffness } from '../engineering/spring.ts';
import { say } from '../say/say.ts';
import type { Calculation, Given, Input } from './calculation.ts';
import { figure, millimetres, plain } from './figures.ts';

const guide: Input = { name: 'guide', kind: 'length', words: say`diameter of the needle in its guide`, most: '100 mm' };
const seat: Input = { name: 'seat', kind: 'length', words: say`diameter of the seat that it closes`, most: '100 mm' };
const preload: Input = {
  name: 'preload',
  kind: 'force',
  words: say`force of the spring on the closed needle`,
  most: '100000 N',
};

const needleOf = (given: Given) => ({ guide: given.quantity('guide'), seat: given.quantity('seat') });
const areaStep = (given: Given) =>
  say`lifting area = π/4 · (${millimetres(given.quantity('guide'))}² − ${millimetres(given.quantity('seat'))}²) = ${plain(liftingArea(needleOf(given)) * 1e6)} mm²`;

export const needleCalculations: readonly Calculation[] = [
  {
    name: 'opening-pressure',
    title: say`Pressure at which a needle lifts (first opening only)`,
    formula: ['opening = preload / (π/4 · (guide² − seat²))'],
    source: say`Balance of forces on the needle`,
    inputs: [preload, guide, seat],
    example: ['preload=500 N', 'guide=6 mm', 'seat=3 mm'],
    work(given) {
      const wrong = needleProblem(needleOf(given));
      const problem = wrong;
      const opening = openingPressure(given.quantity('preload'), needleOf(given));
      if (problem !== null || opening === null)
        return { problem: problem ?? say`The preload is too large to reckon with.` };
      return {
        steps: [areaStep(given), say`opening = ${figure(given.quantity('preload'))} / lifting area`],
        answer: [say`opening ${figure(opening)}`],
      };
    },
  },
  {
    name: 'closing-pressure',
    title: say`Pressure at which a needle falls shut`,
    formula: ['closing = preload / (π/4 · guide²)'],
    source: say`Balance of forces on the needle; all of it is under pressure once it has lifted`,
    inputs: [preload, guide],
    example: ['preload=500 N', 'guide=6 mm'],
    work(given) {
      const closing = closingPressure(given.quantity('preload'), given.quantity('guide'));
      if (closing === null) return { problem: say`The guide must have a diameter over nothing.` };
      return {
        steps: [
          `area = π/4 · ${millimetres(given.quantity('guide'))}²`,
          `closing = ${figure(given.quantity('preload'))} / area`,
        ],
        answer: [say`closing ${figure(closing)}`],
      };
    },
  },
  {
    name: 'seat-over-guide',
    title: say`Seat over guide, from where a needle opens and closes`,
    formula: ['closing / opening = 1 − (seat / guide)²'],
    source: say`Balance of forces on the needle`,
    inputs: [
      { name: 'opening', kind: 'pressure', words: say`pressure at which it opens`, most: '10000 bar' },
      { name: 'closing', kind: 'pressure', words: say`pressure at which it closes`, most: '10000 bar' },
    ],
    example: ['opening=20000 kPa', 'closing=10300 kPa'],
    work(given) {
      const ratio = seatOverGuide(given.quantity('opening'), given.quantity('closing'));
      if (ratio === null)
        return {
          problem: say`A needle closes at a pressure over nothing and under that at which it opens. Read both again.`,
        };
      return {
        steps: [`seat / guide = √(1 − ${figure(given.quantity('closing'))} / ${figure(given.quantity('opening'))})`],
        answer: [say`seat / guide ${plain(ratio)}`],
      };
    },
  },
  {
    name: 'spring-stiffness',
    title: say`Stiffness of a coil spring of round wire`,
    formula: ['stiffness = G · d⁴ / (8 · D³ · n)'],
    source: say`Shigley, Mechanical Engineering Design, helical compression springs (from memory)`,
    inputs: [
      { name: 'modulus', kind: 'pressure', words: say`shear modulus G of the wire`, most: '1000000 MPa' },
      { name: 'wire', kind: 'length', words: say`diameter d of the wire`, most: '100 mm' },
      { name: 'coil', kind: 'length', words: say`mean diameter D of the coil`, most: '1000 mm' },
      { name: 'coils', kind: 'number', words: say`coils n that work, without the closed ends`, most: '1000' },
    ],
    example: ['modulus=79000 MPa', 'wire=3 mm', 'coil=12 mm', 'coils=6'],
    work(given) {
      const stiffness = springStiffness({
        modulus: given.quantity('modulus'),
        wire: given.quantity('wire'),
        coil: given.quantity('coil'),
        coils: given.number('coils'),
      });
      if (stiffness === null)
        return {
          problem: say`All four must be over nothing, and the wire thinner than the coil is wide. Measure again.`,
        };
      return {
        steps: [
          `d⁴ = ${millimetres(given.quantity('wire'))}⁴ mm⁴`,
          `8 · D³ · n = 8 · ${millimetres(given.quantity('coil'))}³ · ${plain(given.number('coils'))} mm³`,
        ],
        answer: [say`stiffness ${figure(stiffness)}`],
      };
    },
  },
  {
    name: 'shim-rate',
    title: say`What a shim brings, from its spring and needle (first opening only)`,
    formula: ['rate = stiffness / (π/4 · (guide² − seat²))'],
    source: say`Balance of forces on the needle; published shop rates run from 69 to 196 bar/mm`,
    inputs: [
      { name: 'stiffness', kind: 'stiffness', words: say`stiffness of the spring`, most: '100000 N/mm' },
      guide,
      seat,
    ],
    example: ['stiffness=200 N/mm', 'guide=6 mm', 'seat=3 mm'],
    work(given) {
      const wrong = needleProblem(needleOf(given));
      const problem = wrong;
      const rate = shimRateOf(given.quantity('stiffness'), needleOf(given));
      if (problem !== null || rate === null)
        return { problem: problem ?? say`The spring must have a stiffness over nothing.` };
      return {
        steps: [areaStep(given), say`rate = ${figure(given.quantity('stiffness'))} / lifting area`],
        answer: [say`rate ${figure(rate)}`],
      };
    },
  },
];
