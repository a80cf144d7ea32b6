import type { Kind, Mutant } from './mutant.ts';

/** Why a break may stay unnoticed: a fact with one witness, or something that only its author can know. */
export interface Reason {
  readonly name: string;
  /** As written in DEVELOPERS.md. */
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

const deletes = (pattern: RegExp) => all(ofKind('delete a step'), label(pattern));
const clause = (pattern: RegExp) => all(ofKind('delete another clause', 'delete a tool'), label(pattern));
const either =
  (...tests: readonly Reason['holds'][]) =>
  (mutant: Mutant) =>
    tests.some((test) => test(mutant));

export const reasons: readonly Reason[] = [
  {
    name: 'own-words',
    reason: 'Work in the author’s own words (`do`, a hand tool in quotes): only the author knows that it is needed.',
    holds: either(
      deletes(/^do "/u),
      all(ofKind('swap two steps'), label(/(^|⇄ )do "/u)),
      all(ofKind('delete a tool'), label(/^(with )?"/u)),
    ),
  },
  {
    name: 'choice-of-repairs',
    reason:
      'Which repairs are tried, how often, whether the other tests are run first, and whether the lead is asked at once, is the shop’s choice.',
    holds: either(
      ofKind('delete a repair from an on fail', 'delete a count of tries'),
      clause(/^stop if fails$/u),
      all(ofKind('send to another repair'), label(/ → hold-apart in /u)),
    ),
  },
  {
    name: 'means-of-repair',
    reason: 'A repair that does two things may need only one: a new washer alone may stop a leak.',
    holds: deletes(/^(renew|rinse) /u),
  },
  {
    name: 'held-for-the-lead',
    reason: 'A check that says what is rejected needs no `on fail`: the unit is then held for the lead.',
    holds: ofKind('delete an on fail'),
  },
  {
    name: 'one-side-said',
    reason:
      'Where a check or test says what is good, or what is not, and what is then done, the other side is not needed; nor that a face may be lapped.',
    holds: either(clause(/^(reuse if|lap if|reject if|reject) "/u), ofKind('delete an accept')),
  },
  {
    name: 'more-cleaning',
    reason:
      'Cleaning beyond the one wash that is needed (a soak, a wire in the holes, a first wash before the last, a wipe with or without a fluid, the time in the bath): a later step removes all the dirt that the checker knows about.',
    holds: either(
      deletes(/^(clean holes|clean outside|soak|wipe|wash|only \S+ \{ soak)/u),
      // What is new is washed with the others afterwards.
      all(ofKind('swap two steps'), label(/^renew .* ⇄ wash /u)),
      all(ofKind('delete a time'), label(/^for /u)),
      all(ofKind('delete a part from a list'), label(/of (wash|soak|wipe|rinse) /u)),
      all(ofKind('take another fluid'), label(/ in wipe /u)),
      clause(/^(in solvent|in cal-oil|in preserver|with solvent)$/u),
    ),
  },
  {
    name: 'known-spring',
    reason:
      'That a part is under load, or is not: where its shape or its place in the family says so, the word says it again.',
    holds: all(ofKind('drop a fact of the family'), label(/^(not )?spring-loaded of part /u)),
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
    name: 'one-limit',
    reason: 'Where no part number repeats it, a limit in service is written in one place only.',
    holds: clause(/^, in service /u),
  },
  {
    name: 'order-of-looks',
    reason: 'Checks and measurements of parts in the hand may be made in any order.',
    holds: all(ofKind('swap two steps'), label(/^(check|measure) .* ⇄ |⇄ (check|measure) /u)),
  },
  {
    name: 'seen-twice',
    reason:
      'A part that two checks look at, or a check and a measurement, is still looked at; and so is what is felt to turn.',
    holds: either(all(ofKind('delete a part from a list'), label(/ of check /u)), deletes(/^check shaft /u)),
  },
  {
    name: 'number-or-serial',
    reason: 'Either of number and serial leads a unit back to its job.',
    holds: all(ofKind('delete a part from a list'), label(/^(number|serial) of with number, serial/u)),
  },
  {
    name: 'comes-with-its-carrier',
    reason: 'A needle comes out with its nozzle, and a part that is renewed comes off: naming it is one word more.',
    holds: either(
      all(ofKind('delete a part from a list'), label(/^(needle|valve|spring|nozzle) of remove /u)),
      deletes(/^remove needle$/u),
    ),
  },
  {
    name: 'proofs',
    reason:
      'A procedure may test more than the family asks for: a test that was deleted from the list of proofs looks like one.',
    holds: all(ofKind('drop a fact of the family'), label(/ of proven by /u)),
  },
  {
    name: 'one-witness',
    reason:
      'What a part bears on without a shim under it, what a connector holds that keeps no load, a pair that is never renewed together, a thread that no step oils, which way it turns, how many there are of a part and on which sides, what turns freely, what it is held in, what goes in oiled: no other line says it again.',
    holds: all(
      ofKind('drop a fact of the family'),
      label(
        /^(bears on needle of part |holds (filter|thrust)( of|, )|holds thrust of |matched to nozzle of |threads oiled of |left-hand of |turns-free of |fitted oiled of |held in |quantity \d|sides )/u,
      ),
    ),
  },
  {
    name: 'readings-as-found',
    reason:
      'What is read as found, beyond one reading before the unit is opened, and what is written down in words, is the shop’s choice.',
    holds: either(deletes(/^(read .* as found|record )/u), clause(/^as found$/u)),
  },
  {
    name: 'said-by-the-joint',
    reason:
      'A joint that says `threads oiled` prints it at each torque: the step that oils it says it again; and a bore is oiled by what goes into it oiled.',
    holds: either(deletes(/^oil nut /u), all(ofKind('delete a part from a list'), label(/^bearing-housing of oil /u))),
  },
  {
    name: 'speed-of-a-spray',
    reason: 'Only chatter depends on the speed of the lever; a speed given in words is not required again.',
    holds: clause(/^at \d+\.\.\d+ strokes\/min$/u),
  },
  {
    name: 'more-than-needed',
    reason:
      'Taking in, photographs and packing, a second tag on a marked unit, a second tool or hold, a second priming, a shut gauge that is digital: right, and not needed for what the checker knows.',
    holds: either(
      deletes(/^(receive|photo|pack|tag|prime)\b/u),
      all(ofKind('swap two steps'), label(/^prime /u)),
      clause(/^(with LG-1|held by "|with gauge shut$)/u),
    ),
  },
  {
    name: 'outer-joints',
    reason: 'A lock nut or cap nut that closes over nothing may be worked with pressure on.',
    holds: either(deletes(/^relieve$/u), all(ofKind('swap two steps'), label(/⇄ relieve$/u))),
  },
  {
    name: 'fitted-by-tightening',
    reason: 'A screw that is run down is in place: the step that fits it, and a list that names it, say it again.',
    holds: either(
      deletes(/^fit (band|actuator-screw)\b/u),
      all(ofKind('delete a part from a list'), label(/^housing-screw of fit /u)),
    ),
  },
  {
    name: 'whole-or-part',
    reason:
      'Whether the unit goes out or a part of it, what a proof reaches, at which places a test is read, what a working step changes, and a ceiling that no figure comes near: only the author knows.',
    holds: clause(
      /^(of cartridge|proves through |at each plane$|to bearing-housing$|in "turbocharger [a-z]+"$|never above 1\.6 bar$)/u,
    ),
  },
  {
    name: 'proven-afterwards',
    reason:
      'A setting that is tested afterwards, and sent to be set again where it fails, may be right as it is; a test whose pressure is written needs no word for what gives it.',
    holds: either(
      deletes(/^set first-move /u),
      all(ofKind('delete a part from a list'), label(/^air of with SG-25, air/u)),
    ),
  },
  {
    name: 'more-renewed',
    reason:
      'A ring or a bearing that is renewed at rebuild may go back within it; a pair that is balanced after it was renewed may be renewed one by one; and what is kept for the lead is kept with the rest.',
    holds: either(
      all(ofKind('keep what is used once'), label(/^discard ring-c, thrust/u)),
      all(
        ofKind('delete a part from a list'),
        label(/^(ring-c of discard|(shaft|wheel) of renew|turbine-housing of keep) /u),
      ),
    ),
  },
  {
    name: 'sub-assembly',
    reason:
      'Not noticed yet: a lock nut that came off and went back on with its rod end counts as hand-tight, though nobody turned it; and what is sent out is not held against where it is.',
    holds: either(
      all(ofKind('swap two steps'), label(/^slacken rod-nut .* ⇄ set first-move /u)),
      all(ofKind('send to another repair'), label(/^hold → balance-again in /u)),
    ),
  },
  {
    name: 'only-drawn',
    reason:
      'How a part is drawn, and from which end it goes in, is a matter of the drawing: the unit is built the same.',
    holds: all(ofKind('drop a fact of the family'), label(/^(drawn as|from below)\b/u)),
  },
];

/** The reason for which a mutant may survive; null where it must be killed. */
export function reasonFor(mutant: Mutant): Reason | null {
  return reasons.find(({ holds }) => holds(mutant)) ?? null;
}
