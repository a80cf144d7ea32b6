import { lower } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';
import { declared, fixStep, type StepFix } from '../../step-fixes.ts';

/** `lock lock-nut`, but it locks no adjuster of the family. */
export const locksNothing: Rule<StepFix> = {
  code: 'locks-nothing',
  severity: 'warning',
  since: '0.2.0',
  title: 'A part that locks no adjuster is locked.',
  eachStep(step, setting, report) {
    const { parts, adjusters } = setting.family;
    if (step.verb !== 'lock') return;
    const open = adjusters.filter(({ lockedBy }) => lockedBy === null);
    for (const object of step.objects) {
      const part = parts.find((other) => other.name === object.name);
      if (part === undefined) continue;
      if (adjusters.some((adjuster) => adjuster.part === part.name || adjuster.lockedBy === part.name)) continue;
      report({
        at: step,
        source: object.source,
        rootCause: `locks-nothing:${part.base}`,
        allow: part.allow,
        related: [{ message: say`${part.base} is declared here.`, source: part.source }],
        message: say`The ${lower(part.title)} is locked here, but it locks no adjuster of the family.`,
        why: say`a setting that is left unlocked would go unnoticed.`,
        data: open.length === 1 ? declared(open[0]!.source, `locked by ${part.base}`) : undefined,
        help: say`Write “locked by ${part.base}” at the adjuster; for a joint that locks nothing, write “torque”.`,
      });
    }
  },
  fix: fixStep,
};
