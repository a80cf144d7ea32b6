import type { AnyRule } from '../../rule.ts';
import { calibrationNotDated } from './calibration-not-dated.ts';
import { checkerIsDoer } from './checker-is-doer.ts';
import { doneOnWrongDay } from './done-on-wrong-day.ts';
import { implausibleResult } from './implausible-result.ts';
import { issuedAndEdited } from './issued-and-edited.ts';
import { issuedFileChanged } from './issued-file-changed.ts';
import { markNotTraceable } from './mark-not-traceable.ts';
import { noSignOff } from './no-sign-off.ts';
import { nobodyAnswers } from './nobody-answers.ts';
import { notApproved } from './not-approved.ts';
import { notMarked } from './not-marked.ts';
import { notProven } from './not-proven.ts';
import { readingNotRecorded } from './reading-not-recorded.ts';
import { resultFails } from './result-fails.ts';
import { resultFromBefore } from './result-from-before.ts';
import { resultInGuardBand } from './result-in-guard-band.ts';
import { resultUnexplained } from './result-unexplained.ts';
import { sentOutNotBookedIn } from './sent-out-not-booked-in.ts';
import { serialInTwoJobs } from './serial-in-two-jobs.ts';
import { serialNotWrittenDown } from './serial-not-written-down.ts';
import { signedAndFails } from './signed-and-fails.ts';
import { signerMissing } from './signer-missing.ts';
import { spreadTooWide } from './spread-too-wide.ts';
import { stepAfterSignOff } from './step-after-sign-off.ts';
import { supersededRevision } from './superseded-revision.ts';
import { toolNotInDate } from './tool-not-in-date.ts';
import { toolNotWrittenDown } from './tool-not-written-down.ts';
import { unitNotTagged } from './unit-not-tagged.ts';

/** In order of precedence: if two rules report the same cause, the earlier one wins. */
export const traceability: readonly AnyRule[] = [
  noSignOff,
  stepAfterSignOff,
  checkerIsDoer,
  notMarked,
  markNotTraceable,
  unitNotTagged,
  readingNotRecorded,
  sentOutNotBookedIn,
  notApproved,
  signerMissing,
  issuedFileChanged,
  issuedAndEdited,
  supersededRevision,
  implausibleResult,
  signedAndFails,
  resultFails,
  resultInGuardBand,
  resultFromBefore,
  resultUnexplained,
  spreadTooWide,
  toolNotWrittenDown,
  toolNotInDate,
  calibrationNotDated,
  doneOnWrongDay,
  serialNotWrittenDown,
  serialInTwoJobs,
  notProven,
  nobodyAnswers,
];
