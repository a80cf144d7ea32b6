import type { StepOf } from '../../../model/procedure.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** Chatter is judged, and nothing says how fast the lever is worked. */
export const speedNotStated: Rule<StepFix> = {
  code: 'speed-not-stated',
  severity: 'error',
  since: '0.2.0',
  ofAbsence: true,
  title: 'Chatter is judged, but no lever speed is stated.',
  procedure(procedure, report) {
    for (const stage of procedure.stages) {
      for (const step of stage.steps) {
        if (step.verb !== 'test' || !judgesChatter(step) || step.at !== null || saysSpeed(step)) continue;
        report({
          at: step,
          message: say`Test ${step.gate.test} does not say how fast to work the lever.`,
          why: say`a good needle is silent at one speed and chatters at another, so each person would judge differently.`,
          help: say`Write “at 20..60 strokes/min”, or the speed that the maker gives.`,
          data: missingClause(step, `at ${blank} strokes/min`),
        });
      }
    }
  },
  fix: fixStep,
};

function judgesChatter({ gate, test, limit, accept }: StepOf<'test'>): boolean {
  if (test.reads !== null || limit !== null || test.hold !== null || test.from !== null) return false;
  return /\bchatter/iu.test(gate.test) || /\b(chatters?|creaks?|buzz(es)?)\b/iu.test(accept ?? '');
}

/** Stated in words, as some makers do: “a soft creak at slow strokes”. */
function saysSpeed({ accept, reject, text, note, conditions }: StepOf<'test'>): boolean {
  return /\b(strokes?|slow(ly)?|fast|quick(ly)?|rapid(ly)?|speeds?|(per|a) (second|minute))\b/iu.test(
    [accept, reject, text, note, ...conditions].join(' '),
  );
}
