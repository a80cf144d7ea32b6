import { allSteps } from '../../../analysis/locations.ts';
import type { Procedure, Step } from '../../../model/procedure.ts';
import { own } from '../../../model/steps.ts';
import type { Kind } from '../../../quantities/types.ts';
import type { Rule } from '../../rule.ts';
import { lacksTorque } from './torque-missing.ts';

/** A spec that no step reads, or a value for a part number of which no step reads it. */
export const specUnused: Rule = {
  code: 'spec-unused',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A spec, or a value of a part number, is read by no step.',
  procedure(procedure, report) {
    const steps = allSteps(procedure);
    // A procedure that is only begun has its specs before its steps.
    if (steps.length === 0) return;
    const wanting = new Set(steps.flatMap((step) => wants(step, procedure)));
    for (const spec of procedure.specs) {
      const readers = steps.filter((step) => reads(step).includes(spec.name));
      if (readers.length === 0) {
        // A step that names none is told by its own rule: this is the one that it forgot.
        if (spec.notRequired || (spec.kind !== null && wanting.has(spec.kind))) continue;
        report({
          at: spec.source,
          allow: spec.allow,
          message: `No step reads ${spec.name}.`,
          why: 'the figure stands on the sheet and nobody works by it.',
          help: 'Name it in the step that it is for, or take it out.',
        });
        continue;
      }
      for (const { number, value } of valuesOf(procedure, spec.name)) {
        if (value.notRequired || readers.some((step) => step.only === null || step.only.includes(number.name)))
          continue;
        report({
          at: value.source,
          allow: [...spec.allow, ...number.allow],
          message: `No step for ${number.name} reads ${spec.name}.`,
          why: 'the figure of this number is never worked by.',
          help: `Take it out, or name ${number.name} at the steps that are only for others.`,
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

/** Names of specs that a step works by: its limit, and that of the reading which it names. */
function reads(step: Step): string[] {
  const use = own(step, 'limit');
  const limit = use?.form === 'spec' ? [use.spec] : [];
  switch (step.verb) {
    case 'read':
    case 'set':
      return [...limit, step.reading];
    case 'test':
      return step.limit === null ? [step.gate.test] : limit;
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

/** The kinds of figures that a step should have and has not. */
function wants(step: Step, procedure: Procedure): readonly Kind[] {
  if (lacksTorque(step, procedure)) return ['torque'];
  switch (step.verb) {
    case 'test':
      return step.limit === null && step.test.reads !== null ? [step.test.reads] : [];
    case 'measure':
      return step.gate === null ? ['length', 'force'] : [];
    case 'choose':
      if (step.choose === null) return ['setting rate', 'pressure', 'length'];
      return step.rate === null ? ['setting rate'] : [];
    default:
      return [];
  }
}
