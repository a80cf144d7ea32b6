import type { VerbRecord } from './verb.ts';

/** Taking apart. */
export const apart = {
  slacken: {
    objects: ['part'],
    takes: ['held'],
    does: 'breaks a joint loose; opens what it closes',
    is: ['frees', 'opens', 'turns'],
  },
  'back-off': {
    objects: ['adjuster'],
    takes: [],
    does: 'takes the load off an adjuster',
    is: ['frees', 'opens', 'turns'],
  },
  remove: {
    objects: ['part'],
    takes: ['with part', 'held', 'at station', 'in text', 'in fluid'],
    does: 'takes off, with other parts together; any order that the parts allow',
    is: ['as one', 'frees', 'opens', 'turns', 'lifts'],
  },
  discard: { objects: ['part'], takes: [], does: 'takes off for good', is: ['as one', 'frees', 'opens', 'lifts'] },
  compress: {
    objects: ['part'],
    takes: ['in text', 'in fluid'],
    does: 'compresses a spring; printed with its cautions',
    cautions: ['spring'],
  },
  release: { objects: ['part'], takes: [], does: 'lets a spring go; printed with its cautions', cautions: ['spring'] },
  press: {
    objects: ['part'],
    takes: [],
    does: 'press work; printed with its cautions',
    is: ['lifts', 'changes'],
    cautions: ['press'],
  },
} as const satisfies Readonly<Record<string, VerbRecord>>;
