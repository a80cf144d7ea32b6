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
    takes: ['for text'],
    does: 'sends the unit to somebody else',
    is: ['whole unit', 'lifts', 'changes', 'after sign-off'],
  },
  'book-in': { objects: [], takes: [], does: 'takes the unit back from somebody else', is: ['whole unit', 'lifts'] },
  do: {
    objects: [],
    takes: ['to parts'],
    does: 'is anything else, as written; `to PARTS` says what it changes',
    is: ['drives', 'spins', 'lifts', 'changes', 'after sign-off'],
  },
} as const satisfies Readonly<Record<string, VerbRecord>>;
