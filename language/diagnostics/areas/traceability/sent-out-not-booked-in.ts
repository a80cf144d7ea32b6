import { listed, objectWords } from '../../../analysis/prose.ts';
import { stageSteps } from '../../../analysis/stages.ts';
import { partsNamedIn } from '../../../model/steps.ts';
import type { Verb } from '../../../model/verbs.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingAfter, type StepFix } from '../../step-fixes.ts';

/** A unit is sent to somebody else, and tested or signed off with no line saying that it came back; or it comes back and never left. */
export const sentOutNotBookedIn: Rule<StepFix> = {
  code: 'sent-out-not-booked-in',
  severity: 'warning',
  since: '0.2.0',
  title:
    'A unit is sent out, and is tested or signed off without being booked in, or it is booked in and was never sent out.',
  flow({ graph }, report) {
    const steps = stageSteps(graph);
    for (const [index, { step }] of steps.entries()) {
      if (step.verb !== 'send-out') continue;
      const parts = partsNamedIn(step);
      const next = steps
        .slice(index)
        .find(
          ({ step: later }) =>
            ends.has(later.verb) && !(later.verb === 'book-in' && isOfOthers(partsNamedIn(later), parts)),
        );
      if (next === undefined || next.step.verb === 'book-in') continue;
      const what = listed(step.objects.map((object) => objectWords(graph.procedure, object)));
      report({
        at: step,
        message:
          parts.length === 0
            ? say`The unit is sent out here, and nothing books it in before it is tested or signed off.`
            : say`The ${what} is sent out here, and nothing books it in before the unit is tested or signed off.`,
        why: say`nobody inspects what came back, and the sheet does not say whose work it was.`,
        help: say`Write “book-in” where it comes back.`,
        data: missingAfter(step, 'book-in'),
      });
    }
    for (const [index, { step }] of steps.entries()) {
      if (step.verb !== 'book-in') continue;
      const parts = partsNamedIn(step);
      const sent = steps
        .slice(0, index)
        .some(({ step: before }) => before.verb === 'send-out' && !isOfOthers(parts, partsNamedIn(before)));
      if (sent) continue;
      const what = listed(step.objects.map((object) => objectWords(graph.procedure, object)));
      report({
        at: step,
        message:
          parts.length === 0
            ? say`The unit is booked in here, and no step before sends it out.`
            : say`The ${what} is booked in here, and no step before sends it out.`,
        why: say`the sheet does not say what was to be done to it, or that it ever left.`,
        help: say`Write “send-out” where it goes.`,
      });
    }
    return {};
  },
  fix: fixStep,
};

/** By then it has to be back. */
const ends: ReadonlySet<Verb> = new Set(['book-in', 'test', 'set', 'sign-off']);

/** What is booked in is something else: the unit and all of it where no part is named. */
function isOfOthers(bookedIn: readonly string[], sent: readonly string[]): boolean {
  return bookedIn.length > 0 && sent.length > 0 && !bookedIn.some((name) => sent.includes(name));
}
