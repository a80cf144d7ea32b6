import type { AnyRule } from '../../rule.ts';
import { checkerIsDoer } from './checker-is-doer.ts';
import { implausibleResult } from './implausible-result.ts';
import { markNotTraceable } from './mark-not-traceable.ts';
import { noSignOff } from './no-sign-off.ts';
import { notApproved } from './not-approved.ts';
import { notMarked } from './not-marked.ts';
import { readingNotRecorded } from './reading-not-recorded.ts';
import { sentOutNotBookedIn } from './sent-out-not-booked-in.ts';
import { signerMissing } from './signer-missing.ts';
import { stepAfterSignOff } from './step-after-sign-off.ts';
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
  implausibleResult,
];
