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

/** Where a node is; null: nothing of it is in a text. */
export function placeOf(node: AstNode): Place | null {
  return (node as Placed).$place ?? null;
}

/** First and last token of a node, or of a property of it: of one of its values where it is a list. Null: in no text. */
export function tokensOf(node: AstNode, property?: string, index = 0): readonly [Token, Token] | null {
  const place = placeOf(node);
  if (place === null) return null;
  if (property !== undefined) {
    const part = place.partOf(property, index);
    if (part !== null) return part;
    const value = (node as unknown as Record<string, unknown>)[property];
    const child = Array.isArray(value) ? value[Math.min(index, value.length - 1)] : value;
    if (typeof child === 'object' && child !== null) return tokensOf(child as AstNode);
  }
  const { first, last } = place;
  return first === null || last === null ? null : [first, last];
}

/** The range of a node, or of a property of it: of one of its values where it is a list. */
export function rangeOf(node: AstNode, property?: string, index = 0): Range {
  const tokens = tokensOf(node, property, index);
  return rangeBetween(tokens?.[0] ?? null, tokens?.[1] ?? null, 0);
}

/** From a token to a token, with lines counted from one. */
export function rangeBetween(first: Token | null, last: Token | null, from: number): Range {
  if (first === null || last === null)
    return { start: { line: -from, character: 0 }, end: { line: -from, character: 0 } };
  return {
    start: { line: first.line.number - from, character: first.column },
    end: { line: last.endLine.number - from, character: last.endColumn },
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
