/** What may stand at a place, by the words before it. */
import { propertyClasses } from '../../language/calculations/proof-load.ts';
import { kindWords } from '../../language/grammar/words.ts';
import { dangers } from '../../language/model/danger.ts';
import type { Place } from './place.ts';

/** Kinds of declared names, as `DeclaredSymbol.kind` calls them, and words of the language. */
export interface Wanted {
  /** Names of these kinds, the likeliest first. */
  readonly names: readonly string[];
  readonly words: readonly string[];
  /** Steps may begin here. */
  readonly verbs: boolean;
  readonly rules: boolean;
}

const nothing: Wanted = { names: [], words: [], verbs: false, rules: false };
const names = (...kinds: string[]): Wanted => ({ ...nothing, names: kinds });
const words = (...list: string[]): Wanted => ({ ...nothing, words: list });

/** What can hurt of a part, a station or a step, and that it does not. */
const dangerWords = [...dangers, 'not'];

const stepBlocks = new Set(['stage', 'repair', 'sequence', 'instead', 'after', 'before', 'only']);

/** Verbs whose objects are ports first. */
const portVerbs = new Set(['cap', 'uncap', 'connect', 'disconnect']);
/** Verbs whose objects may be faces. */
const faceVerbs = new Set(['check', 'guard', 'lap', 'wipe', 'clean']);
const fluidVerbs = new Set(['wash', 'rinse', 'soak', 'wipe', 'oil', 'clean']);
const partVerbs = new Set([
  'clamp',
  'unclamp',
  'slacken',
  'back-off',
  'remove',
  'discard',
  'keep',
  'send',
  'compress',
  'release',
  'press',
  'wash',
  'rinse',
  'soak',
  'blow-dry',
  'blast',
  'buff',
  'measure',
  'read',
  'renew',
  'fit',
  'line-up',
  'run-down',
  'torque',
  'lock',
  'oil',
  'set',
  'choose',
  'mark',
  'seal',
  'open',
  'close',
]);

/** Kinds of the things that a tool number stands on. */
const assetKinds = ['wrench', 'gauge', 'tool', 'asset'];

/** What to offer at a place. */
export function wantedAt(place: Place): Wanted {
  if (place.quoted) return nothing;
  const block = place.blocks.at(-1)?.word ?? null;
  const { before } = place;
  if (before.length === 0) return atBeginning(block);
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
  if (block !== null && stepBlocks.has(block)) return inStep(before);
  return nothing;
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
      );
    case 'family':
      return words(
        'part',
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
        'allow',
        'instead of',
        'after',
        'before',
        'without',
      );
    case 'number':
      return names('spec');
    case 'job':
      return words('unit');
    case 'unit':
      return {
        ...names('test', 'spec', 'part'),
        words: ['as found', 'renewed', 'torque', 'done by', 'note', 'on hold'],
      };
    default:
      return { names: ['sequence'], words: [], verbs: stepBlocks.has(block), rules: false };
  }
}

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
        ? words('of', 'revision', 'at', 'customer', 'received')
        : words('for', 'at', 'like', 'revision', 'written by', 'approved by');
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
      return words('range', 'within', 'class', 'graduated', 'at', 'calibrated', 'due', 'length', 'damped', 'digital');
    case 'fluid':
      return words('solvent', 'detergent', 'caustic', 'water', 'test-oil', 'oil', 'preservative', 'flammable');
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
      if (last === 'from') return names('stock');
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
        ...dangerWords,
        'for each cylinder',
      );
    }
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

/** Results: what follows the last word, since several may stand on a line. */
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
      if (last === before[0] || last === 'of') return { ...words('stage', 'repair'), verbs: true };
      return names('part', 'test', 'port', 'face');
    default:
      return nothing;
  }
}

function inStep(before: readonly string[]): Wanted {
  const last = before.at(-1) ?? '';
  const verb = before[0] ?? '';
  const failing = before.lastIndexOf('fail') > 0 && before[before.lastIndexOf('fail') - 1] === 'on';
  if (last === 'fail' || (failing && last === ',' && !before.slice(before.lastIndexOf('fail')).includes('accept')))
    return names('repair');
  switch (last) {
    case 'at':
      return { ...names('station'), words: ['least', 'most'] };
    case 'within':
      return names('spec');
    case 'to':
      if (verb === 'keep' || verb === 'send') return names('station');
      return { ...names('spec'), words: ['bring'] };
    case 'by':
      return { ...names('spec'), words: ['stretch'] };
    case 'bring':
    case 'below':
    case 'above':
    case 'test':
      return names('test', 'spec');
    case 'set':
      if (before.at(-2) === 'the') return names('test', 'spec');
      return names('adjuster', 'part');
    case 'in':
      if (fluidVerbs.has(verb)) return names('fluid');
      return words('cross pattern');
    case 'with': {
      const tools = names(...assetKinds);
      if (verb === 'fit') return names('part');
      if (verb === 'guard') return names('part');
      if (verb === 'blow-dry') return words('air at most');
      if (verb === 'test' || verb === 'prime') return { ...tools, words: ['gauge shut', 'gauge open'] };
      return tools;
    }
    case 'only':
      return names('number');
    case 'through':
      return names('joint', 'adjuster', 'face', 'part');
    case 'except':
    case 'renew':
    case 'choose':
      return names('part');
    case 'allow':
      return { ...nothing, rules: true };
    case 'not':
      return words(...dangers);
    case 'on':
      return words('fail');
    case 'read':
      if (verb === 'test') return words(...kindWords);
      return names('test', 'spec', 'part');
    default:
      break;
  }
  if (last === verb || last === ',' || last === 'of') {
    if (verb === 'only') return names('number');
    if (portVerbs.has(verb)) return names('port', 'part');
    if (faceVerbs.has(verb)) return last === 'clean' ? words('outside', 'holes of') : names('face', 'part', 'port');
    if (partVerbs.has(verb)) return names('part', 'adjuster');
    if (verb === 'across') return words('the set');
    if (verb === 'hazard') return words('DANGER', 'WARNING', 'CAUTION', 'NOTICE');
  }
  return clausesOf(verb);
}

/** Words that go on after a verb and its objects. */
function clausesOf(verb: string): Wanted {
  const common = ['with', 'note', 'takes', 'allow', ...dangerWords];
  switch (verb) {
    case 'test':
      return words(
        'read',
        'within',
        'hold',
        'for',
        'from',
        'at',
        'with gauge shut',
        'accept',
        'reject',
        'on fail',
        'stop if fails',
        'never above',
        'proves through',
        ...common,
      );
    case 'check':
      return words('reuse if', 'lap if', 'reject if', 'accept', 'slides', 'turns-free', 'on fail', ...common);
    case 'torque':
      return words(
        'to',
        'and adapter',
        'in cross pattern',
        'passes',
        'by stretch',
        'threads oiled',
        'held by',
        ...common,
      );
    case 'choose':
      return words('to bring', 'by', 'never above', ...common);
    case 'wash':
    case 'rinse':
    case 'soak':
      return words('in', 'except', ...common);
    case 'keep':
    case 'send':
      return words('at', 'to', ...common);
    case 'read':
      return words('as found', 'as left', ...common);
    case 'across':
      return words('spread at most', 'on fail', ...common);
    case 'fit':
      return words('for trial', ...common);
    case 'sign-off':
      return words('by', ...common);
    default:
      return words(...common, 'in', 'at', 'to', 'by');
  }
}
