import type { SaidOf } from '../analysis/order.ts';
import { say } from '../say/say.ts';
import type { Report } from './rule.ts';

/** Leads from a finding to the line of the family that it follows from. */
export function saidLine(said: SaidOf | null): NonNullable<Report['related']> {
  if (said === null) return [];
  const { part, words } = said;
  return [{ message: say`It follows from this line of the family: ${part.base} ${words}.`, source: part.source }];
}
