import type { VerbRecord } from './verb.ts';

/** Cleaning, drying, oiling, and what makes surfaces new. */
export const cleaning = {
  wash: {
    objects: ['part'],
    all: 'parts',
    takes: ['in fluid', 'in text', 'with fluid', 'for time', 'for text', 'at limit', 'at station', 'except'],
    does: 'takes dirt off, and leaves the part wet with the fluid',
    is: ['takes in hand', 'cleans', 'lifts', 'changes'],
  },
  rinse: {
    objects: ['part'],
    all: 'parts',
    takes: ['in fluid', 'in text', 'with fluid', 'for time', 'for text', 'except'],
    does: 'takes preservative and loose dirt off, not dirt as it came in',
    is: ['takes in hand', 'cleans', 'lifts'],
  },
  soak: {
    objects: ['part'],
    all: 'parts',
    takes: ['in fluid', 'in text', 'with fluid', 'for time', 'for text', 'at limit', 'at station', 'except'],
    does: 'takes dirt off, and leaves the part wet with the fluid',
    is: ['takes in hand', 'cleans', 'lifts', 'changes'],
  },
  'blow-dry': {
    objects: ['part'],
    all: 'parts',
    takes: ['except'],
    does: 'dries, `with air at most 2 bar`',
    is: ['takes in hand', 'cleans', 'spins', 'changes'],
  },
  wipe: {
    objects: ['part', 'face'],
    all: 'parts',
    takes: ['in fluid', 'in text', 'with fluid', 'except'],
    does: 'cleans by hand',
    is: ['takes in hand', 'cleans', 'changes', 'after sign-off'],
  },
  blast: {
    objects: ['part'],
    takes: ['in text', 'in fluid', 'at station'],
    does: 'abrades, and leaves the part dirty',
    is: ['lifts', 'changes'],
  },
  buff: { objects: ['part'], takes: [], does: 'abrades, and leaves the part dirty', is: ['lifts', 'changes'] },
  'clean-outside': {
    spelling: 'clean outside',
    objects: [],
    takes: ['with fluid', 'in fluid', 'in text'],
    does: 'cleans the unit’s outside, with its ports capped',
    is: ['cleans'],
  },
  'clean-holes': {
    spelling: 'clean holes of',
    objects: ['part'],
    takes: [],
    does: 'loosens what is in the holes',
    is: ['takes in hand', 'cleans', 'changes'],
  },
  lap: {
    objects: ['face', 'part'],
    takes: [],
    does: 'makes the face new, and leaves the part dirty',
    is: ['takes in hand', 'changes'],
  },
  oil: {
    objects: ['part', 'face'],
    all: 'parts',
    takes: ['with fluid', 'in fluid', 'in text'],
    does: 'oils',
    is: ['takes in hand', 'after sign-off'],
  },
} as const satisfies Readonly<Record<string, VerbRecord>>;
