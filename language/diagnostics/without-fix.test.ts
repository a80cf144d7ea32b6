/** The rules that have no fix, each with the reason. A new rule has one, or a line here. */
import { expect, test } from 'vitest';
import { rules } from './index.ts';

/** What to write is known to nobody but the author: a fix would be a guess, or a figure that nobody gave. */
const figure = 'A figure is wrong, and only its source says what it is.';
const tool = 'What can do the work is a fact about the shop.';
const either = 'Two steps contradict each other: the checker cannot know which of them is meant.';
const place = 'The step exists or is needed, and where it belongs is the author’s to say.';
const read = 'The text could not be read, or says what cannot be: what was meant is not in it.';
const family = 'How the parts lie is a fact about the unit.';
const work = 'What was read, by whom, with what and when, is known to those who did the work.';
const repair = 'What has to be done to a unit that failed is the lead’s to say.';

const reasons: Readonly<Record<string, string>> = {
  'circular-fit': family,
  'face-without-finish': family,
  'part-unused': place,
  'spring-held-by-nothing': family,
  'needle-not-loaded': family,

  'angle-not-measured': tool,
  'calibration-out-of-time': tool,
  'cannot-reach-the-lock': either,
  'ceiling-under-the-window': figure,
  'conditions-missing': figure,
  'fall-that-rises': figure,
  'figure-of-another-part': figure,
  'figures-far-apart': figure,
  'hold-within-gauge-error': tool,
  'lined-up-too-late': place,
  'mark-worn-away': place,
  'one-joint-two-figures': figure,
  'open-to-the-unsafe-side': figure,
  'pass-below-the-wrench': tool,
  'plan-contradicts-itself': figure,
  'repair-cannot-cure': repair,
  'run-dry': place,
  'spoilt-by-the-bath': 'Another way to clean it is a fact about the shop.',
  'soft-part-blasted': 'Another way to clean it is a fact about the shop.',
  'spread-never-fails': figure,
  'spring-let-fly': either,
  'stretched-bolt-reused': 'A new bolt, or a joint that is not tightened by an angle: the maker’s data say which.',
  'threads-dry': place,
  'unclamped-another': either,
  'words-against-figure': figure,
  'wrong-film': 'Which fluid the part goes in with is a fact about the shop.',

  'back-leak-underdetermined': figure,
  'comes-back-different': repair,
  'gate-in-repair': place,
  'gate-out-of-order': either,
  'gate-stale': place,
  'gauge-shut-while-reading': either,
  'opened-before-tested': 'It needs a stage at the tester, with connecting and letting down.',
  'reading-not-taken-yet': either,
  'repair-changes-nothing': repair,
  'tester-not-checked': tool,

  'air-pressure-too-high': figure,
  'bath-over-flash-point': figure,
  'danger-unsaid': 'Whether it is dangerous is the author’s to say, either way.',
  'hazard-after-step': either,
  'signal-word-too-weak': 'How badly somebody can be hurt decides between three words.',

  'allow-without-reason': 'The quotes for the reason are there: what goes into them is the author’s.',
  'blank-left': 'It is the blank of a fix, or of a first procedure.',
  'call-mismatch': either,
  'clause-without-meaning': read,
  'duplicate-name': either,
  'endless-steps': either,
  'head-incomplete': read,
  'hidden-character': read,
  'impossible-figure': figure,
  'line-breaks-off': read,
  'no-such-step': read,
  'not-a-name': read,
  'not-text': read,
  'out-of-place': read,
  'patch-without-effect': either,
  'result-unreadable': read,
  'step-unreachable': either,
  'stray-character': read,
  'too-much-to-read': read,
  'two-ways-at-once': either,
  'unbalanced-brace': read,
  'unit-of-another-kind': figure,
  'written-twice': either,
  'wrong-date': figure,
  'wrong-form-of-limit': figure,
  'wrong-use-of-name': read,

  'chosen-while-in-place': place,
  'discarded-and-not-renewed': either,
  'joint-slackened-then-left': either,
  'nothing-to-fit-on': either,
  'part-handled-twice': either,
  'part-left-out': 'It goes on before what lies over it, which is on already.',
  'part-still-held': either,

  'built-at-dirty-station': tool,
  'checked-dirty': place,
  'dirty-work-in-clean-room': tool,
  'dunked-part': place,
  'face-closed-unclean': place,
  'fitted-dirty': place,
  'kept-parts-at-the-wheel': tool,
  'lapped-face-abraded': place,
  'left-out-of-the-wash': either,
  'nothing-done-here': either,
  'water-washed-not-oiled': place,

  'choose-for-what':
    'What it is chosen for, its target and its rate belong together: the snippet of choose has all three.',
  'hold-not-below-opening': figure,
  'in-service-missing': figure,
  'number-missing-spec': figure,
  'limit-empty': figure,
  'limit-missing': figure,
  'spec-unused': 'The step that forgot it may be there: to delete it would lose a figure.',
  'target-outside-limit': figure,
  'unit-pair-disagrees': figure,
  'wrong-kind-of-unit': figure,

  'adapter-not-accounted': tool,
  'beyond-the-tool': tool,
  'no-tool': tool,
  'past-proof-load': figure,
  'rate-implausible': figure,
  'shim-out-of-reach': tool,
  'shim-step-too-coarse': tool,

  'checker-is-doer': either,
  'calibration-not-dated': 'From when to when it holds is on the paper of its calibration.',
  'done-on-wrong-day': work,
  'issued-and-edited': 'The next revision is for the lead to give and to approve.',
  'issued-file-changed': 'What was issued is in version control or in a backup.',
  'nobody-answers': work,
  'not-proven': work,
  'result-fails': work,
  'result-from-before': work,
  'result-in-guard-band': work,
  'result-unexplained': work,
  'serial-in-two-jobs': work,
  'serial-not-written-down': work,
  'signed-and-fails': work,
  'spread-too-wide': work,
  'tool-not-in-date': work,
  'implausible-result': figure,
  'not-approved': 'A revision is approved by a person on a day.',
  'reading-not-recorded': place,
  'step-after-sign-off': either,
};

test('every other rule has a fix', () => {
  const without = rules.filter(({ fix }) => fix === undefined).map(({ code }) => code);
  expect(without.sort()).toEqual(Object.keys(reasons).sort());
});
