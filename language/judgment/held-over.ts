import { askedOf, type RequiredTorque, testsFor, torqueLimits, torqueSteps } from '../analysis/held.ts';
import type { Result, Unit } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import { readingAt, testOf } from '../model/reading-id.ts';
import { limitUses } from '../model/steps.ts';
import { formatLimit } from '../quantities/index.ts';

/** A result of a unit that two revisions do not ask for in the same way. */
export interface AskedOtherwise {
  /** A test, a spec or a part that is tightened. */
  readonly name: string;
  /** Its limits, as they were and as they are; null: what else is done differs. */
  readonly limits: { readonly before: string; readonly after: string } | null;
}

/** What was read, judged or tightened of a unit and that another revision has done otherwise: each name once. */
export function askedOtherwise(unit: Unit, before: Procedure, after: Procedure): AskedOtherwise[] {
  const names = unit.results.flatMap((one): { readonly name: string; readonly is: 'test' | 'torque' }[] => {
    if (one.form === 'torque') return [{ name: one.part, is: 'torque' }];
    return isLeft(one) ? [{ name: one.name, is: 'test' }] : [];
  });
  const found = new Map<string, AskedOtherwise>();
  for (const { name, is } of names) {
    const of = is === 'test' ? testAsked : torqueAsked;
    const [was, now] = [of(before, unit, name), of(after, unit, name)];
    const key = is === 'test' ? testOf(name) : name;
    if (was.limits !== now.limits) found.set(key, { name: key, limits: { before: was.limits, after: now.limits } });
    else if (was.step !== now.step && !found.has(key)) found.set(key, { name: key, limits: null });
  }
  return [...found.values()];
}

function isLeft(one: Result): one is Extract<Result, { form: 'reading' | 'verdict' }> {
  return (one.form === 'reading' || one.form === 'verdict') && !one.asFound;
}

interface HowAsked {
  readonly limits: string;
  readonly step: string;
}

function testAsked(procedure: Procedure, unit: Unit, name: string): HowAsked {
  const { test } = readingAt(name);
  const steps = testsFor(procedure, unit.number).filter(({ gate }) => gate.test === test);
  const measuring = procedure.stages
    .flatMap((stage) => stage.steps)
    .filter((step) => limitUses(step).some((use) => use.form === 'spec' && use.spec === test));
  return {
    limits: limitsText(askedOf(procedure, name, unit).limits),
    step: textOf(steps.length > 0 ? steps : measuring),
  };
}

function torqueAsked(procedure: Procedure, unit: Unit, part: string): HowAsked {
  return { limits: limitsText(torqueLimits(procedure, unit, part)), step: textOf(torqueSteps(procedure, unit, part)) };
}

function limitsText(limits: readonly RequiredTorque[]): string {
  return [...new Set(limits.map(({ limit }) => formatLimit(limit)))].join(', ') || 'none';
}

/** Where a step is, what number it has, and where a unit goes from it says nothing about how it is done. */
const elsewhere: ReadonlySet<string> = new Set([
  'source',
  'number',
  'call',
  'onFail',
  'allow',
  'takes',
  'limit',
  'text',
]);

function textOf(steps: readonly object[]): string {
  return JSON.stringify(steps, (key, value: unknown) => (elsewhere.has(key) ? undefined : value));
}
