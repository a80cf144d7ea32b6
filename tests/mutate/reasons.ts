import type { Mutant } from './mutant.ts';

/** Why a break may stay unnoticed: a fact with one witness, or something that only its author can know. */
export interface Reason {
  readonly name: string;
  readonly reason: string;
  readonly holds: (mutant: Mutant) => boolean;
}

export const reasons: readonly Reason[] = [];

/** The reason for which a mutant may survive; null where it must be killed. */
export function reasonFor(mutant: Mutant): Reason | null {
  return reasons.find(({ holds }) => holds(mutant)) ?? null;
}
