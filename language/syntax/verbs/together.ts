import type { VerbRecord } from './verb.ts';

/** Putting together. */
export const together = {
  renew: {
    objects: ['part'],
    takes: ['with part', 'words ready to fit'],
    does: 'takes new parts, in preservative',
    is: ['as one', 'frees', 'opens', 'changes'],
  },
  choose: {
    objects: ['part'],
    takes: ['to bring', 'by spec', 'by text', 'never'],
    does: 'picks the shim that brings a reading there, to the middle of a window. `never above` is for all that lies on each other; where a spring `binds over` less, that counts',
    is: ['changes'],
  },
  fit: {
    objects: ['part'],
    takes: ['located', 'with part', 'in text', 'in fluid', 'for trial', 'for text', 'words ready to fit'],
    does: 'puts in place',
    is: ['as one', 'frees', 'tightens', 'lifts'],
  },
  'line-up': { objects: ['part'], takes: [], does: 'brings marks or holes in line', is: ['changes'] },
  'run-down': {
    objects: ['part'],
    takes: ['held'],
    does: 'turns a joint home, hand-tight',
    is: ['tightens', 'turns'],
  },
  torque: {
    objects: ['part'],
    takes: [
      'to spec',
      'to limit',
      'amount',
      'in cross pattern',
      'passes',
      'by stretch',
      'by text',
      'words threads oiled',
      'held',
      'in text',
      'in fluid',
    ],
    does: 'tightens; `with WRENCH and adapter 50 mm at 0°`',
    is: ['tightens', 'turns'],
  },
  lock: {
    objects: ['part'],
    takes: ['to spec', 'to limit', 'held'],
    does: 'tightens the lock nut of an adjuster',
    is: ['tightens', 'turns'],
  },
  mark: {
    objects: ['part'],
    takes: ['with marking', 'at station'],
    does: 'marks for good',
    is: ['as one', 'after sign-off'],
  },
  seal: { objects: ['part'], takes: [], does: 'seals', is: ['as one', 'after sign-off'] },
  pack: {
    objects: [],
    takes: ['in text', 'in fluid'],
    does: 'packs the unit',
    is: ['whole unit', 'lifts', 'after sign-off'],
  },
} as const satisfies Readonly<Record<string, VerbRecord>>;
