import type { LimitUse, Procedure, Spec } from '../../../model/procedure.ts';
import { isTestOf, own } from '../../../model/steps.ts';
import { compare, formatLimit, kindOfUnit, window } from '../../../quantities/index.ts';
import type { Limit } from '../../../quantities/types.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A shim is chosen to bring a reading to a value that the test of that reading would not let through. */
export const targetOutsideLimit: Rule = {
  code: 'target-outside-limit',
  severity: 'error',
  since: '0.2.0',
  title: 'The target that a part is chosen for is outside the limit of its test.',
  procedure(procedure, report) {
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      for (const step of block.steps) {
        const choose = own(step, 'choose');
        const limit = choose == null ? null : limitOfTest(procedure, choose.test);
        if (choose == null || limit === null) continue;
        for (const number of [null, ...procedure.numbers.map(({ name }) => name)]) {
          const target = limitFor(procedure, choose.target, number);
          const judged = limitFor(procedure, limit, number);
          if (target === null || judged === null || !isOutside(target, judged)) continue;
          const of = number === null || procedure.numbers.length === 0 ? '' : say` for ${number}`;
          report({
            at: step,
            rootCause: `target:${step.number}`,
            message: say`This aims at ${formatLimit(target)}${of}, but ${choose.test} must be ${formatLimit(judged)}.`,
            why: say`the unit would come back to this repair each time.`,
            help: say`Give ${number === null ? say`the target and the limit` : number} figures that agree.`,
          });
          break;
        }
      }
    }
  },
};

/** What the test of a name reads within. */
function limitOfTest(procedure: Procedure, name: string): LimitUse | null {
  const tests = [...procedure.stages, ...procedure.repairs].flatMap((block) => block.steps);
  const [within] = tests.flatMap((step) => (isTestOf(step, name) ? (step.limit ?? []) : []));
  return within ?? null;
}

/** The limit of a use for a part number; with null for the number, the value that the procedure gives. */
function limitFor(procedure: Procedure, use: LimitUse | null, number: string | null): Limit | null {
  if (use?.form === 'limit') return use.limit;
  const name = use?.spec;
  const spec: Spec | undefined = procedure.specs.find((other) => other.name === name);
  if (spec === undefined || (number === null && procedure.numbers.length > 0)) return null;
  const own = procedure.numbers
    .find((other) => other.name === number)
    ?.values.find((value) => value.spec === name)?.rebuilt;
  return own ?? spec.rebuilt;
}

/** No value that is aimed at passes. */
function isOutside(target: Limit, limit: Limit): boolean {
  const [aim, passes] = [window(target), window(limit)];
  const [low, high] = [aim.low ?? aim.nominal, aim.high ?? aim.nominal];
  const kinds = [low, high, passes.low, passes.high].flatMap((end) => (end === null ? [] : [kindOfUnit(end.unit)]));
  if (new Set(kinds).size > 1) return false;
  return (
    (high !== null && passes.low !== null && compare(high, passes.low) === -1) ||
    (low !== null && passes.high !== null && compare(low, passes.high) === 1)
  );
}
