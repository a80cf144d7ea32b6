import type { Family } from '../../../model/family.ts';
import type { Procedure, StepObject } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import { isTestOf } from '../../../model/steps.ts';
import { english, type Filling, say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingAfterStep, missingBeforeStep, type StepFix } from '../../step-fixes.ts';

/** A test that the family says proves a unit is not in the procedure. */
export const gateMissing: Rule<StepFix> = {
  code: 'gate-missing',
  severity: 'error',
  since: '0.1.0',
  unsafe: true,
  title: 'A test that proves the family is missing from the procedure.',
  flow({ graph }, report) {
    const { procedure, numbers } = graph;
    /** The tests, checks and measurements for these part numbers. */
    const proving = procedure.stages
      .flatMap((stage) => stage.steps)
      .filter(
        ({ verb, only }) =>
          ['test', 'across', 'check', 'measure'].includes(verb) &&
          (only === null || numbers === null || only.some((number) => numbers.includes(number))),
      );
    const stageSteps = procedure.stages.flatMap(({ steps }) => steps);
    const tests = stageSteps.flatMap((step) => (step.verb === 'test' ? [step] : []));
    const rankOf = (name: string) => procedure.family.provenBy.findIndex((proof) => proof.name === name);
    /** Where it belongs in the order that proves the family: before the tests that build on it. */
    const inPlace = (name: string, text: string) => {
      const rank = rankOf(name);
      const next = rank < 0 ? undefined : tests.find(({ gate }) => rankOf(gate.test) > rank);
      const last = tests.at(-1);
      if (next !== undefined) return missingBeforeStep(next, text);
      const ready = last ?? stageSteps.findLast(({ verb }) => verb === 'prime' || verb === 'connect');
      return ready === undefined ? undefined : missingAfterStep(ready, text);
    };
    const tell = (name: string, found: boolean, words: Filling, write: string, source: Source) => {
      if (found) return;
      report({
        at: procedure.source,
        rootCause: `gate-missing:${name}:${english(words)}`,
        related: [{ message: say`The family says so here.`, source }],
        message: say`The family is proven by ${name}${words}, but no step of this procedure tests it.`,
        why: say`a unit could leave without this proof.`,
        help: say`Write “${write}” in the stage where the unit is tested.`,
        data: words === '' ? inPlace(name, testOf(name, procedure)) : inPlace('', write),
      });
    };
    return {
      looksAround: true,
      end() {
        for (const proof of procedure.family.provenBy) {
          const found = proving.some(
            (step) =>
              isTestOf(step, proof.name) ||
              ((step.verb === 'check' || step.verb === 'measure') &&
                step.objects.some((object) => isOf(procedure.family, object, proof.name))),
          );
          tell(proof.name, found, '', `test ${proof.name}`, proof.source);
        }
        for (const proof of procedure.family.provenAcrossSet) {
          tell(
            proof.name,
            proving.some((step) => step.verb === 'across' && step.gate.test === proof.name),
            say` across the set`,
            `across the set ${proof.name} spread at most ${blank}`,
            proof.source,
          );
        }
      },
    };
  },
  fix: fixStep,
};

/** The test of a name: read where there is a figure for it, else watched. */
function testOf(name: string, { specs }: Procedure): string {
  const kind = specs.find((spec) => spec.name === name)?.kind ?? null;
  return `test ${name} ${kind === null ? `accept ${blank}` : `read ${kind} within ${name}`}`;
}

/** Whether a name means a part or face: its own name, the one that all copies share, or that of a face alone. */
function isOf({ parts, faces }: Family, object: StepObject, name: string): boolean {
  const part = parts.find((one) => object.kind === 'part' && one.name === object.name);
  const face = faces.find((one) => object.kind === 'face' && one.id === object.name);
  return object.name === name || part?.base === name || face?.name === name || face?.part === name;
}
