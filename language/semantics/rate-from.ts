import { base, quantityOf as inUnit } from '../engineering/measured.ts';
import { needleProblem, shimRateOf } from '../engineering/needle.ts';
import type { RateFrom } from '../model/procedure.ts';
import { formatQuantity, kindOfUnit } from '../quantities/index.ts';
import type { Kind, Limit, Quantity } from '../quantities/types.ts';
import { type Said, say, term } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import type { ProblemCode } from '../syntax/problem-code.ts';
import type { Context } from './context.ts';
import { lowerQuantity } from './limits.ts';

/** Digits that the rate is given with: more than any spring is measured to. */
const digits = 4;

/** The spec that is to have the rate. */
export interface RateOf {
  readonly name: string;
  readonly kind: Kind | null;
  /** `3 bar per 0.001 in` of the spec that a part number's value goes over; null: it has no second quantity. */
  readonly per: Quantity | null;
}

/** What a rate is to be worked out from. Null where a figure of it has no meaning (reported). */
export function lowerRateFrom(context: Context, node: ast.RateFrom): RateFrom | null {
  const [stiffness, guide, seat] = (['stiffness', 'guide', 'seat'] as const).map((input) =>
    lowerQuantity(context, node, input, node[input]),
  );
  return stiffness == null || guide == null || seat == null ? null : { stiffness, guide, seat };
}

/**
 * The rate of a shim from its spring and needle, rounded, as a limit like one that is written. Null where none comes of
 * them (reported).
 */
export function lowerRate(
  context: Context,
  node: ast.RateFrom,
  from: RateFrom | null,
  { name, kind, per }: RateOf,
): Limit | null {
  const refuse = (code: ProblemCode, message: Said, property?: string) => {
    context.syntax(code, message, context.source(node, property));
    return null;
  };
  if (kind !== 'setting rate')
    return refuse(
      'unit-of-another-kind',
      say`Spec ${name} is ${kind === null ? say`not declared as a rate` : say`a ${term(kind)}`}, but a spring and a needle give the rate of a shim. Write “spec ${name} rate from …”, or write the figure itself.`,
    );
  if (per !== null)
    return refuse(
      'unit-of-another-kind',
      say`Spec ${name} is written per ${formatQuantity(per)}, and a spring and a needle give a rate per mm: the two do not go together. Write the rate of the spec in one unit, such as 96 bar per mm.`,
    );
  if (from === null) return null;
  const { stiffness, guide, seat } = from;
  const wrong = (['stiffness', 'guide', 'seat'] as const).find(
    (input) => kindOfUnit(from[input].unit) !== (input === 'stiffness' ? 'stiffness' : 'length'),
  );
  if (wrong !== undefined)
    return refuse(
      'unit-of-another-kind',
      say`${wrong === 'stiffness' ? say`The stiffness of a spring is a force per length` : say`A ${term(wrong)} has a diameter`}, and ${formatQuantity(from[wrong])} is a ${term(kindOfUnit(from[wrong].unit))}: no rate follows from it. Write, for example, ${wrong === 'stiffness' ? say`200 N/mm` : say`6 mm`}.`,
      wrong,
    );
  const problem = needleProblem({ guide, seat });
  if (problem !== null) return refuse('impossible-figure', problem, base(guide) <= 0 ? 'guide' : 'seat');
  if (base(stiffness) <= 0)
    return refuse(
      'impossible-figure',
      say`A spring with a stiffness of ${formatQuantity(stiffness)} presses no harder on a thicker shim: nothing could be set with it. Write the measured stiffness or the one on the drawing, such as 200 N/mm.`,
      'stiffness',
    );
  const exact = shimRateOf(stiffness, { guide, seat });
  const nominal = exact === null ? null : inUnit(base(exact), exact.unit, digits);
  if (nominal === null)
    return refuse(
      'impossible-figure',
      say`The rate of this spring and needle is too large to calculate with. Check the units.`,
    );
  return { form: 'nominal', nominal, plus: null, minus: null };
}
