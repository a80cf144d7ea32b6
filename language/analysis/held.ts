import type { Family } from '../model/family.ts';
import type { Result, Unit } from '../model/job.ts';
import { type Plan, readingsOf } from '../model/plan.ts';
import type { LimitUse, Procedure, Step, StepOf } from '../model/procedure.ts';
import { readingAt, readingId } from '../model/reading-id.ts';
import type { DecisionRule, StandingTolerance } from '../model/shop.ts';
import { specFor } from '../model/spec-for.ts';
import { isTestOf } from '../model/steps.ts';
import type { Limit } from '../quantities/types.ts';
import { judgedLimit, withStanding } from './limits.ts';
import { timesPlace } from './place-limits.ts';
import { limitOfReading } from './readings.ts';

/** Parts that went in new, as far as the results say so. */
export function renewedIn(results: readonly Result[]): ReadonlySet<string> {
  return new Set(results.flatMap((result) => (result.form === 'renewed' ? [result.part] : [])));
}

/** What a reading of a unit is held to, and whether that is the limit for a new part that went into it. */
export interface LimitNow {
  readonly limit: Limit | null;
  readonly forNew: boolean;
  /** How a reading near it is judged. */
  readonly acceptance: DecisionRule;
}

/** The limit of a reading for a unit: that with a new part where such a one went in, else as rebuilt. */
export function limitNow(procedure: Procedure, reading: string, unit: Unit): LimitNow {
  const use = limitOfReading(procedure, reading);
  return use === null ? { limit: null, forNew: false, acceptance: 'simple' } : limitOfUse(procedure, use, unit);
}

/** The same for a limit that a step uses. */
function limitOfUse(procedure: Procedure, use: LimitUse, { number, results }: Unit): LimitNow {
  const newPart = use.form === 'spec' ? specFor(procedure, use.spec, number)?.whenNewPart : null;
  const forNew = newPart != null && renewedIn(results).has(newPart);
  const own = judgedLimit(procedure, use, number, forNew ? 'whenNew' : 'rebuilt');
  return { limit: own?.limit ?? null, forNew, acceptance: own?.acceptance ?? 'simple' };
}

/** A limit that a reading of a unit is held to. */
export interface RequiredTorque {
  /** With the shop's tolerance where the author wrote none. */
  readonly limit: Limit;
  /** The part that went in new, where the limit is the one for it. */
  readonly newPart: string | null;
  readonly rule: DecisionRule;
  readonly source: string | null;
  /** The shop's tolerance, if that is what it is based on. */
  readonly standing: StandingTolerance | null;
}

/** What a test, a measurement or a torque asks of a unit. */
export interface Asked {
  readonly name: string;
  /** The step that reads it; null: none does. */
  readonly step: StepOf<'test'> | null;
  readonly limits: readonly RequiredTorque[];
  /** Somebody has to say pass: a figure alone does not tell. */
  readonly verdict: boolean;
  /** The procedure asks for none of this part number. */
  readonly notRequired: boolean;
}

/** The readings that a unit must have passed: of each test that proves the family, at all points and places of its plan. */
export function proofsFor(procedure: Procedure, unit: Unit): string[] {
  const tests = testsFor(procedure, unit.number);
  return findProofs(procedure.family).flatMap((name) => {
    const plan = tests.findLast(({ gate }) => gate.test === name)?.plan ?? null;
    return readingsOf(procedure.family.places, name, plan).map(readingId);
  });
}

/** The tests that a unit must have passed, in the family's order. */
export function findProofs({ provenBy, provenAcrossSet }: Family): string[] {
  return [...new Set([...provenBy, ...provenAcrossSet].map(({ name }) => name))];
}

/** Tests of the procedure that a unit of this part number runs, in their order. */
export function testsFor({ stages }: Procedure, number: string | null): StepOf<'test'>[] {
  return stages
    .flatMap(({ steps }) => steps.filter((step) => step.verb === 'test'))
    .filter((step) => isFor(step, number));
}

/** A step for certain part numbers is not for one that is unknown. */
export function isFor({ only }: Step, number: string | null): boolean {
  return only === null || (number !== null && only.includes(number));
}

