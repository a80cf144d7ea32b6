import { type InlayHint, InlayHintKind, type Range } from 'vscode-languageserver';
import type { CheckResult } from '../../language/db/workspace.ts';
import { hintsOf } from '../../language/recommendations/hints.ts';

/** Hints of a file inside a range: what to fit behind a reading, what a step of the drawer brings behind a `choose`. */
export function inlayHints(uri: string, range: Range, { procedures, jobs }: CheckResult): InlayHint[] {
  const hints = hintsOf(
    procedures.map(({ procedure }) => procedure),
    jobs,
  );
  return hints.flatMap(({ source, text }) => {
    const { end } = source.range;
    if (source.file !== uri || end.line < range.start.line || end.line > range.end.line) return [];
    return [{ position: end, label: text, kind: InlayHintKind.Type, paddingLeft: true }];
  });
}
