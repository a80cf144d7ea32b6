import type { Procedure, Step } from '../model/procedure.ts';
import { kindOfLimit } from '../quantities/index.ts';
import type { Kind, Limit } from '../quantities/types.ts';

/**
 * Whether a step puts the unit under pressure: it reads or holds a pressure, works the tester's lever, or says how
 * its gauge is open. A length, a force or a free movement is read on a unit at rest.
 */
export function isHydraulic(step: Step, procedure: Procedure): boolean {
  if (step.verb === 'prime') return true;
  if (step.test === null || !['test', 'read', 'set'].includes(step.verb)) return false;
  const { test } = step;
  if (test.reads !== null) return test.reads === 'pressure';
  if (test.gauge !== null) return true;
  const limits: (Limit | null)[] = [test.hold?.amount ?? null, test.from, test.to, test.at, limitOf(step, procedure)];
  const kinds: (Kind | null)[] = limits.map((limit) => (limit === null ? null : kindOfLimit(limit)));
  return kinds.includes('pressure') || kinds.includes('stroke rate');
}

/** A test with air or vacuum: under pressure, but with no fluid to prime, and with the other ports shut. */
export function isPneumatic(step: Step): boolean {
  return step.airNamed && step.verb !== 'blow-dry';
}

/** The limit that a reading is judged by: the one written, or that of the spec, or of the spec of its name. */
function limitOf(step: Step, procedure: Procedure): Limit | null {
  const within = step.test?.within;
  if (within?.form === 'limit') return within.limit;
  const name = within?.form === 'spec' ? within.spec : step.reading;
  const spec = procedure.specs.find((other) => other.name === name);
  return (
    spec?.rebuilt ??
    procedure.numbers.flatMap((number) => number.values.filter((value) => value.spec === name))[0]?.rebuilt ??
    null
  );
}
