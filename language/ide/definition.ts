import type { Position, Source } from '../model/source.ts';
import { namedAt } from './named-at.ts';
import type { Snapshot } from './snapshot.ts';

/** Where the name at a place is declared: several places where it is in a sequence that several procedures call. */
export function definitionsAt({ result }: Snapshot, file: string, position: Position): Source[] {
  return (namedAt(result, file, position)?.targets ?? []).map(({ place }) => place);
}
