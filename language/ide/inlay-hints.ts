import { allSteps } from '../analysis/locations.ts';
import type { Reader } from '../i18n/translate.ts';
import type { Procedure, Spec } from '../model/procedure.ts';
import { contains } from '../model/ranges.ts';
import type { Position, Range } from '../model/source.ts';
import { formatLimit } from '../quantities/index.ts';
import { buildHints } from '../recommendations/hints.ts';
import type { Snapshot } from './snapshot.ts';

/** Words that the editor shows in a text. */
export interface InlayHint {
  readonly position: Position;
  readonly text: string;
  /** It is before what it is about, and not behind it. */
  readonly isBefore: boolean;
}

/** Which hints are shown: each has a switch in the settings. */
export interface ShownHints {
  /** What to fit behind a reading, what a step of the drawer brings behind a `choose`. */
  readonly shims: boolean;
  /** The printed number before a step. */
  readonly steps: boolean;
  /** The limit behind a spec that is used. */
  readonly limits: boolean;
}

/** Hints of a file inside a range. */
export function inlayHintsIn(
  { result }: Snapshot,
  file: string,
  range: Range,
  shown: ShownHints,
  reader: Reader,
): InlayHint[] {
  const procedures = result.proceduresIn(file).map(({ procedure }) => procedure);
  const hints: InlayHint[] = [];
  const isShown = ({ line }: Position) => line >= range.start.line && line <= range.end.line;
  const add = (hint: InlayHint) => {
    if (isShown(hint.position)) hints.push(hint);
  };
  if (shown.shims)
    for (const { source, text } of buildHints(procedures, result.jobsIn(file), reader))
      if (source.file === file) add({ position: source.range.end, text, isBefore: false });
  // A call is shown with the number of its first step.
  for (const procedure of shown.steps ? procedures : [])
    for (const { source, number, call } of allSteps(procedure))
      if (source.file === file && (call === null || /a$/u.test(number)))
        add({ position: source.range.start, text: number, isBefore: true });
  for (const procedure of shown.limits ? procedures : [])
    for (const { use, target, what, name } of result.linksIn(file)) {
      const spec = what === 'spec' ? specAt(procedure, name, target.range.start) : undefined;
      const isDeclaration =
        spec === undefined || spec.rebuilt === null || !contains(procedure.extent.range, use.range.start);
      if (!isDeclaration) add({ position: use.range.end, text: formatLimit(spec.rebuilt!), isBefore: false });
    }
  return hints;
}

function specAt({ specs }: Procedure, name: string, { line }: Position): Spec | undefined {
  return specs.find((spec) => spec.name === name && spec.source.range.start.line === line);
}
