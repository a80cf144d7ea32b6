import type { VerbRecord } from './verb.ts';

/** The unit and its parts, taken in, held and put down. */
export const handling = {
  receive: { objects: [], takes: [], does: 'takes the unit in', is: ['whole unit', 'lifts'] },
  tag: { objects: [], takes: [], does: 'tags the unit', is: ['after sign-off'] },
  photo: { objects: [], takes: [], does: 'photographs the unit', is: ['after sign-off'] },
  clamp: { objects: ['part'], takes: ['in text'], does: 'holds the unit', is: ['as one', 'lifts'] },
  unclamp: { objects: ['part'], takes: [], does: 'lets the unit go', is: ['as one', 'lifts'] },
  keep: {
    objects: ['part'],
    all: 'parts',
    takes: ['with part', 'at station', 'in text', 'in fluid'],
    does: 'puts parts in their own place',
    is: ['as one', 'lifts', 'after sign-off'],
  },
  send: { objects: ['part'], takes: ['to station'], does: 'moves parts', is: ['as one', 'lifts', 'after sign-off'] },
} as const satisfies Readonly<Record<string, VerbRecord>>;
