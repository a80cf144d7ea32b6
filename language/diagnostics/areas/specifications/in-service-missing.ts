import { listed } from '../../../analysis/prose.ts';
import type { SpecValue } from '../../../model/procedure.ts';
import type { Limit } from '../../../quantities/types.ts';
import { english, type Said, say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A second limit that a spec may carry, and the words for it. */
interface Second {
  readonly of: (value: SpecValue) => Limit | null;
  readonly words: Said;
  readonly write: string;
  readonly when: Said;
}

const seconds: readonly Second[] = [
  {
    of: ({ inService }) => inService,
    words: say`limit in service`,
    write: 'in service at least …',
    when: say`as it comes in`,
  },
  {
    of: ({ whenNew }) => whenNew,
    words: say`limit with a new part`,
    write: 'new … and its limit',
    when: say`with a new part`,
  },
];

/** Some part numbers have a second limit (in service, with a new part), and others of the same spec have none. */
export const inServiceMissing: Rule = {
  code: 'in-service-missing',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A part number has no limit in service, or with a new part, although others have one.',
  procedure(procedure, report) {
    for (const spec of procedure.specs) {
      const own = procedure.numbers.flatMap((number) =>
        number.values
          .filter((value) => value.spec === spec.name && value.rebuilt !== null)
          .map((value) => ({ number, value })),
      );
      const takers = procedure.numbers.filter(({ name }) => !own.some(({ number }) => number.name === name));
      for (const { of, words, write, when } of seconds) {
        const without = own.filter(({ value }) => of(value) === null);
        if (of(spec) === null && without.length === own.length) continue;
        for (const { number, value } of without) {
          report({
            at: value.source,
            rootCause: `${english(words)}:${spec.name}:${number.name}`,
            allow: [...spec.allow, ...number.allow],
            message: say`${number.name} has its own ${spec.name}, but no ${words}.`,
            why: say`${when} it would be judged by ${of(spec) === null ? say`no limit at all` : say`the figure of the other numbers`}.`,
            help: say`Write “${write}” from the maker's data.`,
          });
        }
        if (spec.rebuilt !== null && of(spec) === null && takers.length > 0) {
          report({
            at: spec.source,
            rootCause: `${english(words)}:${spec.name}`,
            allow: spec.allow,
            message: say`Spec ${spec.name} has no ${words}, although other numbers have one, and ${listed(takers.map(({ name }) => name))} ${takers.length > 1 ? say`use` : say`uses`} the spec as it is.`,
            why: say`${when} ${takers.length > 1 ? say`they` : say`it`} would be judged by no limit at all.`,
            help: say`Write “${write}” from the maker's data.`,
          });
        }
      }
    }
  },
};
