/** Where a name is used and declared. */
import type { Position, Range, Source } from '../model/source.ts';
import { nameAt } from './occurrences.ts';
import type { Snapshot } from './snapshot.ts';

/** All places of a name in the workspace: its uses, and on request its declarations too. */
export function referencesAt(snapshot: Snapshot, file: string, position: Position, declarations: boolean): Source[] {
  const occurrences = nameAt(snapshot, file, position, 'workspace')?.occurrences ?? [];
  return occurrences.filter(({ isDeclaration }) => declarations || !isDeclaration).map(({ source }) => source);
}

/** A place of a name in its file. */
export interface Highlight {
  readonly range: Range;
  readonly isDeclaration: boolean;
}

/** The places of a name in one file. */
export function highlightsAt(snapshot: Snapshot, file: string, position: Position): Highlight[] {
  return (nameAt(snapshot, file, position, 'file')?.occurrences ?? []).flatMap(({ source, isDeclaration }) =>
    source.file === file ? [{ range: source.range, isDeclaration }] : [],
  );
}
