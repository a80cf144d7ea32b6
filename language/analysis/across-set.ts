import type { Procedure, Step } from '../model/procedure.ts';
import { asDifference, kindOfUnit, window } from '../quantities/index.ts';
import type { Difference, Kind } from '../quantities/types.ts';
import { limitOfReading } from './shim-choices.ts';

/** Whether a test takes the same reading as another: it has its name, or is held to the same spec. */
export function sameReading(procedure: Procedure, test: string): (name: string) => boolean {
  const own = limitOfReading(procedure, test);
  return (name) => {
    const other = limitOfReading(procedure, name);
    return name === test || (own?.form === 'spec' && other?.form === 'spec' && own.spec === other.spec);
  };
}

/** The step that compares a reading across the set, and the spread that it lets through. */
export interface Across {
  readonly step: Step;
  readonly width: Difference;
}

/** The spread that is asked for across the set, of this reading or of another that is the same. Null: none is. */
export function acrossSet(procedure: Procedure, test: string, kind: Kind, number: string | null = null): Across | null {
  const isSame = sameReading(procedure, test);
  for (const step of procedure.stages.flatMap(({ steps }) => steps)) {
    if (step.verb !== 'across' || step.spread === null) continue;
    if (number !== null && step.only !== null && !step.only.includes(number)) continue;
    const width = window(step.spread).high;
    if (width === null || kindOfUnit(width.unit) !== kind) continue;
    if (isSame(step.gate.test)) return { step, width: asDifference(width) };
  }
  return null;
}
