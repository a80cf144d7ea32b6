import type { AnyRule } from '../../rule.ts';
import { allowWithoutEffect } from './allow-without-effect.ts';
import { allowWithoutReason } from './allow-without-reason.ts';
import { duplicateName } from './duplicate-name.ts';
import { stepUnreachable } from './step-unreachable.ts';
import { syntax } from './syntax.ts';
import { unknownName } from './unknown-name.ts';

/** In the order of root causes: of two rules that report the same cause, the earlier one is reported. */
export const language: readonly AnyRule[] = [
  allowWithoutEffect,
  allowWithoutReason,
  duplicateName,
  stepUnreachable,
  syntax,
  unknownName,
];
