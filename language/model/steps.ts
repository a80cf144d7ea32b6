/** What may be asked of a step whatever its verb. */
import type { Action, FailEntry, Gate, PartGate, Step, StepObject, StepOf, TestGate } from './procedure.ts';

type Fields<S> = S extends unknown ? keyof S : never;
type Field<S, K> = S extends unknown ? (K extends keyof S ? S[K] : never) : never;

/** A field that only some verbs have; undefined of a step of another. */
export function own<K extends Fields<Action>>(step: Action, field: K): Field<Action, K> | undefined {
  return field in step ? (step as unknown as Record<K, Field<Action, K>>)[field] : undefined;
}

/** A step that a unit passes or fails at. */
export type GateStep = Extract<Step, { readonly gate: Gate }>;

export function isGate(step: Step): step is GateStep {
  return 'gate' in step && step.gate !== null;
}

/** A test, alone or across the set: those of one stage are judged together. */
export function isTest(step: Step): step is StepOf<'test' | 'across'> {
  return step.verb === 'test' || step.verb === 'across';
}

/** Whether a step is the test of a name. */
export function isTestOf(step: Step, name: string): step is StepOf<'test'> {
  return step.verb === 'test' && step.gate.test === name;
}

/** The test, spec or master that a step reads; null: none. */
export function readingOf(step: Action): string | null {
  if (step.verb === 'test') return step.gate.test;
  return step.verb === 'read' || step.verb === 'set' ? step.reading : null;
}

/** What a step acts on, with the parts that go along. */
export function namedIn(step: Action): readonly StepObject[] {
  return 'withObjects' in step ? [...step.objects, ...step.withObjects] : step.objects;
}

/** The identity of a gate that judges a reading: all tests of one name are one gate, and so are its settings. */
export function testGateId(kind: TestGate['kind'], test: string): string {
  return kind === 'test' ? test : `${kind} ${test}`;
}

/** The identity of a gate that judges parts, but for the number of its step. */
export function partGateId(kind: PartGate['kind'], objects: readonly StepObject[]): string {
  return `${kind} ${objects.map(({ name }) => name).join(', ')}`;
}

/** `all` is its object. */
export function isOfAll(step: Action): boolean {
  return 'all' in step && step.all;
}

/** Where a unit is sent that does not pass a step. */
export function failEntries(step: Step): readonly FailEntry[] {
  return isGate(step) ? step.gate.onFail : [];
}

/** Parts go in for good: not for a trial. */
export function closesUp(step: Step): step is StepOf<'fit' | 'run-down'> {
  return step.verb === 'run-down' || (step.verb === 'fit' && !step.forTrial);
}

/** A reading of the unit as it came in. */
export function isAsFound(step: Step): boolean {
  return step.verb === 'read' && step.asFound;
}
