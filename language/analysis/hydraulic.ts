import type { Procedure, Step, StepOf } from '../model/procedure.ts';
import { kindOfLimit } from '../quantities/index.ts';
import type { Limit } from '../quantities/types.ts';

/**
 * Whether a step puts the unit under pressure: it reads or holds a pressure, works the tester's lever, or says how
 * its gauge is open. A length, a force or a free movement is read on a unit at rest.
 */
export function isHydraulic(step: Step, procedure: Procedure): boolean {
  if (step.verb === 'prime') return true;
  if (step.verb !== 'test' && step.verb !== 'read' && step.verb !== 'set') return false;
  const test = step.verb === 'test' ? step.test : null;
  if (test !== null && test.reads !== null) return test.reads === 'pressure';
  if (step.gauge !== null) return true;
  const limits = [test?.hold?.amount, test?.from, test?.to, step.at, limitOf(step, procedure)];
  const kinds = limits.map((limit) => (limit == null ? null : kindOfLimit(limit)));
  return kinds.includes('pressure') || kinds.includes('stroke rate');
}

/** A test with air or vacuum: under pressure, but with no fluid to prime, and with the other ports shut. */
export function isPneumatic(step: Step): boolean {
  return (step.gas !== null || step.air !== null) && step.verb !== 'blow-dry';
}

/** The limit that a reading is judged by: the one written, or that of the spec, or of the spec of its name. */
function limitOf(step: StepOf<'test' | 'read' | 'set'>, procedure: Procedure): Limit | null {
  const use = step.verb === 'read' ? null : step.limit;
  if (use?.form === 'limit') return use.limit;
  const name = use?.form === 'spec' ? use.spec : step.verb === 'test' ? null : step.reading;
  const spec = procedure.specs.find((other) => other.name === name);
  return (
    spec?.rebuilt ??
    procedure.numbers.flatMap((number) => number.values.filter((value) => value.spec === name))[0]?.rebuilt ??
    null
  );
}
