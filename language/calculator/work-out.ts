/** Works one calculation out from figures as they are typed, with the way to the answer. */

import {
  compare,
  formatQuantity,
  kindAdmits,
  kindOf,
  kindOfUnit,
  readNumber,
  readQuantity,
} from '../quantities/index.ts';
import type { Quantity } from '../quantities/types.ts';
import { either, english, type Filling, joined, type Said, say, type Tell, term } from '../say/say.ts';
import { nearest } from '../syntax/nearest.ts';
import type { Calculation, Given, Input } from './calculation.ts';
import { gaugeCalculations } from './gauge.ts';
import { needleCalculations } from './needle.ts';
import { shimCalculations } from './shims.ts';
import { torqueCalculations } from './torque.ts';

export const calculations: readonly Calculation[] = [
  ...shimCalculations,
  ...needleCalculations,
  ...torqueCalculations,
  ...gaugeCalculations,
];

/** What was worked out, in lines to print; or what is wrong and what to do. */
export type CalculationResult = { readonly text: string } | { readonly problem: Said };

/** @param typed figures as `name=value`; the value with its unit, several with commas between */
export function workOut(calculation: Calculation, typed: readonly string[], tell: Tell = english): CalculationResult {
  const read = readInputs(calculation, typed);
  if ('problem' in read) return read;
  const made = calculation.work(read.given);
  if ('problem' in made) return made;
  const width = Math.max(...read.shown.map(([name]) => name.length));
  const wide = Math.max(...read.shown.map(([, value]) => value.length));
  return {
    text: [
      tell(calculation.title),
      '',
      ...calculation.formula.map((line) => `  ${tell(line)}`),
      `  ${tell(say`Source: ${calculation.source}.`)}`,
      '',
      ...read.shown.map(([name, value, words]) => `  ${name.padEnd(width)}  ${value.padEnd(wide)}  ${tell(words)}`),
      '',
      ...made.steps.map((line) => `  ${tell(line)}`),
      '',
      ...made.answer.map(tell),
      '',
    ].join('\n'),
  };
}

/** How a calculation is requested. */
export function usage({ name, inputs, example }: Calculation): Said {
  const width = Math.max(...inputs.map((input) => input.name.length));
  return joined(
    [
      ...inputs.map((input) =>
        joined([
          `  ${input.name.padEnd(width)} `,
          input.optional === true ? say`${input.words} (need not be given)` : input.words,
        ]),
      ),
      say`For example: handtight work-out ${name} ${example.map((one) => `"${one}"`).join(' ')}`,
    ],
    '\n',
  );
}

interface ReadInputs {
  readonly given: Given;
  /** Name, value as it was understood, what it is. */
  readonly shown: readonly (readonly [string, string, Filling])[];
}

function readInputs(calculation: Calculation, typed: readonly string[]): ReadInputs | { problem: Said } {
  const values = new Map<string, readonly (Quantity | number)[]>();
  for (const one of typed) {
    const [, name, text] = /^([^=]*)=(.*)$/su.exec(one) ?? [];
    if (name === undefined || text === undefined)
      return { problem: say`“${one}” is not a name, an equals sign and a value, such as ${calculation.example[0]!}.` };
    const input = calculation.inputs.find((known) => known.name === name.trim());
    if (input === undefined) {
      const near = nearest(
        name.trim(),
        calculation.inputs.map((known) => known.name),
      );
      const instead =
        near.length > 0
          ? say`Did you mean ${either(near)}?`
          : say`It has ${calculation.inputs.map((known) => known.name).join(', ')}.`;
      return { problem: say`${calculation.name} has no figure ${name.trim()}. ${instead}` };
    }
    if (values.has(input.name)) return { problem: say`${input.name} is given twice. Delete one.` };
    const read = readValues(input, text);
    if ('problem' in read) return { problem: joined([`${input.name}:`, read.problem]) };
    values.set(input.name, read.values);
  }
  const other = unlike(calculation, values);
  if (other !== null) return { problem: other };
  const missing = calculation.inputs.filter((input) => input.optional !== true && !values.has(input.name));
  if (missing.length > 0)
    return {
      problem: joined([say`Not given: ${missing.map((input) => input.name).join(', ')}.`, usage(calculation)], '\n'),
    };
  return {
    given: givenOf(values),
    shown: calculation.inputs.flatMap((input) => {
      const known = values.get(input.name);
      return known === undefined ? [] : [[input.name, known.map(shownValue).join(', '), input.words] as const];
    }),
  };
}

