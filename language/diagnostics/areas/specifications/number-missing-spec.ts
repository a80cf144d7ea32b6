import { listed } from '../../../analysis/prose.ts';
import type { SpecValue } from '../../../model/procedure.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A spec has no value for one of the part numbers. `not required` with a source is a value. */
export const numberMissingSpec: Rule = {
  code: 'number-missing-spec',
  severity: 'error',
  since: '0.1.0',
  title: 'A spec has no value for a part number.',
  ofAbsence: true,
  procedure(procedure, report) {
    for (const spec of procedure.specs) {
      if (isGiven(spec)) continue;
      if (spec.notRequired) {
        if (spec.sourceText === null)
          report({
            at: spec.source,
            allow: spec.allow,
            message: say`Spec ${spec.name} is “not required”, but no source is given for that.`,
            why: say`nobody can look up whether that is so.`,
            help: say`Write “source "…"”.`,
          });
        continue;
      }
      if (procedure.numbers.length === 0) {
        report({
          at: spec.source,
          allow: spec.allow,
          message: say`Spec ${spec.name} has no value.`,
          why: say`the step that uses it has no figure to print.`,
          help: say`Write it from the maker's data, or give a value in each part number.`,
        });
        continue;
      }
      const missing = procedure.numbers.filter(
        (number) =>
          !number.values.some(
            (value) => value.spec === spec.name && (isGiven(value) || (value.notRequired && value.sourceText !== null)),
          ),
      );
      for (const number of missing) {
        report({
          at: number.source,
          rootCause: `spec:${spec.name}:${number.name}`,
          allow: [...spec.allow, ...number.allow],
          message: say`Part number ${number.name} has no ${spec.name}.`,
          why: say`a unit of this number could not be set${missing.length > 1 ? say` (nor one of ${listed(missing.filter((other) => other !== number).map((other) => other.name))})` : ''}.`,
          help: say`Write ${spec.name} in number ${number.name}, or “${spec.name} not required” with its source.`,
        });
      }
    }
  },
};

/** A unit that is only tested needs no limit but the one in service. */
function isGiven({ rebuilt, inService, rateFrom, isUnread }: SpecValue): boolean {
  // A rate that does not follow from its spring and needle is reported by itself, and so is an unreadable value.
  return rebuilt !== null || inService !== null || rateFrom !== null || isUnread;
}
