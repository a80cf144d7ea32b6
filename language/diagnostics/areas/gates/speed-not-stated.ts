import type { Step } from '../../../model/procedure.ts';
import type { Rule } from '../../rule.ts';

/** Chatter is judged, and nothing says how fast the lever is worked. */
export const speedNotStated: Rule = {
  code: 'speed-not-stated',
  severity: 'error',
  since: '0.2.0',
  ofAbsence: true,
  title: 'Chatter is judged, but no lever speed is stated.',
  procedure(procedure, report) {
    for (const stage of procedure.stages) {
      for (const step of stage.steps) {
        if (!judgesChatter(step) || step.test!.at !== null || saysSpeed(step)) continue;
        report({
          at: step,
          message: `Test ${step.gate!.name} does not say how fast to work the lever.`,
          why: 'a good needle is silent at one speed and chatters at another, so each person would judge differently.',
          help: 'Write “at 20..60 strokes/min”, or the speed that the maker gives.',
        });
      }
    }
  },
};

function judgesChatter({ verb, gate, test, accept }: Step): boolean {
  if (verb !== 'test' || test === null || test.reads !== null || test.within !== null) return false;
  if (test.hold !== null || test.from !== null) return false;
  return /\bchatter/iu.test(gate!.name) || /\b(chatters?|creaks?|buzz(es)?)\b/iu.test(accept ?? '');
}

/** Stated in words, as some makers do: “a soft creak at slow strokes”. */
function saysSpeed({ accept, reject, text, note, test }: Step): boolean {
  return /\b(strokes?|slow(ly)?|fast|quick(ly)?|rapid(ly)?|speeds?|(per|a) (second|minute))\b/iu.test(
    [accept, reject, text, note, ...test!.conditions].join(' '),
  );
}
