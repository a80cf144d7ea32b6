import type { Rule } from '../../rule.ts';

/** A test that the family says proves a unit is not in the procedure. */
export const gateMissing: Rule = {
  code: 'gate-missing',
  severity: 'error',
  since: '0.1.0',
  unsafe: true,
  title: 'A test that proves the family is missing from the procedure.',
  replay({ program }, report) {
    const { procedure, numbers } = program;
    const mine = procedure.stages
      .flatMap((stage) => stage.steps)
      .filter((step) => step.only === null || numbers === null || step.only.some((number) => numbers.includes(number)));
    const tell = (
      name: string,
      found: boolean,
      words: string,
      write: string,
      source: import('../../../model/source.ts').Source,
    ) => {
      if (found) return;
      report({
        at: procedure.source,
        cause: `gate-missing:${name}:${words}`,
        related: [{ message: 'The family says so here.', source }],
        message: `The family is proven by ${name}${words}, but no step of this procedure tests it.`,
        why: 'a unit could leave without this proof.',
        help: `Write “${write}” in the stage where the unit is tested.`,
      });
    };
    return {
      end() {
        for (const proof of procedure.family.provenBy) {
          const found = mine.some(
            (step) =>
              (step.verb === 'test' && step.gate!.name === proof.name) ||
              (step.verb === 'check' && step.gate!.name.includes(proof.name)) ||
              (step.verb === 'measure' && step.objects.some((object) => object.name === proof.name)),
          );
          tell(proof.name, found, '', `test ${proof.name}`, proof.source);
        }
        for (const proof of procedure.family.provenAcrossSet) {
          tell(
            proof.name,
            mine.some((step) => step.gate?.name === `across ${proof.name}`),
            ' across the set',
            `across the set ${proof.name} spread at most …`,
            proof.source,
          );
        }
      },
    };
  },
};
