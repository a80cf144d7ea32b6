import type { LimitUse, Procedure, Step } from '../model/procedure.ts';
import { isTestOf } from '../model/steps.ts';
import { asDifference, kindOfUnit, window } from '../quantities/index.ts';
import type { Difference, Kind } from '../quantities/types.ts';

/** What a test is held to: its own limit, or the spec of its name. */
export function limitOfReading({ stages, specs }: Procedure, name: string): LimitUse | null {
  const tests = stages.flatMap(({ steps }) => steps.filter((step) => isTestOf(step, name)));
  const within = tests.map(({ limit }) => limit).find((use) => use !== null);
  const spec = specs.find((one) => one.name === name);
  return within ?? (spec === undefined ? null : { form: 'spec', spec: spec.name, source: spec.source });
}

/** Whether a test takes the same reading as another: it has the same name, or is held to the same spec. */
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

/** The spread required across the set, of this reading or of another that is the same. Null if none is required. */
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
