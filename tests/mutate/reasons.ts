import type { Kind, Mutant } from './mutant.ts';

/** Why a break may stay unnoticed: a fact with one witness, or something that only its author can know. */
export interface Reason {
  readonly name: string;
  /** As it stands in DEVELOPERS.md. */
  readonly reason: string;
  readonly holds: (mutant: Mutant) => boolean;
}

const ofKind =
  (...kinds: readonly Kind[]) =>
  ({ kind }: Mutant) =>
    kinds.includes(kind);
const all =
  (...tests: readonly Reason['holds'][]) =>
  (mutant: Mutant) =>
    tests.every((test) => test(mutant));
const label =
  (pattern: RegExp) =>
  (mutant: Mutant): boolean =>
    pattern.test(mutant.label);

export const reasons: readonly Reason[] = [
  {
    name: 'own-words',
    reason: 'Work in the author’s own words (`do`, a hand tool in quotes): only he knows that it is wanted.',
    holds: (mutant) =>
      (mutant.kind === 'delete a step' && /^do "/u.test(mutant.label)) ||
      (mutant.kind === 'swap two steps' && /(^|⇄ )do "/u.test(mutant.label)) ||
      (mutant.kind === 'delete a tool' && /^(with )?"/u.test(mutant.label)),
  },
  {
    name: 'choice-of-repairs',
    reason: 'Which repairs are tried, how many and by what means, before a unit is held is the shop’s choice.',
    holds: ofKind('delete a repair from an on fail'),
  },
  {
    name: 'held-for-the-lead',
    reason: 'A check that says what is rejected needs no `on fail`: the unit is then held for the lead.',
    holds: ofKind('delete an on fail'),
  },
  {
    name: 'more-cleaning',
    reason:
      'Cleaning beyond the one wash that is needed (a soak, a wire in the holes, a first wash before the last, the fluid’s time): a later step takes all the dirt that the checker knows of.',
    holds: (mutant) =>
      (mutant.kind === 'delete a step' && /^(clean holes|soak|wipe|only \S+ \{ soak)/u.test(mutant.label)) ||
      (mutant.kind === 'delete a time' && /^for /u.test(mutant.label)) ||
      (mutant.kind === 'delete a part from a list' && /of (wash|soak|wipe|rinse) /u.test(mutant.label)),
  },
  {
    name: 'standing-tolerance',
    reason: 'Without a tolerance of its own a value takes the shop’s `unless stated`, and prints it with its source.',
    holds: ofKind('drop a tolerance'),
  },
  {
    name: 'common-value',
    reason: 'A part number without a value of its own takes the procedure’s: that is what a sister number means.',
    holds: ofKind('drop a spec of a part number'),
  },
  {
    name: 'order-of-looks',
    reason: 'Checks and measurements of parts in the hand may be made in any order.',
    holds: all(ofKind('swap two steps'), label(/^(check|measure) .* ⇄ |⇄ (check|measure) /u)),
  },
  {
    name: 'number-or-serial',
    reason: 'Either of number and serial leads a unit back to its job.',
    holds: all(ofKind('delete a part from a list'), label(/^(number|serial) of with number, serial/u)),
  },
];

/** The reason for which a mutant may survive; null where it must be killed. */
export function reasonFor(mutant: Mutant): Reason | null {
  return reasons.find(({ holds }) => holds(mutant)) ?? null;
}
