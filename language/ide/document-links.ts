/** Words that lead to a page: the rule behind `allow`. */
import type { Range } from '../model/source.ts';
import { type Said, say } from '../say/say.ts';
import { rulePage } from './problem.ts';
import type { Snapshot } from './snapshot.ts';
import { rangeOfToken, scannedFile } from './words.ts';

export interface DocumentLink {
  readonly range: Range;
  readonly rule: string;
  readonly tooltip: Said;
}

/** The rules that a file allows. */
export function documentLinksOf(snapshot: Snapshot, file: string): DocumentLink[] {
  return scannedFile(snapshot, file).lines.flatMap(({ tokens }) =>
    tokens.flatMap((token, index) =>
      tokens[index - 1]?.image === 'allow' && rulePage(token.image) !== null
        ? [{ range: rangeOfToken(token), rule: token.image, tooltip: say`Explain ${token.image}` }]
        : [],
    ),
  );
}
