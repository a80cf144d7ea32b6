import type { Kind, UnitName } from './types.ts';
import { kindOfUnit } from './unit-table.ts';

/**
 * The kinds that one word of the language covers: a bench hand says "volume" of a delivery per stroke too,
 * and "rate" of a shim and of a screw. The first is the one that stands for the word.
 */
const kindsByWord: Readonly<Record<string, readonly [Kind, ...Kind[]]>> = {
  pressure: ['pressure', 'vacuum'],
  vibration: ['vibration', 'acceleration'],
  rate: ['setting rate', 'screw rate'],
  angle: ['angle', 'cam angle'],
  volume: ['volume', 'volume per strokes'],
  speed: ['speed', 'stroke rate'],
  count: ['drops', 'strokes', 'turns'],
};

/** The word that introduces a spec or a reading (`pressure`, `rate`, `count`…). */
export type KindWord =
  | 'pressure'
  | 'torque'
  | 'length'
  | 'force'
  | 'stiffness'
  | 'time'
  | 'temperature'
  | 'volume'
  | 'flow'
  | 'speed'
  | 'frequency'
  | 'vibration'
  | 'angle'
  | 'rate'
  | 'count'
  | 'viscosity'
  | 'unbalance'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'ratio';

/** All kinds that a word admits, the one that stands for it first. */
export function kindsOf(word: KindWord): readonly Kind[] {
  return kindsByWord[word] ?? [word as Kind];
}

/** The kind that stands for a word; judge a unit against it with `kindAdmits`, since a word may cover several. */
export function kindOf(word: KindWord): Kind {
  return kindsOf(word)[0]!;
}

/** Whether a unit is allowed where the word of this kind was written (a `rate` may be per mm or per turn). */
export function kindAdmits(kind: Kind, unit: UnitName): boolean {
  const measured = kindOfUnit(unit);
  if (measured === kind) return true;
  const word = Object.values(kindsByWord).find((kinds) => kinds[0] === kind);
  return word?.includes(measured) ?? false;
}
