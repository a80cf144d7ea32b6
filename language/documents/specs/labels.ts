import { wordsIn } from '../../i18n/index.ts';

/** The sheet's own words: the specifications are read by the lead, in English. */
export const sheetWords = wordsIn('en');

import type { GroupKind } from './model.ts';

/** The fixed words of the specifications; those that the sheet has too are taken from it. */
export const specWords = {
  title: 'Specifications',
  numbers: 'Part number',
  family: 'Family',
  procedure: 'Procedure',
  revision: 'Revision',
  noRevision: 'none',
  shop: 'Shop',
  step: (numbers: string) => (numbers.includes(',') ? `steps ${numbers}` : `step ${numbers}`),
  /** Before what goes for every part number. */
  all: 'all',
  source: 'Source',
  ratio: 'ratio',
  ratioNote: 'Ratio: half of what the limit lets through, over the permissible error of the tool; rounded down.',
  judged: (rule: string, percent: string) =>
    `Acceptance ${rule}; a unit just outside it would pass ${percent} of 100 readings at worst.`,
  missingCount: (count: number) =>
    count === 0 ? 'Nothing missing' : count === 1 ? '1 thing missing' : `${count} things missing`,
  nothing: 'No joint, no test and no spec has a figure.',
  groups: {
    joints: 'Joints',
    adjusters: 'Adjusters',
    tests: 'Tests',
    measurements: 'Measurements',
    others: 'Others',
  } satisfies Record<GroupKind, string>,
  what: {
    torque: 'Torque',
    sets: (reading: string) => `Sets ${reading}`,
    rate: 'Rate',
    lockTorque: 'Lock torque',
    read: 'Reading',
    asFound: 'As found',
    settling: 'A new spring settles by',
    hold: 'Hold',
    from: 'From',
    to: 'Down to',
    inTime: 'In',
    forTime: 'For',
    at: 'At',
    spread: 'Spread over the set',
    never: 'Never above',
    looked: 'Accept',
    limit: 'Limit',
    aim: 'Aim',
    binds: 'Binds over',
    value: 'Value',
  },
  facts: {
    on: (part: string) => `on ${part}`,
    oiled: 'threads oiled',
    ofClass: (propertyClass: string) => `class ${propertyClass}`,
    leftHand: 'LEFT-HAND THREAD',
    lockedBy: (part: string) => `locked by ${part}`,
    usedBy: (numbers: string) => `used in ${specWords.step(numbers)}`,
    unused: 'no step uses it',
    noJoint: 'not a joint of the family',
  },
  missing: {
    noTorqueStep: 'no step torques it',
    torque: 'no torque given',
    limit: 'no limit given',
    pressure: 'no pressure given',
    source: 'no source',
    standingSource: "no source for the shop's tolerance",
    tolerance: 'no tolerance',
    tool: 'no tool named',
    gauge: 'no tool named, no gauge at the station',
    accuracy: (tool: string) => `no accuracy given for ${tool}`,
  },
} as const;
