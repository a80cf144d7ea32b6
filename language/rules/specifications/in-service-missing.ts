import type { Rule } from '../rule.ts';
import { listed } from '../words.ts';

/** Some part numbers are judged by a limit in service as they come in, and others of the same spec by none of their own. */
export const inServiceMissing: Rule = {
  code: 'in-service-missing',
  severity: 'warning',
  ofAbsence: true,
  title: 'A part number gives a value of its own and no limit in service, where others have one.',
  procedure(procedure, report) {
    for (const spec of procedure.specs) {
      const own = procedure.numbers.flatMap((number) =>
        number.values
          .filter((value) => value.spec === spec.name && value.rebuilt !== null)
          .map((value) => ({ number, value })),
      );
      const without = own.filter(({ value }) => value.inService === null);
      const someHave = spec.inService !== null || without.length < own.length;
      if (!someHave) continue;
      for (const { number, value } of without) {
        report({
          at: value.source,
          allow: [...spec.allow, ...number.allow],
          message: `${number.name} has ${spec.name} of its own and no limit in service: as it comes in it would be judged by ${spec.inService === null ? 'none' : 'the figure of the other numbers'}. Write “in service at least …” from the maker's data.`,
        });
      }
      const takers = procedure.numbers.filter(({ name }) => !own.some(({ number }) => number.name === name));
      if (spec.rebuilt !== null && spec.inService === null && takers.length > 0) {
        report({
          at: spec.source,
          allow: spec.allow,
          message: `Spec ${spec.name} has no limit in service, and ${listed(takers.map(({ name }) => name))} takes it as it is, while other numbers have one. Write “in service at least …” from the maker's data.`,
        });
      }
    }
  },
};
