import { partsWords } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** Clamped, and neither the step nor the family says in what. */
export const fixtureMissing: Rule<StepFix> = {
  code: 'fixture-missing',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A part is clamped, but nothing says in what.',
  eachStep(step, setting, report) {
    const { parts } = setting.family;
    if (step.verb !== 'clamp' || step.holder !== null) return;
    if (step.tools.length > 0 || step.objects.length === 0) return;
    const names = step.objects.map((object) => object.name);
    if (parts.some((part) => names.includes(part.name) && part.heldIn !== null)) return;
    const first = parts.find((part) => part.name === names[0]);
    if (first === undefined) return;
    report({
      at: step,
      // Declared once in the family, it holds for every step.
      rootCause: `fixture:${first.base}`,
      allow: first.allow,
      message: say`Nothing says in what the ${partsWords(setting, names)} is clamped.`,
      why: say`bare vise jaws pull a bored body out of round and bruise its faces.`,
      help: say`Write “in "…"” here, or “held in "…"” at part ${first.base} in the family.`,
      data: missingClause(step, `in ${blank}`),
    });
  },
  fix: fixStep,
};
