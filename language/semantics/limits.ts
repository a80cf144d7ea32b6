import type { AstNode } from 'langium';
import { decimalValue } from '../quantities/decimal.ts';
import {
  compare,
  formatLimit,
  formatQuantity,
  impossibleEnd,
  kindOfUnit,
  readNumber,
  readQuantity,
  window,
} from '../quantities/index.ts';
import type { Figure, Kind, Limit, NominalLimit, RangeLimit, ToleranceOnly } from '../quantities/types.ts';
import { type Filling, type Said, say, term } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { textOf } from '../syntax/place.ts';
import type { ProblemCode } from '../syntax/problem-code.ts';
import { ByText } from './by-text.ts';
import type { Context } from './context.ts';

const figures = new ByText<Figure>();
/** By type of node and text. */
const limits = new ByText<Limit>();

/** Reads a quantity as written (`250 bar`), reporting what is wrong with it. Null where it has no meaning. */
export function lowerQuantity(
  context: Context,
  node: AstNode,
  property: string,
  text: string,
  sign?: string,
): Figure | null {
  const known = figures.get(text);
  if (known !== undefined) return sign === undefined ? known : negated(known);
  const read = readQuantity(text);
  if ('problem' in read)
    context.syntax(`${read.of}-unreadable`, read.problem, context.source(node, property), read.fix);
  else figures.set(text, read.quantity);
  // With a problem the quantity is the one that is surely meant.
  const { quantity } = read;
  return quantity === undefined ? null : sign === undefined ? quantity : negated(quantity);
}

/** Reads a bare number whose unit is written elsewhere. */
export function lowerNumber(context: Context, node: AstNode, property: string, text: string): string | null {
  const read = readNumber(text);
  if ('problem' in read) {
    context.syntax('number-unreadable', read.problem, context.source(node, property), read.fix);
    return read.number ?? null;
  }
  return read.number;
}

function negated(quantity: Figure): Figure {
  return { ...quantity, number: quantity.number.startsWith('-') ? quantity.number.slice(1) : `-${quantity.number}` };
}

/** A count, from a least number up. Null where it is none (reported); `like`: how it is written. */
export function lowerCount(
  context: Context,
  node: AstNode,
  property: string,
  text: string,
  { least, like }: { readonly least: number; readonly like: Filling },
): number | null {
  const number = lowerNumber(context, node, property, text);
  if (number === null) return null;
  if (/^\d{1,6}$/u.test(number) && Number(number) >= least) return Number(number);
  context.syntax(
    'impossible-figure',
    say`${number} is not a count: write a whole number, at least ${least}, such as ${like}.`,
    context.source(node, property),
  );
  return null;
}

/** What a figure must be that is over nothing: in words, with the reason, and how it is written. */
export interface Wanted {
  /** `The length of TW-80` */
  readonly what: Said;
  readonly why: Said;
  readonly like: Filling;
  /** Null: any kind. */
  readonly kind: Kind | null;
}

/** A figure over nothing, of its kind. Null where it is none (reported), so that nothing is worked out from it. */
export function lowerMeasure(
  context: Context,
  node: AstNode,
  property: string,
  text: string,
  { what, why, like, kind }: Wanted,
): Figure | null {
  const figure = lowerQuantity(context, node, property, text);
  if (figure === null) return null;
  const own = kindOfUnit(figure.unit);
  const wrong =
    kind !== null && own !== kind
      ? say`${what} is a ${term(kind)}, and ${formatQuantity(figure)} is a ${term(own)}`
      : decimalValue(figure.number).compare(0) <= 0
        ? say`${what} cannot be ${formatQuantity(figure)}`
        : null;
  if (wrong === null) return figure;
  const code = kind !== null && own !== kind ? 'unit-of-another-kind' : 'impossible-figure';
  context.syntax(code, say`${wrong}: ${why}. Write, for example, ${like}.`, context.source(node, property));
  return null;
}

/**
 * A limit as plain data. Null where a number in it has no meaning, or no such value can be (reported): then nothing that
 * follows from the figure is found either.
 */
