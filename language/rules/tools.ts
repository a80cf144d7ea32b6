import type { Rule } from './rule.ts';

/** In the order of causes: where two rules speak of one cause, the earlier one is heard. */
export const tools: readonly Rule[] = [];
