/*
 * Words that shape lines and blocks, for the token pass. words.test.ts holds every list against the grammar.
 */
import { spellingOf, verbs } from './verbs/index.ts';

/** Begin a declaration: they are written at the margin of a file. */
export const declarationHeads = ['shop', 'family', 'procedure', 'job', 'sequence'];

/** Begin an item directly inside a declaration, and nothing inside a block of steps. */
export const itemHeads = [
  'stage',
  'repair',
  'sequence',
  'station',
  'part',
  'assembly',
  'face',
  'port',
  'joint',
  'adjuster',
  'number',
  'spec',
  'unit',
  'proven',
  'master',
  'always',
  'places',
  'wrench',
  'fluid',
  'stock',
  'unless',
  'instead',
  'after',
  'before',
  'without',
  'intake',
];

/** What has a name of its own, by what it is in. */
export const namedItems: ReadonlyMap<string, readonly string[]> = new Map([
  ['shop', ['station', 'wrench', 'gauge', 'tool', 'fluid', 'stock', 'master']],
  ['family', ['part', 'assembly', 'places']],
  ['procedure', ['spec', 'number', 'stage', 'repair', 'sequence']],
]);

/** What begins a line that belongs into a declaration. */
export const itemsWithin: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    shop: ['unless', 'air', 'acceptance'],
    family: ['face', 'port', 'joint', 'adjuster', 'proven', 'always'],
    procedure: ['hazard', 'instead', 'after', 'before', 'without'],
  }).map(([head, others]) => [head, [...namedItems.get(head)!, ...others]]),
);

/** Heads that must have a block. */
export const blockHeads = [
  'shop',
  'family',
  'procedure',
  'job',
  'stage',
  'repair',
  'sequence',
  'instead',
  'after',
  'before',
  'only',
  'intake',
];

/** Heads whose block holds what is written down: any word may be the name of a test. */
export const writtenBlocks = ['unit', 'intake'];

/** Heads whose block holds steps. */
export const stepBlocks = ['stage', 'repair', 'sequence', 'instead', 'after', 'before', 'only'];

/** Words that can begin a step. */
export const stepWords = [...new Set(verbs.map((verb) => spellingOf(verb).replace(/ .*/u, ''))), 'only', 'hazard'];

/** What a spec or a reading is of. */
export const kindWords = [
  'pressure',
  'torque',
  'length',
  'force',
  'angle',
  'rate',
  'time',
  'temperature',
  'volume',
  'flow',
  'speed',
  'frequency',
  'vibration',
  'count',
  'stiffness',
  'voltage',
  'current',
  'resistance',
  'viscosity',
  'unbalance',
  'ratio',
];

/** Kinds of fluid, which may name one too. */
export const fluidWords = ['solvent', 'detergent', 'caustic', 'water', 'test-oil', 'oil', 'preservative'];

/** A line that begins with one of these goes on from the line above. */
export const continuing = [
  // connectives
  'for',
  'with',
  'to',
  'at',
  'on',
  'of',
  'by',
  'from',
  'within',
  'in',
  'per',
  'and',
  // clauses of steps
  'accept',
  'reject',
  'reuse',
  'note',
  'takes',
  'source',
  'held',
  'hold',
  'threads',
  'solid',
  'passes',
  'point',
  'worked',
  'slides',
  'turns-free',
  'spread',
  'proves',
  'never',
  'except',
  'stop',
  'as',
  'below',
  'above',
  'then',
  'because',
  // heads
  'revision',
  'language',
  'written',
  'approved',
  'like',
  'received',
  'order',
  'customer',
  'serial',
  'wear',
  // relations of parts
  'through',
  'bears',
  'holds',
  'matched',
  'balanced',
  'located',
  'marks',
  'chosen',
  'renewed',
  'fitted',
  'supplied',
  'meets',
  'guarded',
  'under',
  'binds',
  'drawn',
  'quantity',
  'sides',
];

/** Reserved: no part, spec or stage may be called so. */
export const reserved = [
  'for',
  'with',
  'to',
  'at',
  'on',
  'of',
  'by',
  'from',
  'within',
  'in',
  'least',
  'most',
  'per',
  'the',
  'passes',
  'and',
];

/** Keywords that may name a sequence: they begin neither a step nor a clause. */
export const callable = ['open', 'shut', 'guide', 'seat', 'settling', 'stacks', 'two'];
