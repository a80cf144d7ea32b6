import { lower } from '../../../analysis/prose.ts';
import type { Verb } from '../../../model/verbs.ts';
import { type Said, say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, type StepFix } from '../../step-fixes.ts';

const words: Partial<Record<Verb, Said>> = {
  slacken: say`slackened`,
  'run-down': say`run down`,
  torque: say`torqued`,
  lock: say`locked`,
};

/** A part is slackened, run down or torqued, but the family declares no joint for it. */
export const notAJoint: Rule<StepFix> = {
  code: 'not-a-joint',
  severity: 'warning',
  since: '0.2.0',
  title: 'A part is slackened, run down or torqued, but the family declares no joint for it.',
  eachStep(step, setting, report) {
    const { parts, joints, adjusters } = setting.family;
    const done = words[step.verb];
    if (done === undefined) return;
    for (const object of step.objects) {
      const part = parts.find((other) => other.name === object.name);
      if (part === undefined || joints.some((joint) => joint.part === part.name)) continue;
      if (adjusters.some((adjuster) => adjuster.part === part.name)) continue;
      // A lock that locks nothing is reported by its own rule.
      if (step.verb === 'lock' && !adjusters.some((adjuster) => adjuster.lockedBy === part.name)) continue;
      report({
        at: step,
        source: object.source,
        rootCause: `not-a-joint:${part.base}`,
        allow: part.allow,
        related: [{ message: say`${part.base} is declared here.`, source: part.source }],
        message: say`The ${lower(part.title)} is ${done} here, but the family declares no joint for it.`,
        why: say`leaving it loose, or taking it off tight, would go unnoticed.`,
        help: say`In the family, write “joint ${part.base} to” and the part that it is screwed to.`,
        data: { source: part.source, text: `joint ${part.base} to ${blank}`, where: 'after its declaration' },
      });
    }
  },
  fix: fixStep,
};
