import { phrases } from './phrases.ts';

export interface Avoided {
  readonly phrase: string;
  readonly instead: string;
  /** Lines before it in the text. */
  readonly below: number;
}

/** The phrases of a text that the prose avoids, without those that are right where they are. */
export function avoidedIn(text: string): Avoided[] {
  return phrases.flatMap(({ pattern, instead, except }) => {
    const searched = except === undefined ? text : text.replace(except, (kept) => kept.replace(/[^\n]/gu, '·'));
    return [...searched.matchAll(pattern)].map((match) => ({
      phrase: match[0],
      instead,
      below: searched.slice(0, match.index).split('\n').length - 1,
    }));
  });
}
