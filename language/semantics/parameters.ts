import type * as ast from '../syntax/generated/ast.ts';
import { contentsOf } from '../syntax/place.ts';
import type { Context } from './context.ts';

/** Reports what a sequence is called with and does nothing with: names that calls give to it would pass unread. */
export function unusedParameters(context: Context, node: ast.Sequence) {
  if (node.parameters.length === 0) return;
  const used = new Set(
    [...contentsOf(node)].flatMap((inner) =>
      inner.$type === 'Path'
        ? [(inner as ast.Path).head]
        : inner.$type === 'NameRef'
          ? [(inner as ast.NameRef).name]
          : [],
    ),
  );
  node.parameters.forEach((parameter, index) => {
    if (used.has(parameter)) return;
    context.syntax(
      'call-mismatch',
      `Sequence ${node.name} does nothing with ${parameter}: what a call gives it would be lost. Use it in a step, or delete it.`,
      context.source(node, 'parameters', index),
    );
  });
}
