/** What completion may offer at a place. */
/** Kinds of declared names, as `DeclaredSymbol.kind` calls them, and words of the language. */
export interface Wanted {
  /** Names of these kinds, the likeliest first. */
  readonly names: readonly string[];
  readonly words: readonly string[];
  /** Steps may begin here. */
  readonly verbs: boolean;
  readonly rules: boolean;
}

export const nothing: Wanted = { names: [], words: [], verbs: false, rules: false };
export const names = (...kinds: string[]): Wanted => ({ ...nothing, names: kinds });
export const words = (...list: string[]): Wanted => ({ ...nothing, words: list });
