import type { Position, Range } from '../model/source.ts';
import { nameAt } from './occurrences.ts';
import type { Snapshot } from './snapshot.ts';

/**
 * The places of a name that change together as one is typed: only where all of them are in one file and are written alike,
 * since others would be left behind. None where something else has to be asked first.
 */
export function linkedPlaces(snapshot: Snapshot, file: string, position: Position): Range[] {
  const name = nameAt(snapshot, file, position, 'workspace');
  if (name === null || name.occurrences.length < 2) return [];
  const isAlike = name.occurrences.every((one) => one.source.file === file && one.written === name.here.written);
  return isAlike ? name.occurrences.map(({ source }) => source.range) : [];
}
