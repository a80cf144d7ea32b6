import { acceptance, conformance, falseAccept } from '../engineering/decision.ts';
import { errorOfClass } from '../engineering/tool-error.ts';
import type { DecisionRule } from '../model/shop.ts';
import { asDifference, compare, formatQuantity } from '../quantities/index.ts';
import type { Quantity } from '../quantities/types.ts';
import { type Said, say } from '../say/say.ts';
import type { Calculation, Given, Input } from './calculation.ts';
import { figure, plain } from './figures.ts';

const low: Input = { name: 'low', kind: 'same', words: say`low end of the limit`, optional: true, from: 'anywhere' };
const high: Input = { name: 'high', kind: 'same', words: say`high end of the limit`, optional: true, from: 'anywhere' };
const noEnd = say`Give low=, high= or both: without a limit nothing is judged.`;
const upsideDown = say`The low end is over the high one. Look at what was typed.`;

function ends(given: Given): { low: Quantity | null; high: Quantity | null } | { problem: Said } {
  const [from, to] = ['low', 'high'].map((name) => (given.has(name) ? given.quantity(name) : null)) as [
    Quantity | null,
    Quantity | null,
  ];
  if (from === null && to === null) return { problem: noEnd };
  if (from !== null && to !== null && compare(from, to) === 1) return { problem: upsideDown };
  return { low: from, high: to };
}

/** By the share of the uncertainty that is kept away from the limit. */
const ruleOf: Readonly<Record<string, DecisionRule>> = { '0': 'simple', '0.83': 'guarded', '1': 'fully guarded' };

export const gaugeCalculations: readonly Calculation[] = [
  {
    name: 'gauge-error',
    title: say`What a gauge may be off, by its class`,
    formula: [say`error = class / 100 · (top of the scale − bottom)`],
    source: say`EN 837-1: the class is percent of span, wherever on the dial it is read`,
    inputs: [
      { name: 'class', kind: 'number', words: say`accuracy class on the dial`, most: '10' },
      { name: 'low', kind: 'same', words: say`bottom of the scale`, from: 'anywhere' },
      { name: 'high', kind: 'same', words: say`top of the scale`, from: 'anywhere' },
    ],
    example: ['class=1.0', 'low=0 bar', 'high=400 bar'],
    work(given) {
      const range = { form: 'range', low: given.quantity('low'), high: given.quantity('high') } as const;
      const error = errorOfClass(String(given.number('class')), range);
      if (error === null) return { problem: say`The top of the scale must be over its bottom. Look at low and high.` };
      return {
        steps: [`error = ${plain(given.number('class'))} / 100 · (${figure(range.high)} − ${figure(range.low)})`],
        answer: [say`error ±${figure(error)}`],
      };
    },
  },
  {
    name: 'gauge-window',
    title: say`What a gauge may read, so that the true value is inside the limit`,
    formula: [
      say`lowest reading = low + r · error, up to a mark`,
      say`highest reading = high − r · error, down to a mark`,
    ],
    source: say`Guard band of ISO 14253-1 (r = 0.83, from memory); r = 0 is simple acceptance, r = 1 guards in full`,
    inputs: [
      low,
      high,
      {
        name: 'error',
        kind: 'same',
        words: say`what the gauge may be off (gauge-error works it out)`,
        from: 'nothing',
      },
      { name: 'mark', kind: 'same', words: say`from one mark of the dial to the next that the eye can read` },
      { name: 'r', kind: 'number', words: say`0, 0.83 or 1; 0 where none is given`, optional: true, from: 'nothing' },
    ],
    example: ['low=250 bar', 'high=258 bar', 'error=2.4 bar', 'mark=1 bar', 'r=0.83'],
    work(given) {
      const window = ends(given);
      if ('problem' in window) return window;
      const share = given.has('r') ? given.number('r') : 0;
      const rule = ruleOf[String(share)];
      if (rule === undefined)
        return { problem: say`r is 0, 0.83 or 1, not ${plain(share)}: these are the rules that a sheet may name.` };
      const error = asDifference(given.quantity('error'));
      const made = acceptance({ ...window, nominal: null }, error, rule, asDifference(given.quantity('mark')));
      if (made === null) return { problem: say`A mark must be wider than nothing.` };
      const steps = [say`kept away from each end: ${plain(share)} · ${figure(error)}`];
      if (made.shut)
        return { steps, answer: [say`No mark of this gauge is safe to pass: take a finer gauge, or a wider limit.`] };
      return {
        steps,
        // On the marks of the gauge as they are: cut to a number of figures they would let more through.
        answer: [
          ...(made.window.low === null ? [] : [say`lowest reading that passes ${formatQuantity(made.window.low)}`]),
          ...(made.window.high === null ? [] : [say`highest reading that passes ${formatQuantity(made.window.high)}`]),
        ],
      };
    },
  },
  {
    name: 'false-accept',
    title: say`How likely a unit just outside its limit is read as good`,
    formula: [say`probability = Φ(−2r), one side, error normal, uncertainty two standard deviations`],
    source: say`Normal distribution; a guard band of r times the expanded uncertainty`,
    inputs: [
      {
        name: 'r',
        kind: 'number',
        words: say`share of the uncertainty that is kept away from the limit`,
        from: 'nothing',
        most: '10',
      },
    ],
    example: ['r=0.83'],
    work(given) {
      return {
        steps: [`probability = Φ(−2 · ${plain(given.number('r'))})`],
        answer: [say`probability ${plain(falseAccept(given.number('r')) * 100)} %`],
      };
    },
  },
  {
    name: 'conformance',
    title: say`How likely the true value is inside the limit, of a reading`,
    formula: ['probability = Φ((high − reading) / u) − Φ((low − reading) / u)'],
    source: say`JCGM 106:2012, 7 (from memory): error normal, nothing known of the unit before`,
    inputs: [
      low,
      high,
      { name: 'reading', kind: 'same', words: say`what the gauge showed`, from: 'anywhere' },
      { name: 'uncertainty', kind: 'same', words: say`standard uncertainty u (half of what is given for 95 %)` },
    ],
    example: ['low=250 bar', 'high=258 bar', 'reading=252 bar', 'uncertainty=1.2 bar'],
    work(given) {
      const window = ends(given);
      if ('problem' in window) return window;
      const uncertainty = asDifference(given.quantity('uncertainty'));
      const probability = conformance(window, given.quantity('reading'), uncertainty);
      if (probability === null) return { problem: say`The uncertainty must be over nothing.` };
      const term = (end: Quantity) =>
        `Φ((${figure(end)} − ${figure(given.quantity('reading'))}) / ${figure(given.quantity('uncertainty'))})`;
      return {
        steps: [
          `probability = ${window.high === null ? '1' : term(window.high)}${window.low === null ? '' : ` − ${term(window.low)}`}`,
        ],
        answer: [say`probability ${plain(probability * 100)} %`],
      };
    },
  },
];
