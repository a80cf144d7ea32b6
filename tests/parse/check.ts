import { type Parsed, parse } from '../../language/syntax/parse.ts';
import { difference, treesDiffer } from './compare.ts';
import { langiumParse } from './reference.ts';

/**
 * What is wrong with the parse of a text that was edited: each state as Langium parses it, and each from what the state before was
 * parsed to as from nothing. Null: nothing.
 */
export function whatIsWrong(states: readonly string[]): string | null {
  let before: Parsed | null = null;
  for (const [index, text] of states.entries()) {
    const fresh = parse(text);
    const other = difference(langiumParse(text), fresh);
    if (other !== null) return `state ${index} is not what Langium reads: ${other}`;
    before = parse(text, before);
    const stale = treesDiffer(fresh, before);
    if (stale !== null) return `state ${index} is not what a fresh parse reads: ${stale}`;
  }
  return null;
}
