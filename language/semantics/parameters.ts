import type { AstNode } from 'langium';
import { say } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { contentsOf } from '../syntax/place.ts';
import type { Context } from './context.ts';

/** Links the uses of what a sequence is called with; one that it does nothing with would pass unread, and is reported. */
export function lowerParameters(context: Context, node: ast.Sequence) {
  if (node.parameters.length === 0) return;
  const names = node.lines.flatMap((line) => [...contentsOf(line)]).filter(isName);
  node.parameters.forEach((parameter, index) => {
    const declared = context.source(node, 'parameters', index);
    const uses = names.filter((name) => parameterOf(name) === parameter);
    for (const use of uses)
      context.link(context.source(use, use.$type === 'Path' ? 'head' : 'name'), declared, parameter, 'parameter');
    if (uses.length > 0) return;
    context.syntax(
      'call-mismatch',
      say`Sequence ${node.name} does nothing with ${parameter}: what a call gives it would be lost. Use it in a step, or delete it.`,
      declared,
    );
  });
}

function isName(node: AstNode): node is ast.Path | ast.NameRef {
  return node.$type === 'Path' || (node.$type === 'NameRef' && node.$container?.$type !== 'Allow');
}

/** A face or port by its part is no parameter, whatever the part is called. */
function parameterOf(node: ast.Path | ast.NameRef): string | null {
  return node.$type === 'NameRef' ? node.name : node.tail === undefined ? node.head : null;
}
