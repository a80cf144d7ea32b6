import { compare, formatQuantity, kindOfUnit } from '../quantities/index.ts';
import type { Quantity } from '../quantities/types.ts';
import { type Said, say, term } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import type { ProblemCode } from '../syntax/problem-code.ts';
import type { Context } from './context.ts';
import { lowerQuantity } from './limits.ts';

/**
 * The passes in which a group is pulled up: shares of the torque, or torques, each more than the one before. None where
 * they are not (reported).
 */
export function lowerPasses(context: Context, clause: ast.PassesClause): readonly Quantity[] {
  const read = clause.shares.map((share) => lowerQuantity(context, clause, 'shares', share));
  const passes = read.flatMap((share) => share ?? []);
  // What could not be read has been reported.
  if (passes.length < read.length) return [];
  const problem = passes.map((pass, index) => problemOf(pass, passes[index - 1])).find((told) => told !== null);
  if (problem == null) return passes;
  const [code, what] = problem;
  context.syntax(
    code,
    say`${what}: the joint would be tightened unevenly, or past its torque. Write passes that rise to the full torque, such as passes 50 % 75 % 100 %.`,
    context.source(clause),
  );
  return [];
}

function problemOf(pass: Quantity, before: Quantity | undefined): readonly [ProblemCode, Said] | null {
  const kind = kindOfUnit(pass.unit);
  const text = formatQuantity(pass);
  if (kind !== 'ratio' && kind !== 'torque')
    return [
      'unit-of-another-kind',
      say`A pass is a percentage of the torque or a torque, and ${text} is a ${term(kind)}`,
    ];
  if (Number(pass.number) <= 0) return ['impossible-figure', say`A pass of ${text} turns nothing`];
  if (kind === 'ratio' && Number(pass.number) > 100)
    return ['impossible-figure', say`A pass of ${text} is more than the whole torque`];
  if (before === undefined) return null;
  const order = compare(pass, before);
  if (order === null)
    return ['unit-of-another-kind', say`The passes mix percentages and torques (${formatQuantity(before)}, ${text})`];
  return order === 1
    ? null
    : ['impossible-figure', say`The pass of ${text} is no more than the one before it (${formatQuantity(before)})`];
}
