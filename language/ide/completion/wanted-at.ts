/** What may be written at a place, by the words before it. */
import { propertyClasses } from '../../engineering/proof-load.ts';
import { dangers } from '../../model/danger.ts';
import { drawnAs } from '../../model/drawn-as.ts';
import { materials } from '../../model/material.ts';
import { continuing, fluidWords, kindWords, stepBlocks } from '../../syntax/keywords.ts';
import type { Place } from './place.ts';
import { addressVerbs, inStep } from './step-place.ts';
import { names, nothing, type Wanted, words } from './wanted.ts';

/** What can hurt of a part, a station or a step, and that it does not. */
const dangerWords = [...dangers, 'not'];

/** Kinds of the things that a tool number is on. */
const assetKinds = ['wrench', 'gauge', 'tool'];

/** What to offer at a place. */
export function wantedAt(place: Place): Wanted {
  if (place.quoted) return nothing;
  const block = place.blocks.at(-1)?.word ?? null;
  const { before } = place;
  if (before.length === 0) return withClausesAbove(atBeginning(block), place);
  if (before.at(-1) === 'allow') return { ...nothing, rules: true };
  switch (before[0]) {
    case 'procedure':
    case 'job':
    case 'sequence':
      if (block === null) return inHead(before);
  }
  if (block === 'shop') return inShop(before);
  if (block === 'family') return inFamily(before);
  if (block === 'job') return inJob(before);
  if (block === 'unit') return inUnit(before);
  if (block === 'procedure') return inProcedure(before);
  if (block !== null && stepBlocks.includes(block)) return inStep(before);
  return nothing;
}

/** Clauses may be on lines of their own if a word at the beginning shows that they are clauses. */
function withClausesAbove(wanted: Wanted, { above }: Place): Wanted {
  if (!wanted.verbs || above.length === 0) return wanted;
  const further = inStep(above).words.filter((said) => continuing.includes(said.replace(/ .*/u, '')));
  return { ...wanted, words: [...wanted.words, ...further] };
}

function atBeginning(block: string | null): Wanted {
  switch (block) {
    case null:
      return words('shop', 'family', 'procedure', 'job', 'sequence');
    case 'shop':
      return words(
        'station',
        'wrench',
        'gauge',
        'tool',
        'fluid',
        'stock',
        'master',
        'unless stated',
        'air below',
        'acceptance simple',
        'acceptance guarded',
        'address',
        'telephone',
        'accreditation',
        'terms',
      );
    case 'family':
      return words(
        'part',
        'assembly',
        'places',
        'face',
        'port',
        'joint',
        'adjuster',
        'proven by',
        'proven across the set by',
        'always checked',
      );
    case 'procedure':
      return words(
        'spec',
        'number',
        'stage',
        'repair',
        'sequence',
        'hazard',
        'figures from',
        'allow',
        'instead of',
        'after',
        'before',
        'without',
      );
    case 'number':
      return { ...names('spec'), words: ['figures from'] };
    case 'job':
      return words('unit', 'intake');
    case 'intake':
      return words(
        'complaint',
        'missing',
        'brought by',
        'taken-in by',
        'promised',
        'quote',
        'approved by',
        'photo',
        'deviation',
        'moved',
      );
    case 'unit':
      return {
        ...names('test', 'spec', 'part'),
        words: ['as found', 'renewed', 'torque', 'done by', 'note', 'on hold', ...unitWords],
      };
    default:
      return { names: ['sequence'], words: [], verbs: block !== null && stepBlocks.includes(block), rules: false };
  }
}

const unitWords = [
  'complaint',
  'missing',
  'waiting for',
  'sent-out',
  'booked-in',
  'exchange serial',
  'core',
  'comeback',
  'concession',
  'deviation',
  'photo',
  'shop-serial',
  'again',
];

function inHead(before: readonly string[]): Wanted {
  switch (before.at(-1)) {
    case 'for':
      return names('family');
    case 'at':
      return names('shop');
    case 'like':
    case 'of':
      return names('procedure');
    default:
      return before[0] === 'job'
        ? words('of', 'revision', 'at', 'customer', 'received', 'order')
        : words('for', 'at', 'like', 'revision', 'language', 'written by', 'approved by');
  }
}

