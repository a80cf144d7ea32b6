import type { AstNode } from 'langium';
import type * as ast from '../grammar/generated/ast.ts';
import { readNumber, readQuantity } from '../quantities/index.ts';
import type { Figure, Limit, NominalLimit, RangeLimit, ToleranceOnly } from '../quantities/types.ts';
import type { Context } from './context.ts';

/** Reads a quantity as written (`250 bar`), reporting what is wrong with it. Null where it has no meaning. */
export function quantityOf(
  context: Context,
  node: AstNode,
  property: string,
  text: string,
  sign?: string,
): Figure | null {
  const read = readQuantity(text);
  if ('problem' in read) {
    context.syntax(read.problem, context.source(node, property), read.fix);
    return read.quantity ?? null;
  }
  return sign === undefined ? read.quantity : negated(read.quantity);
}

/** Reads a bare number, of which the unit stands elsewhere. */
export function numberOf(context: Context, node: AstNode, property: string, text: string): string | null {
  const read = readNumber(text);
  if ('problem' in read) {
    context.syntax(read.problem, context.source(node, property), read.fix);
    return read.number ?? null;
  }
  return read.number;
}

function negated(quantity: Figure): Figure {
  return { ...quantity, number: quantity.number.startsWith('-') ? quantity.number.slice(1) : `-${quantity.number}` };
}

/** A limit as plain data. Null where a number in it has no meaning (reported). */
export function limitOf(context: Context, node: ast.Limit | undefined): Limit | null {
  if (node === undefined) return null;
  switch (node.$type) {
    case 'NominalLimit':
      return nominalOf(context, node);
    case 'RangeLimit': {
      const high = quantityOf(context, node, 'high', node.high, node.highSign);
      if (high === null) return null;
      const low = figureOf(context, node, 'low', node.low, high, node.lowSign);
      return low === null ? null : withPair(context, { form: 'range', low, high }, node.pair);
    }
    case 'AtLeast': {
      const least = quantityOf(context, node, 'value', node.value);
      return least === null ? null : withPair(context, { form: 'at least', least }, node.pair);
    }
    case 'AtMost': {
      const most = quantityOf(context, node, 'value', node.value);
      return most === null ? null : withPair(context, { form: 'at most', most }, node.pair);
    }
    case 'ToleranceLimit':
      return toleranceOnly(context, node);
  }
}

/** A range, where nothing else will do (`range 16..80 N·m`). */
export function rangeOf(context: Context, node: ast.Limit): RangeLimit | null {
  const limit = limitOf(context, node);
  if (limit === null || limit.form === 'range') return limit;
  context.syntax('A range has two ends: write it like 16..80 N·m.', context.source(node));
  return null;
}

/** A tolerance alone, as `unless stated` takes it. */
export function toleranceOnlyOf(context: Context, node: ast.Limit): ToleranceOnly | null {
  const limit = limitOf(context, node);
  if (limit === null || limit.form === 'tolerance') return limit;
  context.syntax('A standing tolerance has no nominal value: write it like ±10 %.', context.source(node));
  return null;
}

function nominalOf(context: Context, node: ast.NominalLimit): Limit | null {
  const nominal = quantityOf(context, node, 'value', node.value, node.sign);
  if (nominal === null) return null;
  const { plus, minus } = tolerances(context, node.tolerance, nominal);
  const first: NominalLimit = { form: 'nominal', nominal, plus, minus };
  if (node.angle !== undefined) {
    const angle = nominalOf(context, node.angle);
    if (angle === null || angle.form !== 'nominal') return null;
    return { form: 'then', first: withPair(context, first, node.pair) as NominalLimit, angle };
  }
  return withPair(context, first, node.pair);
}

function toleranceOnly(context: Context, node: ast.ToleranceLimit): ToleranceOnly | null {
  const figure = node.tolerance.both ?? node.tolerance.plus;
  const read =
    figure === undefined
      ? null
      : quantityOf(context, node.tolerance, node.tolerance.both === undefined ? 'plus' : 'both', figure);
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
      `A tolerance has two sides: write ${node.plus === undefined ? `+0 -${node.minus}` : `+${node.plus} -0`} where the other side is nothing, or ±${node.plus ?? node.minus}.`,
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
  if (/\p{L}|[%°µΩ]/u.test(text.replace(/^[\d.,]+(e[+-]?\d+)?/iu, '')))
    return quantityOf(context, node, property, text, sign);
  const number = numberOf(context, node, property, text);
  if (number === null) return null;
  const quantity = { number, unit: beside.unit };
  return sign === undefined ? quantity : negated(quantity);
}

function withPair<T extends Limit>(context: Context, limit: T, pair: ast.Pair | undefined): T {
  if (pair === undefined) return limit;
  const second = limitOf(context, pair.limit);
  return second === null ? limit : { ...limit, pair: second };
}
