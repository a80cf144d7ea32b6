import type { VerbRecord } from './verb.ts';

/** Signatures, waiting, somebody else’s work, and the rest. */
export const waiting = {
  'sign-off': { objects: [], takes: ['by text'], does: 'asks for a signature', is: ['after sign-off'] },
  'hold-for': {
    objects: [],
    takes: ['for text'],
    does: 'lets the unit wait for somebody, who signs',
    is: ['after sign-off'],
  },
  wait: {
    objects: [],
    takes: ['amount', 'for time', 'for text'],
    does: 'lets the unit wait',
    is: ['after sign-off'],
  },
  'send-out': {
    objects: [],
    takes: ['of parts', 'for text'],
    does: 'sends the unit to somebody else, or `of PARTS` what is off it',
    is: ['as one', 'whole unit', 'lifts', 'changes', 'after sign-off'],
  },
  'book-in': {
    objects: [],
    takes: ['of parts'],
    does: 'takes back from somebody else what was sent out',
    is: ['as one', 'whole unit', 'lifts'],
  },
  do: {
    objects: [],
    takes: ['to parts'],
    does: 'is anything else, as written; `to PARTS` says what it changes',
    is: ['as one', 'drives', 'spins', 'lifts', 'changes', 'after sign-off'],
  },
} as const satisfies Readonly<Record<string, VerbRecord>>;