export function lowerLimit(context: Context, node: ast.Limit | undefined): Limit | null {
  if (node === undefined) return null;
  const text = textOf(node);
  const key = `${node.$type} ${text}`;
  const known = text === '' ? undefined : limits.get(key);
  if (known !== undefined) return known;
  const before = context.problems.length;
  const limit = readLimit(context, node);
  if (limit === null) return null;
  const impossible = impossibleEnd(limit);
  if (impossible === null) {
    if (context.problems.length === before) limits.set(key, limit);
    return limit;
  }
  const { end, why } = impossible;
  const whole = formatLimit(limit);
  const figure = formatQuantity(end);
  context.syntax(
    'impossible-figure',
    say`${whole === figure ? whole : say`${whole} reaches ${figure}`}: ${why}. Check the number, its sign and its unit.`,
    context.source(node),
  );
  return null;
}

/** A limit of a difference or of what is given (a spread, air, a stretch): all of it is over nothing. */
export function lowerAmount(context: Context, node: ast.Limit | undefined, what: Said): Limit | null {
  const limit = lowerLimit(context, node);
  if (node === undefined || limit === null || limit.form === 'tolerance') return limit;
  const { low, high, nominal } = window(limit);
  const [top, bottom] = [high ?? nominal, low ?? nominal];
  const isNothing = top !== null && decimalValue(top.number).compare(0) <= 0;
  if (!isNothing && (bottom === null || decimalValue(bottom.number).compare(0) >= 0)) return limit;
  context.syntax(
    'impossible-figure',
    say`${what} of ${formatLimit(limit)} makes no sense: it must be more than zero. Check the number and its sign.`,
    context.source(node),
  );
  return null;
}

/** How far the units of a set may be apart: an upper end is what it is. */
export function lowerSpread(context: Context, node: ast.Limit): Limit | null {
  const limit = lowerAmount(context, node, say`A spread`);
  if (limit === null || window(limit).high !== null) return limit;
  context.syntax(
    'wrong-form-of-limit',
    say`A spread of ${formatLimit(limit)} has no upper end, so every set passes. Write the most that the units may differ: spread at most 5 bar.`,
    context.source(node),
  );
  return null;
}

function readLimit(context: Context, node: ast.Limit | undefined): Limit | null {
  if (node === undefined) return null;
  switch (node.$type) {
    case 'NominalLimit':
      return nominalOf(context, node);
    case 'RangeLimit': {
      const high = lowerQuantity(context, node, 'high', node.high, node.highSign);
      if (high === null) return null;
      const low = figureOf(context, node, 'low', node.low, high, node.lowSign);
      return low === null ? null : withPair(context, { form: 'range', low, high }, node.pair);
    }
    case 'AtLeast': {
      const least = lowerQuantity(context, node, 'value', node.value);
      return least === null ? null : withPair(context, { form: 'at least', least }, node.pair);
    }
    case 'AtMost': {
      const most = lowerQuantity(context, node, 'value', node.value);
      return most === null ? null : withPair(context, { form: 'at most', most }, node.pair);
    }
    case 'ToleranceLimit':
      return toleranceOnly(context, node);
  }
}

/** A range, where nothing else will do (`range 16..80 N·m`). */
export function lowerRange(context: Context, node: ast.Limit): RangeLimit | null {
  const limit = lowerLimit(context, node);
  if (limit === null) return null;
  const wrong =
    limit.form !== 'range'
      ? (['wrong-form-of-limit', say`A range has two ends: write, for example, 16..80 N·m.`] as const)
      : wrongScale(limit);
  if (wrong === null) return limit as RangeLimit;
  context.syntax(...wrong, context.source(node));
  return null;
}

