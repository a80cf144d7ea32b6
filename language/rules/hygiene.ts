import { allowWithoutEffect } from './hygiene/allow-without-effect.ts';
import { circularFit } from './hygiene/circular-fit.ts';
import { duplicateName } from './hygiene/duplicate-name.ts';
import { syntax } from './hygiene/syntax.ts';
import { unknownName } from './hygiene/unknown-name.ts';
import type { Rule } from './rule.ts';

/** In the order of causes: where two rules speak of one cause, the earlier one is heard. */
export const hygiene: readonly Rule[] = [allowWithoutEffect, circularFit, duplicateName, syntax, unknownName];
