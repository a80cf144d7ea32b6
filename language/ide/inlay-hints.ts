import type { Position, Range } from '../model/source.ts';
import { buildHints } from '../recommendations/hints.ts';
import type { Snapshot } from './snapshot.ts';

/** Words that the editor shows in a text behind a place. */
export interface InlayHint {
  readonly position: Position;
  readonly text: string;
}

/** Hints of a file inside a range: what to fit behind a reading, what a step of the drawer brings behind a `choose`. */
export function inlayHintsIn({ result }: Snapshot, file: string, range: Range): InlayHint[] {
  const hints = buildHints(
    result.proceduresIn(file).map(({ procedure }) => procedure),
    result.jobsIn(file),
  );
  return hints.flatMap(({ source, text }) => {
    const { end } = source.range;
    if (source.file !== file || end.line < range.start.line || end.line > range.end.line) return [];
    return [{ position: end, text }];
  });
}