/** Figures of `same` kind that are not. */
function unlike({ inputs }: Calculation, values: ReadonlyMap<string, readonly (Quantity | number)[]>): Said | null {
  const alike = inputs.filter(({ name, kind }) => kind === 'same' && values.has(name));
  const kinds = alike.map(({ name }) => kindOfUnit((values.get(name)![0] as Quantity).unit));
  const odd = kinds.findIndex((kind) => kind !== kinds[0]);
  return odd < 0
    ? null
    : say`${alike[0]!.name} is a ${term(kinds[0]!)}, and ${alike[odd]!.name} a ${term(kinds[odd]!)}: they must be of one kind. Look at the units.`;
}

function shownValue(value: Quantity | number): string {
  return typeof value === 'number' ? String(value) : formatQuantity(value);
}

function readValues(input: Input, text: string): { values: readonly (Quantity | number)[] } | { problem: Said } {
  const texts = input.many === true ? text.split(',').map((one) => one.trim()) : [text.trim()];
  const values: (Quantity | number)[] = [];
  for (const one of texts) {
    const read = readValue(input, one);
    if ('problem' in read) {
      // A list is cut at its commas: half of `1,30 mm` has no unit.
      const cut = texts.length > 1 && input.kind !== 'number' && /^-?\d*$/u.test(one);
      return cut
        ? {
            problem: say`“${one}” in ${text} has no unit of its own. Write each figure with its unit, a comma between two of them, and decimals with a point: 1.30 mm, 1.35 mm.`,
          }
        : read;
    }
    values.push(read.value);
  }
  return { values };
}

function readValue(input: Input, text: string): { value: Quantity | number } | { problem: Said } {
  if (text === '') return { problem: say`nothing is given behind the equals sign. It is ${input.words}.` };
  if (input.kind === 'number') {
    const read = readNumber(text);
    if ('problem' in read) return { problem: read.problem };
    const value = Number(read.number);
    const problem = outside(input, text, value, input.most !== undefined && value > Number(input.most));
    return problem === null ? { value } : { problem };
  }
  if (/^[-−]?[\d.,]+$/u.test(text))
    return { problem: say`${text} has no unit. Write it with one, such as ${usual(input)}.` };
  const read = readQuantity(text);
  if ('problem' in read) return { problem: read.problem };
  const value = read.quantity;
  const shown = formatQuantity(value);
  if (input.kind !== 'same' && !kindAdmits(kindOf(input.kind), value.unit))
    return {
      problem: say`${shown} is a ${term(kindOfUnit(value.unit))}, but a ${term(input.kind)} is needed. Check the unit.`,
    };
  const most = input.most === undefined ? null : readQuantity(input.most);
  const over =
    most !== null && 'quantity' in most && most.quantity !== undefined && compare(value, most.quantity) === 1;
  const problem = outside(input, shown, Number(value.number), over);
  return problem === null ? { value } : { problem };
}

/** A figure of the kind, to show how one is written. */
function usual({ kind }: Input): string {
  return usuals[kind] ?? '250 bar';
}

const usuals: Readonly<Partial<Record<Input['kind'], string>>> = {
  pressure: '250 bar',
  length: '1.30 mm',
  rate: '96 bar per mm',
  torque: '60 N·m',
  force: '500 N',
  stiffness: '200 N/mm',
  angle: '90°',
};

/** No tool shows less than a millionth of its unit, or more than a thousand million of it. */
const [smallest, largest] = [1e-6, 1e9];

/** Why a figure cannot be right for an input; null if it can. */
function outside({ words, from, most }: Input, shown: string, value: number, over: boolean): Said | null {
  const size = Math.abs(value);
  if (size > largest || (size > 0 && size < smallest))
    return size > largest
      ? say`${shown} is more than anything that is measured at a bench, and it is ${words}. Look at the decimal mark and the unit.`
      : say`${shown} is less than anything that is measured at a bench, and it is ${words}. Look at the decimal mark and the unit.`;
  if (over)
    return say`${shown} is more than ${most!}, and it is ${words}: that is a slip. Look at the decimal mark and the unit.`;
  if (from === 'anywhere' || value > 0 || (from === 'nothing' && value === 0)) return null;
  return from === 'nothing'
    ? say`${shown} is under nothing, and it is ${words}. Give it without its sign, or leave it out.`
    : say`${shown} is not over nothing, and it is ${words}. Look at what was typed.`;
}

function givenOf(values: ReadonlyMap<string, readonly (Quantity | number)[]>): Given {
  return {
    has: (name) => values.has(name),
    quantity: (name) => values.get(name)![0] as Quantity,
    quantities: (name) => values.get(name)! as readonly Quantity[],
    number: (name) => values.get(name)![0] as number,
    numbers: (name) => values.get(name)! as readonly number[],
  };
}
