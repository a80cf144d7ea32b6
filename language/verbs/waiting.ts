import type { VerbRecord } from './verb.ts';

/** Signatures, waiting, somebody else’s work, and the rest. */
export const waiting = {
  'sign-off': { objects: [], takes: ['by text'], does: 'signature', is: ['after sign-off'] },
  'hold-for': { objects: [], takes: ['for text'], does: 'the unit waits', is: ['after sign-off'] },
  wait: {
    objects: [],
    takes: ['amount', 'for time', 'for text'],
    does: 'the unit waits',
    is: ['after sign-off'],
  },
  'send-out': {
    objects: [],
    takes: ['for text'],
    does: 'to somebody else',
    is: ['whole unit', 'lifts', 'changes', 'after sign-off'],
  },
  'book-in': { objects: [], takes: [], does: 'back from somebody else', is: ['whole unit', 'lifts'] },
  do: {
    objects: [],
    takes: [],
    does: 'anything else, as written',
    is: ['drives', 'spins', 'lifts', 'changes', 'after sign-off'],
  },
} as const satisfies Readonly<Record<string, VerbRecord>>;
