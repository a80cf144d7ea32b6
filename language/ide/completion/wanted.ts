/** What completion may offer at a place. */

import type { Verb } from '../../syntax/verbs/index.ts';
import type { PhraseName } from '../../syntax/verbs/phrases.ts';

/** What of a step comes next: what the verb acts on, or what follows the words of a clause. */
export interface Slot {
  readonly verb: Verb;
  readonly clause: PhraseName | 'object';
  /** What the step names so far. */
  readonly named: readonly string[];
}

/** Kinds of declared names, as `DeclaredSymbol.kind` calls them, and words of the language. */
export interface Wanted {
  /** Names of these kinds, the likeliest first. */
  readonly names: readonly string[];
  readonly words: readonly string[];
  /** Steps may begin here. */
  readonly verbs: boolean;
  readonly rules: boolean;
  /** Of a step, where names come next. */
  readonly slot?: Slot;
}

export const nothing: Wanted = { names: [], words: [], verbs: false, rules: false };
export const names = (...kinds: string[]): Wanted => ({ ...nothing, names: kinds });
export const words = (...list: string[]): Wanted => ({ ...nothing, words: list });