function inShop(before: readonly string[]): Wanted {
  const last = before.at(-1);
  if (last === 'at') return names('station');
  if (before.length < 2) return nothing;
  switch (before[0]) {
    case 'station':
      return last === 'not'
        ? words(...dangers)
        : words('clean', 'dirty', 'abrasive', 'wet', 'pressure', ...dangerWords, 'wear');
    case 'wrench':
    case 'gauge':
    case 'tool':
      return words(
        'range',
        'within',
        'class',
        'graduated',
        'at',
        'calibrated',
        'due',
        'certificate',
        'found',
        'retired',
        'out of use since',
        'length',
        'damped',
        'digital',
      );
    case 'fluid':
      return words(...fluidWords, 'flammable');
    case 'stock':
      return before.some((word) => word === 'of' || word === 'by')
        ? words('stacks of two')
        : words(...(before.includes('to') ? ['by'] : before.includes('from') ? ['to'] : ['from', 'of']));
    case 'unless':
      return words(...kindWords, 'source');
    default:
      return nothing;
  }
}

function inFamily(before: readonly string[]): Wanted {
  const last = before.at(-1);
  switch (before[0]) {
    case 'part': {
      if (before.length < 2) return nothing;
      if (last === 'from') return before.at(-2) === 'chosen' ? names('stock') : words('below', 'above');
      if (last === 'as') return words(...drawnAs);
      if (last === 'material') return words(...materials);
      if (last === 'not') return words(...dangers);
      const relation = before.findLast((word) => ['on', 'in', 'through', 'holds', 'to', 'with'].includes(word));
      if (last === relation || (last === ',' && relation !== undefined)) return names('part');
      return words(
        'on',
        'in',
        'through',
        'bears on',
        'holds',
        'matched to',
        'balanced with',
        'located by',
        'marks',
        'held in',
        'chosen from',
        'renewed',
        'supplied loose',
        'ready to fit',
        'slides',
        'turns-free',
        'binds over',
        'drawn as',
        'from below',
        'from above',
        'material',
        'weight',
        ...dangerWords,
        'for each cylinder',
        'quantity',
        'sides',
      );
    }
    case 'assembly':
      if (last === 'of' || last === ',') return names('part');
      return before.length < 2 ? nothing : words('of');
    case 'face':
      if (last === 'face') return names('part');
      if (last === 'meets') return names('face', 'part');
      if (last === 'by') return names('part');
      return words('lapped', 'ground', 'meets', 'guarded by');
    case 'port':
      if (last === 'on' || last === 'under') return names('part');
      return before.length < 2 ? nothing : words('on', 'under', 'open in transit');
    case 'joint':
      if (last === 'joint' || last === 'to') return names('part');
      if (last === 'class') return words(...propertyClasses);
      return words('to', 'threads oiled', 'left-hand', 'hand-tight is final', 'solid class');
    case 'adjuster':
      if (last === 'adjuster' || last === 'by') return names('part');
      if (last === 'sets') return names('spec', 'test');
      return words('sets', 'locked by');
    case 'proven':
      if (last === 'by' || last === ',') return names('test', 'spec');
      return words('by', 'across the set by');
    case 'always':
      return last === 'always' ? words('checked') : names('part');
    default:
      return nothing;
  }
}

function inJob(before: readonly string[]): Wanted {
  if (before[0] !== 'unit') return nothing;
  if (before.at(-1) === 'number') return names('number');
  return before.length < 2 ? nothing : words('number', 'serial', 'on hold');
}

/** Results: what follows the last word, since several may be on a line. */
function inUnit(before: readonly string[]): Wanted {
  const last = before.at(-1) ?? '';
  if (last === 'found') return names('test', 'spec');
  if (last === 'renewed' || last === 'torque') return names('part');
  if (last === 'on' || last === 'with') return names(...assetKinds);
  return { ...names('test', 'spec', 'part'), words: ['out', 'in', 'pass', 'fail', 'on', 'with'] };
}

function inProcedure(before: readonly string[]): Wanted {
  const last = before.at(-1);
  switch (before[0]) {
    case 'stage':
      if (last === 'at') return names('station');
      return before.length < 2 ? nothing : words('at', 'the set together', 'allow');
    case 'repair':
      if (last === 'at') return names('station');
      return before.length < 2 ? nothing : words('at', 'allow');
    case 'spec':
      if (before.length === 2 || (before.length === 3 && last === '"')) return words(...kindWords);
      if (last === 'rate') return words('from stiffness');
      if (before[before.indexOf('stiffness') - 1] === 'from') return words('guide', 'seat', 'source');
      return before.length < 2
        ? nothing
        : words('in service', 'at least', 'at most', 'new', 'not required', 'acceptance guarded', 'settling', 'source');
    case 'number':
      return nothing;
    case 'instead':
    case 'without':
    case 'after':
    case 'before':
      if (last === 'stage' || last === 'in') return names('stage', 'repair');
      if (last === 'repair') return names('repair');
      if (last === before[0] || last === 'of') return words('stage', 'repair', ...addressVerbs);
      return names('part', 'test', 'port', 'face');
    default:
      return nothing;
  }
}
