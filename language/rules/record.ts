import { noSignOff } from './record/no-sign-off.ts';
import { notMarked } from './record/not-marked.ts';
import type { Rule } from './rule.ts';

/** In the order of causes: where two rules speak of one cause, the earlier one is heard. */
export const record: readonly Rule[] = [noSignOff, notMarked];
