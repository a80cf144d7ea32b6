/** Colors for names that the text alone does not show: calls and parameters of sequences, and names that are words of the language. */
import type { Range } from '../model/source.ts';
import type { Token } from '../syntax/token.ts';
import type { Snapshot } from './snapshot.ts';
import { rangeOfToken, scannedFile, tokensIn } from './words.ts';

export type Color = 'function' | 'parameter' | 'variable';

export interface Colored {
  readonly range: Range;
  readonly color: Color;
}

/** The names of a file that need a color of their own, in order. */
export function coloredNames(snapshot: Snapshot, file: string): Colored[] {
  const scanned = scannedFile(snapshot, file);
  const found = new Map<Token, Color>();
  for (const { use, target, what } of snapshot.result.linksIn(file)) {
    const color = what === 'sequence' ? 'function' : what === 'parameter' ? 'parameter' : 'variable';
    for (const { file: of, range } of what === 'parameter' ? [use, target] : [use]) {
      if (of !== file) continue;
      for (const token of tokensIn(scanned, range)) {
        const isWord = token.name === token.image && /^\p{L}/u.test(token.image);
        if (token.image !== '.' && (color !== 'variable' || isWord)) found.set(token, color);
      }
    }
  }
  return [...found]
    .map(([token, color]) => ({ range: rangeOfToken(token), color }))
    .sort(({ range: { start: a } }, { range: { start: b } }) => a.line - b.line || a.character - b.character);
}
