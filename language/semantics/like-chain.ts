import { say } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import type { Context } from './context.ts';
import type { Scope } from './scope.ts';

/** Most procedures that may be like one another in a row. */
const longestChain = 20;

/** Most procedures that may be like one: each is checked whole. */
export const mostLike = 100;

/** Where a procedure says what it is like. */
export function findLike(node: ast.Procedure): ast.LikeProcedure | undefined {
  return node.heads.find((head) => head.$type === 'LikeProcedure') as ast.LikeProcedure | undefined;
}

/** Whether what a procedure is like can be followed to a beginning. Reports where it cannot, and why. */
export function hasBeginning(context: Context, node: ast.Procedure, scope: Scope): boolean {
  const like = findLike(node)?.procedure;
  if (like === undefined) return true;
  if (scope.procedure(like.name) === null) {
    context.isUnknown(like.name, 'procedure', scope.nearest(like.name, 'Procedure'), context.source(like));
    return false;
  }
  if (scope.isOneTooMany(node)) {
    context.syntax(
      'endless-steps',
      say`More than ${mostLike} procedures are like ${like.name}, and ${node.name} is not checked. Variants that differ only in their figures are part numbers of one procedure: write number and its lines.`,
      context.source(like),
    );
    return false;
  }
  const chain = [node];
  for (;;) {
    const next = findLike(chain.at(-1)!)?.procedure.name;
    const base = next === undefined ? null : scope.procedure(next);
    if (next !== undefined && base === null) {
      context.syntax(
        'head-incomplete',
        say`${node.name} is not checked: it takes its steps from ${chain.at(-1)!.name}, which is like ${next}, and there is no procedure of that name. Correct it there.`,
        context.source(like),
      );
      return false;
    }
    if (base === null) break;
    const at = chain.indexOf(base);
    if (at >= 0) {
      const ring = [...chain.slice(at), base].map(({ name }) => name);
      const words = ring.slice(1).map((name, index) => `${ring[index]} is like ${name}`);
      context.syntax(
        'endless-steps',
        say`${words.join(', ')}: a ring of like has no beginning, so ${node.name} has no steps to check or print. Write out the steps of one of them.`,
        context.source(like),
      );
      return false;
    }
    chain.push(base);
    if (chain.length - 1 > longestChain) {
      context.syntax(
        'endless-steps',
        say`${node.name} is like ${like.name}, and so on through more than ${longestChain} procedures: nobody can follow that, and it is not checked. Make it like a procedure that is written out.`,
        context.source(like),
      );
      return false;
    }
  }
  return true;
}
