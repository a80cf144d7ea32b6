import type { VerbRecord } from './verb.ts';

/** Looking, measuring, testing, setting. */
export const proving = {
  check: {
    objects: ['part', 'face', 'port'],
    all: 'parts',
    takes: ['moves', 'verdict', 'reject', 'accept', 'within', 'amount', 'fail', 'proves', 'with gauge'],
    does: 'is a gate, by eye and hand',
    is: ['reads', 'takes in hand'],
  },
  measure: {
    objects: ['part', 'face'],
    takes: ['within', 'amount', 'fail', 'with gauge'],
    does: 'makes a box on the sheet; with `within` a gate',
    is: ['reads', 'takes in hand', 'drives'],
  },
  read: {
    objects: ['reading'],
    takes: ['words as found', 'words as left', 'at limit', 'at station', 'with gauge'],
    does: 'takes a reading that is written down and passes nothing',
    is: ['reads', 'drives', 'spins'],
  },
  test: {
    objects: ['gate'],
    takes: [
      'read',
      'within',
      'amount',
      'hold',
      'from',
      'to limit',
      'in time',
      'for time',
      'for text',
      'at limit',
      'at station',
      'with gauge',
      'accept',
      'reject',
      'never',
      'proves',
      'words stop if fails',
      'fail',
      'in fluid',
      'in text',
    ],
    does: 'is a gate, on the tester or with a tool',
    is: ['reads', 'drives', 'spins'],
  },
  set: {
    objects: ['reading'],
    takes: ['within', 'to limit', 'to spec', 'by adjuster', 'by text', 'at limit', 'at station', 'with gauge', 'fail'],
    does: 'brings a reading to its limit',
    is: ['reads', 'drives', 'spins', 'changes'],
  },
  across: {
    spelling: 'across the set',
    objects: ['gate'],
    takes: ['spread', 'fail', 'with gauge'],
    does: 'is a gate over the set',
    is: ['reads'],
  },
} as const satisfies Readonly<Record<string, VerbRecord>>;
