import { listed } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { SpecValue } from '../../../model/procedure.ts';
import { figuresWritten } from '../../../model/steps.ts';
import { say, term } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { declared, fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** A figure that does not say where it comes from. */
export const sourceMissing: Rule<StepFix> = {
  code: 'source-missing',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A figure has no source.',
  shop(shop, report) {
    const bare = shop.unlessStated.filter((standing) => standing.sourceText === null);
    const [first] = bare;
    if (first === undefined) return;
    report({
      at: first.source,
      rootCause: `source:${shop.name}`,
      message: say`Nothing says where the tolerances for ${listed(bare.map((standing) => term(standing.kind)))} after “unless stated” come from.`,
      why: say`they print on every sheet whose figures have none.`,
      help: say`Write “source "…"” after them.`,
      data: bare.length === 1 ? declared(first.source, `source ${blank}`) : undefined,
    });
  },
  procedure(procedure, report) {
    for (const spec of procedure.specs) {
      if (spec.sourceText === null && hasValue(spec)) {
        report({
          at: spec.source,
          allow: spec.allow,
          message: say`Nothing says where ${spec.name} comes from.`,
          why: say`nobody can look it up when in doubt, and an outdated figure stays forever.`,
          help: say`Write “source "…"” with the sheet and the page.`,
          data: declared(spec.source, `source ${blank}`),
        });
        continue;
      }
      // A spec that leaves its value to the part numbers may give the source for all of them.
      if (spec.sourceText !== null && !hasValue(spec)) continue;
      for (const number of procedure.numbers) {
        const value = number.values.find((other) => other.spec === spec.name);
        if (value === undefined || value.sourceText !== null || !hasValue(value)) continue;
        report({
          at: value.source,
          allow: [...spec.allow, ...number.allow],
          message: say`Nothing says where ${spec.name} of ${number.name} comes from.`,
          why: say`the sheet would print the source of another number beside it.`,
          help: say`Write “source "…"” with the sheet and the page.`,
          data: declared(value.source, `source ${blank}`),
        });
      }
    }
  },
  eachStep(step, _, report) {
    if (step.sourceText !== null || figuresWritten(step).length === 0) return;
    report({
      at: step,
      rootCause: `source:${writtenAt(step)}`,
      message: say`The figure in this step has no source.`,
      why: say`nobody can look it up when in doubt.`,
      help: say`Write “source "…"”, or make it a spec.`,
      data: missingClause(step, `source ${blank}`),
    });
  },
  fix: fixStep,
};

function hasValue({ rebuilt, inService, whenNew }: SpecValue): boolean {
  return rebuilt !== null || inService !== null || whenNew !== null;
}
