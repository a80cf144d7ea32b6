/** What may be asked of a step whatever its verb. */
import type { Limit } from '../quantities/types.ts';
import type { Condition } from './plan.ts';
import type { Action, FailEntry, Gate, LimitUse, PartGate, Step, StepObject, StepOf, TestGate } from './procedure.ts';
import { testOf } from './reading-id.ts';

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

/** Whether a step is the test of a name, or of a reading at one of its points and places. */
export function isTestOf(step: Step, name: string): step is StepOf<'test'> {
  return step.verb === 'test' && step.gate.test === testOf(name);
}

/** The test, spec or master that a step reads; null: none. */
export function readingOf(step: Action): string | null {
  if (step.verb === 'test') return step.gate.test;
  return step.verb === 'read' || step.verb === 'set' || step.verb === 'record' ? step.reading : null;
}

/** What a step acts on, with the parts that go along. */
export function namedIn(step: Action): readonly StepObject[] {
  return 'withObjects' in step ? [...step.objects, ...step.withObjects] : step.objects;
}

/** Parts that a step acts on, with what is in the assemblies among them. */
export function partsNamedIn(step: Action): string[] {
  return namedIn(step).flatMap(({ kind, name, assembly }) =>
    kind === 'part' ? [name, ...(assembly?.others ?? [])] : [],
  );
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

/** All that a step holds its figures to: its own limit, and those of its points. */
export function limitUses(step: Action): LimitUse[] {
  const points = own(step, 'plan')?.points ?? [];
  return [own(step, 'limit'), ...points.map(({ limit }) => limit)].flatMap((use) => use ?? []);
}

/** The figures that a step is done at, besides its speed, and those of its points. */
export function figuresAt(step: Action): Condition[] {
  const points = own(step, 'plan')?.points ?? [];
  return [...(own(step, 'figures') ?? []), ...points.flatMap(({ conditions }) => conditions)];
}

/**
 * Limits that are written in a step, and come from somewhere. A lever speed, a soaking time, a target inside a limit and the
 * air pressure describe how to work, and need no source.
 */
export function figuresWritten(step: Action): Limit[] {
  const held = limitUses(step).flatMap((use) => (use.form === 'limit' ? use.limit : []));
  const test = own(step, 'test');
  const timed = [test?.hold?.amount, test?.from, test?.to, test?.inTime];
  return [...held, own(step, 'stretch'), ...timed, own(step, 'spread'), ...spreadsAt(step)].flatMap(
    (limit) => limit ?? [],
  );
}

/** How far apart the places of a unit may lie, at any point. */
export function spreadsAt(step: Action): Limit[] {
  const plan = own(step, 'plan');
  return [plan?.spread, ...(plan?.points ?? []).map(({ spread }) => spread)].flatMap((limit) => limit ?? []);
}