/** What is asked of a unit under a name: by its last test of that name, else by the spec. */
export function askedOf(procedure: Procedure, name: string, unit: Unit): Asked {
  const { test, point: at, place } = readingAt(name);
  const everywhere = procedure.stages.flatMap(({ steps }) => steps).filter((one) => isTestOf(one, name));
  const step = testsFor(procedure, unit.number).findLast(({ gate }) => gate.test === test) ?? null;
  const point = step?.plan?.points.find((one) => one.name === at) ?? null;
  const spec = procedure.specs.find((one) => one.name === test);
  const use: LimitUse | null =
    point?.limit ?? step?.limit ?? (spec === undefined ? null : { form: 'spec', spec: spec.name, source: spec.source });
  const value = use?.form === 'spec' ? specFor(procedure, use.spec, unit.number) : null;
  const limits = [
    ...(use === null || value?.notRequired === true
      ? []
      : heldOf(procedure, use, unit, step).map((held) => atPlace(procedure, step?.plan ?? null, place, held))),
    ...(step?.test.inTime == null ? [] : [heldTo(procedure, step.test.inTime, step.sourceText)]),
  ];
  const worded = step !== null && (step.accept !== null || step.reject !== null);
  return {
    name,
    step,
    limits,
    verdict: worded || limits.length !== 1,
    // All its tests are for other part numbers, or its only figure is not required.
    notRequired:
      (step === null && everywhere.length > 0) || (value?.notRequired === true && limits.length === 0 && !worded),
  };
}

/** `60 cam ° ±0.5 per place in order`: at the second place after the first it is 120 cam ° ±0.5. */
function atPlace({ family }: Procedure, plan: Plan | null, place: string | null, held: RequiredTorque): RequiredTorque {
  return plan === null || place === null
    ? held
    : { ...held, limit: timesPlace(family.places, plan, place, held.limit) };
}

/** Steps of the procedure that a unit of this part number runs, stages before repairs. */
export function stepsFor({ stages, repairs }: Procedure, number: string | null): Step[] {
  return [...stages, ...repairs].flatMap(({ steps }) => steps).filter((step) => isFor(step, number));
}

/** The steps that choose a part out of a drawer. */
export function choosing({ stages, repairs }: Procedure, part: string): StepOf<'choose'>[] {
  return [...stages, ...repairs]
    .flatMap(({ steps }) => steps.filter((step) => step.verb === 'choose'))
    .filter(({ objects }) => objects.some(({ name }) => name === part));
}

/** The steps that tighten a joint. */
export function torqueSteps(procedure: Procedure, unit: Unit, part: string): StepOf<'torque' | 'lock'>[] {
  return stepsFor(procedure, unit.number).filter((step) => tightens(step, part));
}

export function tightens(step: Step, part: string): step is StepOf<'torque' | 'lock'> {
  return (step.verb === 'torque' || step.verb === 'lock') && step.objects.some(({ name }) => name === part);
}

/** What a torque is held to. Through an adapter the wrench does not show the torque: then it is not judged. */
export function torqueLimits(procedure: Procedure, unit: Unit, part: string): RequiredTorque[] {
  const steps = torqueSteps(procedure, unit, part);
  const through = steps.some(({ tools }) => tools.some((tool) => tool.form === 'asset' && tool.adapter !== null));
  return through ? [] : steps.flatMap((step) => (step.limit === null ? [] : heldOf(procedure, step.limit, unit, step)));
}

/** The limit of a unit at a use: of its part number, and for new parts where such went in. None: nobody gives one. */
function heldOf(procedure: Procedure, use: LimitUse, unit: Unit, step: Step | null): RequiredTorque[] {
  if (use.form === 'limit') return [heldTo(procedure, use.limit, step?.sourceText ?? null)];
  const value = specFor(procedure, use.spec, unit.number);
  const { limit, forNew } = limitOfUse(procedure, use, unit);
  if (value === null || limit === null) return [];
  const written = forNew ? value.whenNew : value.rebuilt;
  return [
    {
      limit,
      newPart: forNew ? (value.whenNewPart ?? null) : null,
      rule: value.acceptance ?? procedure.shop.acceptance.rule,
      source: value.sourceText,
      standing: written === null ? null : withStanding(procedure.shop, written).standing,
    },
  ];
}

/** A limit that is written in the step. */
function heldTo(procedure: Procedure, written: Limit, source: string | null): RequiredTorque {
  const { limit, standing } = withStanding(procedure.shop, written);
  return { limit, newPart: null, rule: procedure.shop.acceptance.rule, source, standing };
}

/** The limit in service of a reading as found; null: nobody gives one. */
export function heldInService(procedure: Procedure, name: string, unit: Unit): RequiredTorque | null {
  const { step } = askedOf(procedure, name, unit);
  const at = readingAt(name);
  const test = step?.plan?.points.find((point) => point.name === at.point)?.limit ?? step?.limit;
  const value =
    (at.point === null ? specFor(procedure, at.test, unit.number) : null) ??
    (test?.form === 'spec' ? specFor(procedure, test.spec, unit.number) : null);
  return value?.inService == null ? null : heldTo(procedure, value.inService, value.sourceText);
}
