import { checkerIsDoer } from './record/checker-is-doer.ts';
import { implausibleResult } from './record/implausible-result.ts';
import { markNotTraceable } from './record/mark-not-traceable.ts';
import { noSignOff } from './record/no-sign-off.ts';
import { notApproved } from './record/not-approved.ts';
import { notMarked } from './record/not-marked.ts';
import { readingNotRecorded } from './record/reading-not-recorded.ts';
import { sentOutNotBookedIn } from './record/sent-out-not-booked-in.ts';
import { signerMissing } from './record/signer-missing.ts';
import { stepAfterSignOff } from './record/step-after-sign-off.ts';
import { unitNotTagged } from './record/unit-not-tagged.ts';
import type { AnyRule } from './rule.ts';

/** In order of precedence: if two rules report the same cause, the earlier one wins. */
export const record: readonly AnyRule[] = [
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
  implausibleResult,
];
