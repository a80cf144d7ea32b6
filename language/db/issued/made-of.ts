import { kindOfId } from '../../semantics/declaration-id.ts';
import type * as ast from '../../syntax/generated/ast.ts';
import { rangeOf } from '../../syntax/place.ts';
import { canonical, cut, sourcesOf } from '../printed-content.ts';
import { blanked } from './content.ts';

/** A declaration as it is compared with another of its kind and name: without remarks, and a shop without its tools. */
export interface DeclaredText {
  /** Kind and name. */
  readonly what: string;
  readonly text: string;
}

/** The declarations that a model says something of, by id: every fact in it carries where it was written. */
export function declarationsIn(model: unknown): string[] {
  return [...new Set([...sourcesOf(model)].map(({ file }) => file))];
}

export function declarationText(node: ast.Declaration, id: string, text: string): DeclaredText | null {
  if (node.$type === 'Unread') return null;
  const tools = node.$type === 'Shop' ? node.items.filter(({ $type }) => $type === 'Asset') : [];
  const left =
    tools.length === 0
      ? text
      : blanked(
          text,
          tools.map((tool) => rangeOf(tool)),
        );
  return { what: `${kindOfId(id).toLowerCase()} ${node.name}`, text: canonical(cut(left, rangeOf(node))) };
}
