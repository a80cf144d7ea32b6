import { type AstNode, isAstNode } from 'langium';
import { type File, reflection } from './generated/ast.ts';

/** What the generated types ask for, and the grammar does not: one of several ways of writing has it. */
const mayLack: ReadonlyMap<string, string> = new Map([
  ['SpecValue', 'more'],
  ['Tolerance', 'both'],
  ['Minus', 'both'],
]);

/**
 * Takes out of a tree, in place, what a broken line left without something that the grammar asks for. The parser has
 * reported it; those who read the tree can rely on its types.
 */
export function withoutFragments(file: File): File {
  // A list, not recursion: nesting is as deep as somebody cares to write.
  const nodes: AstNode[] = [file];
  for (const node of nodes) nodes.push(...childrenOf(node));
  // Parts come after what they are part of, so that a fragment is known before its container is judged.
  const fragments = new Set<AstNode>();
  for (const node of nodes.reverse()) {
    const values = node as unknown as Record<string, unknown>;
    for (const { name, optional } of propertiesOf(node)) {
      const value = values[name];
      if (Array.isArray(value)) {
        const whole = value.filter((one) => !fragments.has(one));
        if (whole.length < value.length) values[name] = whole;
        if (whole.length === 0 && !optional) fragments.add(node);
      } else if (isAstNode(value) && fragments.has(value)) {
        values[name] = undefined;
        if (!optional) fragments.add(node);
      } else if (value === undefined && !optional) fragments.add(node);
    }
  }
  return file;
}

function propertiesOf(node: AstNode) {
  const free = mayLack.get(node.$type);
  return Object.values(reflection.getTypeMetaData(node.$type).properties).map(({ name, optional }) => ({
    name,
    optional: optional === true || name === free,
  }));
}

function childrenOf(node: AstNode): AstNode[] {
  const values = node as unknown as Record<string, unknown>;
  return propertiesOf(node).flatMap(({ name }) => [values[name]].flat().filter(isAstNode));
}
