import { allSteps } from '../../../analysis/locations.ts';
import { lower } from '../../../analysis/prose.ts';
import type { Part } from '../../../model/family.ts';
import { own } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';
import { declared, fixStep, type StepFix } from '../../step-fixes.ts';

/**
 * A part is felt to slide in the one that it lies in, the two are only ever renewed together, and the family does not
 * call them a pair. A part that only turns in another, as rollers do, may be renewed with it without being a pair.
 */
export const pairUnsaid: Rule<StepFix> = {
  code: 'pair-unsaid',
  severity: 'hint',
  since: '0.2.0',
  title: 'A part that slides in another is always renewed with it, but they are not declared as matched.',
  procedure(procedure, report) {
    const { parts } = procedure.family;
    const renewals = allSteps(procedure).filter((step) => step.verb === 'renew');
    const renewedAt = (part: Part) =>
      renewals.filter((step) => step.objects.some((object) => object.name === part.name));
    const isPair = (a: Part, b: Part) => a.matchedTo.includes(b.name) || b.matchedTo.includes(a.name);
    const felt = allSteps(procedure).filter((step) => own(step, 'moves') === 'slides');
    for (const inner of parts) {
      if (!felt.some((step) => step.objects.some((object) => object.name === inner.name))) continue;
      for (const outer of parts.filter((other) => inner.in.includes(other.name))) {
        const [first, ...rest] = renewedAt(inner);
        const together = renewedAt(outer);
        // A part that is renewed each time anyway belongs to no pair.
        if (first === undefined || inner.renewed || outer.renewed || isPair(inner, outer)) continue;
        if (together.length !== rest.length + 1 || ![first, ...rest].every((step) => together.includes(step))) continue;
        report({
          at: first,
          rootCause: `pair:${inner.base}:${outer.base}`,
          allow: [...inner.allow, ...outer.allow],
          related: [{ message: say`${inner.base} is declared here.`, source: inner.source }],
          message: say`The ${lower(inner.title)} and the ${lower(outer.title)} are always renewed together here, but the family does not say that they are a pair.`,
          why: say`one of them could go into another unit unnoticed.`,
          data: declared(inner.source, `matched to ${outer.base}`),
          help: say`If they are lapped together, write “matched to ${outer.base}” at part ${inner.base}.`,
        });
      }
    }
  },
  fix: fixStep,
};
