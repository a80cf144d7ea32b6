import type { AstNode } from 'langium';
import type { Range } from '../model/source.ts';
import type { Token } from './token.ts';

/** Where a node is in its text: from a token to a token. It moves with their lines. */
export class Place {
  first: Token | null = null;
  last: Token | null = null;
  /** Properties that are no nodes, in the order of the text: after each name its first and its last token. */
  private parts: readonly (string | Token)[] | null = null;

  /** Notes where a property is. */
  add(property: string, first: Token, last: Token) {
    // As long as what is in it: a list that grows keeps room for more, in each of many nodes.
    this.parts = this.parts === null ? [property, first, last] : [...this.parts, property, first, last];
  }

  /** Where a property is: of its values the one with this index, or the last; null: nowhere, or it is a node. */
  partOf(property: string, index: number): readonly [Token, Token] | null {
    const { parts } = this;
    let [found, left] = [-1, index];
    for (let at = 0; parts !== null && at < parts.length && left >= 0; at += 3)
      if (parts[at] === property) {
        found = at;
        left--;
      }
    return found < 0 ? null : [parts![found + 1] as Token, parts![found + 2] as Token];
  }
}

interface Placed extends AstNode {
  readonly $place?: Place;
}

const start = { line: 0, character: 0 };

/** Where a node is; null: nothing of it is in a text. */
export function placeOf(node: AstNode): Place | null {
  return (node as Placed).$place ?? null;
}

/** The range of a node, or of a property of it: of one of its values where it is a list. */
export function rangeOf(node: AstNode, property?: string, index = 0): Range {
  const place = placeOf(node);
  if (place === null) return { start, end: start };
  if (property !== undefined) {
    const part = place.partOf(property, index);
    if (part !== null) return between(part[0], part[1]);
    const children = [(node as unknown as Record<string, unknown>)[property]].flat() as AstNode[];
    const child = children[Math.min(index, children.length - 1)];
    if (typeof child === 'object' && child !== null) return rangeOf(child);
  }
  return between(place.first, place.last);
}

function between(first: Token | null, last: Token | null): Range {
  if (first === null || last === null) return { start, end: start };
  return {
    start: { line: first.line.number, character: first.column },
    end: { line: last.endLine.number, character: last.endColumn },
  };
}

/** The words of a node as they are written, with all that is between them. */
export function textOf(node: AstNode): string {
  const place = placeOf(node);
  if (place?.first == null || place.last === null) return '';
  return place.first.line.source.text.slice(place.first.offset, place.last.end);
}

/** All nodes in a node, each before what is in it. */
export function* contentsOf(node: AstNode): Generator<AstNode> {
  for (const [name, value] of Object.entries(node)) {
    if (name.startsWith('$')) continue;
    for (const child of Array.isArray(value) ? value : [value]) {
      if (typeof child !== 'object' || child === null) continue;
      yield child as AstNode;
      yield* contentsOf(child as AstNode);
    }
  }
}
