import { allSteps } from '../../../analysis/locations.ts';
import type { Procedure, Step } from '../../../model/procedure.ts';
import { limitUses } from '../../../model/steps.ts';
import type { Kind } from '../../../quantities/types.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';
import { lacksTorque } from './torque-missing.ts';

/** A spec that no step uses, or a part number's value that no step for that number uses. */
export const specUnused: Rule = {
  code: 'spec-unused',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'No step uses a spec, or the value of a part number.',
  procedure(procedure, report) {
    const steps = allSteps(procedure);
    // A procedure that has only been started has its specs before its steps.
    if (steps.length === 0) return;
    const wanting = new Set(steps.flatMap((step) => wants(step, procedure)));
    const readersOf = new Map(procedure.specs.map(({ name }) => [name, [] as Step[]]));
    for (const step of steps) for (const name of reads(step)) readersOf.get(name)?.push(step);
    for (const spec of procedure.specs) {
      const readers = readersOf.get(spec.name)!;
      if (readers.length === 0) {
        // A step that names none is reported by its own rule: this is the spec that it forgot.
        if (spec.notRequired || (spec.kind !== null && wanting.has(spec.kind))) continue;
        report({
          at: spec.source,
          allow: spec.allow,
          message: say`No step uses ${spec.name}.`,
          why: say`the figure is on the sheet, but nobody works to it.`,
          help: say`Name it in the step that it is for, or delete it.`,
        });
        continue;
      }
      for (const { number, value } of valuesOf(procedure, spec.name)) {
        if (value.notRequired || readers.some((step) => step.only === null || step.only.includes(number.name)))
          continue;
        report({
          at: value.source,
          allow: [...spec.allow, ...number.allow],
          message: say`No step for ${number.name} uses ${spec.name}.`,
          why: say`nobody works to the figure of this number.`,
          help: say`Delete it, or name ${number.name} at the steps that are only for other numbers.`,
        });
      }
    }
  },
};

function valuesOf(procedure: Procedure, spec: string) {
  return procedure.numbers.flatMap((number) =>
    number.values.filter((value) => value.spec === spec).map((value) => ({ number, value })),
  );
}

/** Names of specs that a step works to: its limit, and that of the reading that it names. */
function reads(step: Step): readonly string[] {
  const limit = limitUses(step).flatMap((use) => (use.form === 'spec' ? use.spec : []));
  switch (step.verb) {
    case 'read':
    case 'set':
      return [...limit, step.reading];
    case 'test':
      return limit.length === 0 ? [step.gate.test] : limit;
    case 'across':
      return [step.gate.test];
    case 'choose': {
      const { test = null, target = null } = step.choose ?? {};
      return [test, target?.form === 'spec' ? target.spec : null, step.rate].flatMap((name) => name ?? []);
    }
    default:
      return limit;
  }
}

/** The kinds of figures that a step should have and does not. */
function wants(step: Step, procedure: Procedure): readonly Kind[] {
  if (lacksTorque(step, procedure)) return ['torque'];
  switch (step.verb) {
    case 'test':
      return limitUses(step).length === 0 && step.test.reads !== null ? [step.test.reads] : [];
    case 'measure':
      return step.gate === null ? ['length', 'force'] : [];
    case 'choose':
      if (step.choose === null) return ['setting rate', 'pressure', 'length'];
      return step.rate === null ? ['setting rate'] : [];
    default:
      return [];
  }
}
