import type { AnyRule } from '../../rule.ts';
import { allowWithoutEffect } from './allow-without-effect.ts';
import { allowWithoutReason } from './allow-without-reason.ts';
import { blankLeft } from './blank-left.ts';
import { callMismatch } from './call-mismatch.ts';
import { clauseWithoutMeaning } from './clause-without-meaning.ts';
import { duplicateName } from './duplicate-name.ts';
import { endlessSteps } from './endless-steps.ts';
import { headIncomplete } from './head-incomplete.ts';
import { hiddenCharacter } from './hidden-character.ts';
import { impossibleFigure } from './impossible-figure.ts';
import { jobMismatch } from './job-mismatch.ts';
import { lineBreaksOff } from './line-breaks-off.ts';
import { noSuchStep } from './no-such-step.ts';
import { notAName } from './not-a-name.ts';
import { notText } from './not-text.ts';
import { numberUnreadable } from './number-unreadable.ts';
import { outOfPlace } from './out-of-place.ts';
import { patchWithoutEffect } from './patch-without-effect.ts';
import { quoteMissing } from './quote-missing.ts';
import { resultUnreadable } from './result-unreadable.ts';
import { stepUnreachable } from './step-unreachable.ts';
import { strayCharacter } from './stray-character.ts';
import { tooMuchToRead } from './too-much-to-read.ts';
import { twoWaysAtOnce } from './two-ways-at-once.ts';
import { unbalancedBrace } from './unbalanced-brace.ts';
import { unitOfAnotherKind } from './unit-of-another-kind.ts';
import { unitUnreadable } from './unit-unreadable.ts';
import { unknownName } from './unknown-name.ts';
import { unknownWord } from './unknown-word.ts';
import { writtenTwice } from './written-twice.ts';
import { wrongDate } from './wrong-date.ts';
import { wrongFormOfLimit } from './wrong-form-of-limit.ts';
import { wrongUseOfName } from './wrong-use-of-name.ts';

/** In the order of root causes: of two rules that report the same cause, the earlier one is reported. */
export const language: readonly AnyRule[] = [
  allowWithoutEffect,
  allowWithoutReason,
  blankLeft,
  callMismatch,
  clauseWithoutMeaning,
  duplicateName,
  endlessSteps,
  headIncomplete,
  hiddenCharacter,
  impossibleFigure,
  jobMismatch,
  lineBreaksOff,
  noSuchStep,
  notAName,
  notText,
  numberUnreadable,
  outOfPlace,
  patchWithoutEffect,
  quoteMissing,
  resultUnreadable,
  stepUnreachable,
  strayCharacter,
  tooMuchToRead,
  twoWaysAtOnce,
  unbalancedBrace,
  unitOfAnotherKind,
  unitUnreadable,
  unknownName,
  unknownWord,
  writtenTwice,
  wrongDate,
  wrongFormOfLimit,
  wrongUseOfName,
];