/** A scale that goes nowhere; null: it is one. */
function wrongScale({ low, high }: RangeLimit): readonly [ProblemCode, Said] | null {
  const written = formatLimit({ form: 'range', low, high });
  switch (compare(low, high)) {
    case null:
      return [
        'unit-of-another-kind',
        say`${written} goes from a ${term(kindOfUnit(low.unit))} to a ${term(kindOfUnit(high.unit))}: a scale has one kind of unit. Write both ends in the same unit.`,
      ];
    case 0:
      return [
        'impossible-figure',
        say`${written} has no length, and nothing can be read on such a scale. Write both ends, such as 16..80 N·m.`,
      ];
    case 1:
      return [
        'impossible-figure',
        say`${written} goes down: a scale is written from its lower end up. Write ${formatLimit({ form: 'range', low: high, high: low })} if that is what you mean, and check the digits.`,
      ];
    case -1:
      return null;
  }
}

/** A tolerance alone, as `unless stated` takes it. */
export function lowerToleranceOnly(context: Context, node: ast.Limit): ToleranceOnly | null {
  const limit = lowerLimit(context, node);
  if (limit === null || limit.form === 'tolerance') return limit;
  context.syntax(
    'wrong-form-of-limit',
    say`A standing tolerance has no nominal value: write, for example, ±10 %.`,
    context.source(node),
  );
  return null;
}

function nominalOf(context: Context, node: ast.NominalLimit): Limit | null {
  const nominal = lowerQuantity(context, node, 'value', node.value, node.sign);
  if (nominal === null) return null;
  const { plus, minus } = tolerances(context, node.tolerance, nominal);
  const first: NominalLimit = { form: 'nominal', nominal, plus, minus };
  if (node.angle !== undefined) {
    const angle = nominalOf(context, node.angle);
    if (angle === null || angle.form !== 'nominal') return null;
    return { form: 'then', first: withPair(context, first, node.pair), angle };
  }
  return withPair(context, first, node.pair);
}

function toleranceOnly(context: Context, node: ast.ToleranceLimit): ToleranceOnly | null {
  const figure = node.tolerance.both ?? node.tolerance.plus;
  const read =
    figure === undefined
      ? null
      : lowerQuantity(context, node.tolerance, node.tolerance.both === undefined ? 'plus' : 'both', figure);
  if (read === null) return null;
  const { plus, minus } = tolerances(context, node.tolerance, read);
  return plus === null || minus === null ? null : { form: 'tolerance', plus, minus };
}

function tolerances(context: Context, node: ast.Tolerance | undefined, nominal: Figure) {
  if (node === undefined) return { plus: null, minus: null };
  if (node.both !== undefined) {
    const both = figureOf(context, node, 'both', node.both, nominal);
    return { plus: both, minus: both };
  }
  const plus = node.plus === undefined ? null : figureOf(context, node, 'plus', node.plus, nominal);
  const minus = node.minus === undefined ? null : figureOf(context, node, 'minus', node.minus, nominal);
  if (node.plus === undefined || node.minus === undefined) {
    context.syntax(
      'wrong-form-of-limit',
      say`A tolerance has two sides: write ${node.plus === undefined ? say`+0 -${node.minus!}` : say`+${node.plus} -0`} where the other side is nothing, or ±${node.plus ?? node.minus!}.`,
      context.source(node),
    );
  }
  return { plus, minus };
}

/** A number that takes its unit from the quantity beside it, or a quantity of its own. */
function figureOf(
  context: Context,
  node: AstNode,
  property: string,
  text: string,
  beside: Figure,
  sign?: string,
): Figure | null {
  if (/\p{L}|[%°µΩ]/u.test(text.replace(/^[\d.,'’ \u00A0\u202F]+(e[+-]?\d+)?/iu, '')))
    return lowerQuantity(context, node, property, text, sign);
  const number = lowerNumber(context, node, property, text);
  if (number === null) return null;
  const quantity = { number, unit: beside.unit };
  return sign === undefined ? quantity : negated(quantity);
}

function withPair<T extends Limit>(context: Context, limit: T, pair: ast.Pair | undefined): T {
  if (pair === undefined) return limit;
  const second = readLimit(context, pair.limit);
  return second === null ? limit : { ...limit, pair: second };
}
