/** What is said in the source: the templates of `say`. */
import { globSync, readFileSync } from 'node:fs';
import { parseAst } from 'vitest/node';

/** Where what is said may be. */
const folders = 'language,server';

/** A template, and the file that says it. */
export interface Place {
  readonly template: string;
  readonly file: string;
}

interface Node {
  readonly type: string;
  readonly tag?: { readonly name?: string };
  readonly quasi?: { readonly quasis: readonly { readonly value: { readonly cooked: string } }[] };
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && 'type' in value;
}

/** Every template in a source, those inside others too. */
function templatesIn(source: string): string[] {
  const found: string[] = [];
  const walk = (node: Node) => {
    if (node.type === 'TaggedTemplateExpression' && (node.tag?.name === 'say' || node.tag?.name === 'worded'))
      found.push(
        node.quasi!.quasis.map(({ value }, index) => (index === 0 ? '' : `{${index - 1}}`) + value.cooked).join(''),
      );
    for (const value of Object.values(node))
      if (Array.isArray(value)) value.filter(isNode).forEach(walk);
      else if (isNode(value)) walk(value);
  };
  walk(parseAst(source, { lang: 'ts' }) as unknown as Node);
  return found;
}

/** All that is said, in the order of the files. */
export function saidInSource(): Place[] {
  return globSync(`{${folders}}/**/*.ts`)
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => !/\.test\.ts$|\/generated\//u.test(file))
    .sort()
    .flatMap((file) => templatesIn(readFileSync(file, 'utf8')).map((template) => ({ template, file })));
}
