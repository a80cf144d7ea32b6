import type { AstNode } from 'langium';
import type { Family } from '../model/family.ts';
import type { Action, Block, Procedure, Repair, Stage, Step } from '../model/procedure.ts';
import type { Shop } from '../model/shop.ts';
import type { Allow, Named, NameUse, Source } from '../model/source.ts';
import { figuresWritten, partGateId } from '../model/steps.ts';
import { joined, say } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { nearest } from '../syntax/nearest.ts';
import { textOf } from '../syntax/place.ts';
import { type Draft, none } from './action-of.ts';
import { lowerAllow } from './allows.ts';
import { type BodyBlock, lowerBody } from './body.ts';
import type { Context } from './context.ts';
import { ExpansionSize, mostSteps, outlineOf } from './expansion.ts';
import { languageOf } from './language.ts';
import { findLike, hasBeginning } from './like-chain.ts';
import {
  type AddressedHazard,
  addressedObject,
  addressees,
  addressesOf,
  addressOf,
  type LoweredStep,
  lowerHazard,
  plainAddress,
  StepLowering,
  type StepMemo,
  type StepScope,
  unquoted,
  verbOf,
} from './lower-steps.ts';
import { LoweredBlock } from './lowered-block.ts';
import { Memo } from './memo.ts';
import { lowerEach } from './plans.ts';
import { type Scope, Sequences } from './scope.ts';
import { lowerDate, named } from './shop.ts';
import { figuresFrom, lowerPartNumber, lowerSpec } from './specs.ts';
import { unreadLine } from './unread.ts';

/** Makes a procedure plain data. Null where it has no family or shop to be replayed over (reported). */
export function lowerProcedure(
  context: Context,
  node: ast.Procedure,
  scope: Scope,
  memo: StepMemo = new Memo(),
): Procedure | null {
  const isLike = hasBeginning(context, node, scope);
  const heads = headsOf(context, node, scope, isLike);
  for (const item of node.items) {
    if (item.$type === 'Unread')
      unreadLine(context, item, [
        'spec',
        'number',
        'stage',
        'repair',
        'sequence',
        'instead',
        'after',
        'before',
        'without',
        'hazard',
        'allow',
        'figures',
      ]);
  }
  const { family, shop } = heads;
  if (family === null || shop === null || !isLike) return null;
  memo.begin([family, shop]);
  const source = figuresFrom(context, node.items);
  const specs = context.unique(
    node.items.flatMap((item) =>
      item.$type === 'Spec'
        ? [memo.recall(context, item, [source], () => lowerSpec(context, item, family, source))]
        : [],
    ),
    'spec',
  );
  const numbers = context.unique(
    node.items.flatMap((item) =>
      item.$type === 'PartNumber'
        ? [memo.recall(context, item, [...specs, source], () => lowerPartNumber(context, item, specs, family, source))]
        : [],
    ),
    'part number',
  );
  const body = lowerBody(context, node, scope);
  const sequences = new Sequences(body.sequences, scope);
  if (!canBeWrittenOut(context, node, body.blocks, sequences)) return null;
  const blocks = body.blocks.map((block) => ({ ...block, source: context.source(block.node, 'name') }));
  const stageBlocks = context.unique(
    blocks.filter((block) => block.kind === 'stage'),
    'stage',
  );
  const repairBlocks = context.unique(
    blocks.filter((block) => block.kind === 'repair'),
    'repair',
  );
  const tests = testsOf(context, [...stageBlocks, ...repairBlocks], family, sequences);
  const readings = [...tests, ...specs];
  const names: StepScope = {
    family,
    shop,
    specs,
    numbers,
    repairs: repairBlocks,
    tests,
    readings,
    readable: [...readings, ...shop.masters],
    sequences,
    scope,
    procedure: node,
  };
  const maker = new StepLowering(context, names, memo);
  const own = new Set<AstNode>(node.items);
  const stepsOf = (block: BodyBlock) =>
    heads.likeSource === null || own.has(block.node)
      ? maker.steps(block.lines)
      : context.expand({ message: say`${node.name} takes this over here.`, source: heads.likeSource }, () =>
          maker.steps(block.lines),
        );
  /** What it was made into before, if it is the same: then it is the same object. */
  const lowered = <B extends Block>(block: BodyBlock, prefix: string, build: (base: BlockBase) => B) => {
    const make = (): LoweredBlock<B> => {
      const head = blockHead(context, block, shop);
      const { steps, ...more } = stepsOf(block);
      const sourced = numbered(steps, prefix, block.name).map((step) => withSource(step, source));
      return new LoweredBlock(build({ ...head, steps: sourced }), more);
    };
    // Patched lines are in other places than their block.
    if (block.lines !== block.node.lines) return make();
    const name = `${block.kind} ${block.name}`;
    return memo.recall(context, block.node, [prefix, block.title, block.station, source], make, maker.isSame, name);
  };
  const stages = stageBlocks.map((block, index) =>
    lowered(block, `${index + 1}.`, (base): Stage => ({ ...base, together: block.together })),
  );
  const written = repairBlocks.map((block, index) =>
    lowered(
      block,
      `R${index + 1}.`,
      (base): Repair => ({
        ...base,
        tries: null,
        inline: false,
        eachOf: eachOf(context, family, block.node),
      }),
    ),
  );
  const all = [...stages, ...written];
  const hazards = body.hazards
    .filter((hazard) => hazard.step === undefined)
    .map((hazard) => lowerHazard(context, hazard));
  for (const { step } of body.hazards) if (step !== undefined) plainAddress(context, step);
  const addressed = [
    ...all.flatMap((block) => block.addressed),
    ...body.hazards.flatMap((node) => {
      const { step } = node;
      if (step === undefined) return [];
      return memo.recall(context, node, [], (): AddressedHazard => {
        const hazard = lowerHazard(context, node);
        return { hazard, verb: verbOf(step.verb), object: addressedObject(context, step), source: hazard.source };
      });
    }),
  ];
  const placed = placeHazards(context, family, all, addressed, memo);
  const inline = inlineRepairs(
    all.flatMap((block) => block.repairs),
    written.length,
  );
  const repairs = withTries(all, [...(placed.slice(stages.length) as Repair[]), ...inline]);
  return {
    ...named(context, node),
    ...heads,
    language: heads.language ?? shop.language,
    extent: context.source(node),
    files: [
      ...new Set([
        ...[node, ...basesOf(node, scope)].map((one) => context.source(one).file),
        family.source.file,
        shop.source.file,
        ...all.flatMap((block) => block.files),
      ]),
    ],
    family,
    shop,
    specs,
    numbers,
    stages: placed.slice(0, stages.length) as Stage[],
    repairs,
    hazards,
    allow: [
      ...heads.allow,
      ...node.items.flatMap((item) => (item.$type === 'Allow' ? [lowerAllow(context, item)] : [])),
    ],
  };
}

/** A figure that is written in a step comes from where the procedure says, unless the step says so itself. */
function withSource(step: Step, source: string | null): Step {
  return source === null || step.sourceText !== null || figuresWritten(step).length === 0
    ? step
    : { ...step, sourceText: source };
}

interface Heads {
  family: Family | null;
  shop: Shop | null;
  revision: string | null;
  language: string | null;
  writtenBy: string | null;
  approvedBy: string | null;
  approvedOn: string | null;
  like: string | null;
  likeSource: NameUse['source'] | null;
  allow: Allow[];
}

function headsOf(context: Context, node: ast.Procedure, scope: Scope, isLike: boolean): Heads {
  const heads: Heads = {
    family: null,
    shop: null,
    revision: null,
    language: null,
    writtenBy: null,
    approvedBy: null,
    approvedOn: null,
    like: null,
    likeSource: null,
    allow: [],
  };
  const saidFor = node.heads.some((head) => head.$type === 'ForFamily');
  const saidAt = node.heads.some((head) => head.$type === 'AtShop');
  const seen = new Set<string>();
  for (const head of node.heads) {
    if (seen.has(head.$type) && head.$type !== 'HeadAllow')
      context.syntax(
        'written-twice',
        say`${textOf(head).split(' ')[0]!} appears twice in the head of ${node.name}. Delete one.`,
        context.source(head),
      );
    seen.add(head.$type);
    switch (head.$type) {
      case 'ForFamily':
        heads.family = lookUp(context, head.family, 'family', scope.family(head.family.name), scope);
        break;
      case 'AtShop':
        heads.shop = lookUp(context, head.shop, 'shop', scope.shop(head.shop.name), scope);
        break;
      case 'LikeProcedure': {
        heads.like = head.procedure.name;
        heads.likeSource = context.source(head.procedure);
        const base = scope.procedure(head.procedure.name);
        if (base === null) break;
        context.link(context.source(head.procedure), context.source(base, 'name'), head.procedure.name, 'procedure');
        const taken = isLike ? inheritedHeads(base, scope) : null;
        heads.family ??= saidFor ? null : (taken?.family ?? null);
        heads.shop ??= saidAt ? null : (taken?.shop ?? null);
        break;
      }
      case 'InRevision':
        heads.revision = unquoted(head.revision);
        break;
      case 'InLanguage':
        heads.language = languageOf(context, head, head.language);
        break;
      case 'WrittenBy':
        heads.writtenBy = head.person;
        break;
      case 'ApprovedBy':
        heads.approvedBy = head.person;
        heads.approvedOn = head.date === undefined ? null : lowerDate(context, head, 'date', head.date);
        break;
      case 'HeadAllow':
        heads.allow.push(lowerAllow(context, head.allow));
        break;
    }
  }
  const [noFamily, noShop] = [!saidFor && heads.family === null, !saidAt && heads.shop === null];
  if ((noFamily || noShop) && heads.like !== null && isLike)
    context.syntax(
      'head-incomplete',
      say`${node.name} is not checked: it takes ${noFamily ? say`its family` : say`its shop`} from ${heads.like}, where it is missing or unknown. Correct it there, or add “${noFamily ? say`for FAMILY` : say`at SHOP`}” here.`,
      context.source(node, 'name'),
    );
  // What is written and could not be read is reported where the reading stopped.
  const isUnread = (word: string) => unquotedHead(node).split(/\s+/u).includes(word);
  if ((noFamily || noShop) && heads.like === null && !(noFamily && isUnread('for')) && !(noShop && isUnread('at'))) {
    const lacks =
      noFamily && noShop
        ? say`neither says which family it is for nor at which shop it is done: add “for FAMILY at SHOP”`
        : noFamily
          ? say`does not say which family it is for: add “for FAMILY”`
          : say`does not say at which shop it is done: add “at SHOP”`;
    context.syntax(
      'head-incomplete',
      say`Procedure ${node.name} ${lacks} to its head. Until then the procedure is not checked.`,
      context.source(node, 'name'),
    );
  }
  return heads;
}

/** The head as it is written, up to its brace, without words in quotes. */
function unquotedHead(node: ast.Procedure): string {
  return (textOf(node).split('{')[0] ?? '').replace(/"[^"\n]*"/gu, '');
}

/** Links a name of the workspace where it is written, or reports that it is none. */
export function lookUp<T extends Named>(
  context: Context,
  ref: ast.NameRef,
  what: 'family' | 'shop',
  found: T | null,
  scope: Scope,
): T | null {
  const use = context.source(ref);
  if (found === null)
    context.isUnknown(ref.name, what, scope.nearest(ref.name, what === 'family' ? 'Family' : 'Shop'), use);
  else context.link(use, found.source, ref.name, what);
  return found;
}

/** Family and shop of the procedure that another is like, through a chain of them that has a beginning. */
function inheritedHeads(node: ast.Procedure, scope: Scope): { family: Family | null; shop: Shop | null } {
  const head = <T extends ast.ProcedureHead>(type: T['$type']) =>
    node.heads.find((other) => other.$type === type) as T | undefined;
  const family = head<ast.ForFamily>('ForFamily')?.family.name;
  const shop = head<ast.AtShop>('AtShop')?.shop.name;
  const like = findLike(node);
  const base = like === undefined ? null : scope.procedure(like.procedure.name);
  const further = base === null ? null : inheritedHeads(base, scope);
  return {
    family: (family === undefined ? null : scope.family(family)) ?? further?.family ?? null,
    shop: (shop === undefined ? null : scope.shop(shop)) ?? further?.shop ?? null,
  };
}

/** Whether the steps can be written out. Reports the call that makes too many of them. */
function canBeWrittenOut(
  context: Context,
  node: ast.Procedure,
  blocks: readonly BodyBlock[],
  sequences: Sequences,
): boolean {
  const writtenOut = new ExpansionSize(sequences);
  if (blocks.reduce((sum, { lines }) => sum + writtenOut.count(lines), 0) <= mostSteps) return true;
  const call = writtenOut.culprit(blocks.flatMap(({ lines }) => lines));
  const what = call === null ? say`Procedure ${node.name}` : say`Sequence ${call.name.name}`;
  context.syntax(
    'endless-steps',
    say`${what} has more than ${mostSteps} steps once every sequence is expanded: nobody can follow that, and it is not checked. Have the sequences call one another less.`,
    call === null ? context.source(node, 'name') : context.source(call.name),
  );
  return false;
}

/** Tests by name: those of the body, of its sequences' callers, and what the family is proven by. */
function testsOf(context: Context, blocks: readonly BodyBlock[], family: Family, sequences: Sequences): NameUse[] {
  const tests = new Map<string, NameUse>();
  const called = new Set<ast.Sequence>();
  const read = (lines: readonly ast.StepLine[]) => {
    const { tests: written, calls } = outlineOf(lines);
    for (const { name: ref } of written)
      if (!tests.has(ref.name)) tests.set(ref.name, { name: ref.name, source: context.source(ref) });
    for (const { clauses } of written)
      for (const clause of clauses)
        if (clause.$type === 'WorkedClause')
          for (const { name, source } of [clause.first, clause.second].map((one) => named(context, one)))
            if (!tests.has(name)) tests.set(name, { name, source });
    for (const call of calls) {
      const sequence = sequences.get(call.name.name);
      if (sequence !== undefined) called.add(sequence);
    }
  };
  for (const { lines } of blocks) read(lines);
  // A set takes what is put into it while it is walked.
  for (const { lines } of called) read(lines);
  return [...tests.values(), ...family.provenBy.filter(({ name }) => !tests.has(name))];
}

/** `for each cylinder that failed`. */
function eachOf(context: Context, family: Family, node: ast.Stage | ast.Repair): string | null {
  return node.$type === 'Repair' && node.places !== undefined ? lowerEach(context, family, node.places) : null;
}

type BlockBase = ReturnType<typeof blockHead> & Pick<Block, 'steps'>;

function blockHead(context: Context, block: BodyBlock, shop: Shop) {
  return {
    name: block.name,
    title: block.title,
    source: context.source(block.node, 'name' in block.node ? 'name' : undefined),
    station:
      block.station === null
        ? null
        : (context.find(block.station.name, 'station', shop.stations, context.source(block.station))?.name ?? null),
    allow: block.allows.map((allow) => lowerAllow(context, allow)),
  };
}

/** Gives each step its printed number (2.3, and 2.3a, 2.3b for a call) and its key. */
function numbered(made: readonly LoweredStep[], prefix: string, place: string): Step[] {
  const seen = new Map<string, number>();
  let [last, inGroup] = [0, 0];
  return made.map((one) => {
    const { step, group } = one;
    inGroup = group === last ? inGroup + 1 : 0;
    last = group;
    const letter = step.call === null ? '' : letters(inGroup);
    const bare = `${place}/${[step.verb, keyOf(step)].join(' ').trim()}`;
    const ordinal = (seen.get(bare) ?? 0) + 1;
    seen.set(bare, ordinal);
    one.step = numberedStep(step, `${prefix}${group}${letter}`, ordinal === 1 ? bare : `${bare} (${ordinal})`);
    return one.step;
  });
}

/** The same step where it was numbered so before. Two checks of one part are two gates: each is passed for itself. */
function numberedStep(step: Step, number: string, key: string): Step {
  if (step.number === number && step.key === key) return step;
  // One that has no number yet is nobody else's.
  const made: Draft<Step> = step.number === '' ? step : { ...step };
  made.number = number;
  made.key = key;
  if ((made.verb === 'check' || made.verb === 'measure') && made.gate !== null)
    made.gate = { ...made.gate, id: `${partGateId(made.gate.kind, made.objects)} (${number})` };
  return made;
}

/** What tells steps of one verb apart: what they judge, or their first object. */
function keyOf(step: Action): string {
  switch (step.verb) {
    case 'test':
    case 'across':
    case 'set':
      return step.gate.test;
    case 'check':
      return step.objects.map(({ name }) => name).join(', ');
    case 'measure':
      return (step.gate === null ? step.objects.slice(0, 1) : step.objects).map(({ name }) => name).join(', ');
    default:
      return step.objects[0]?.name ?? '';
  }
}

/** What a procedure is `like`, and what that is like, as far as the ring or the chain goes. */
function basesOf(node: ast.Procedure, scope: Scope): ast.Procedure[] {
  const bases: ast.Procedure[] = [];
  const baseOf = (one: ast.Procedure) => {
    const like = findLike(one);
    return like === undefined ? null : scope.procedure(like.procedure.name);
  };
  for (let base = baseOf(node); base !== null && !bases.includes(base); base = baseOf(base)) bases.push(base);
  return bases;
}

/** a, b, … z, aa, ab, … */
function letters(index: number): string {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26) - 1) + last;
}

/** Repairs written inside `on fail`, once each, numbered behind those with a block of their own. */
function inlineRepairs(repairs: readonly Repair[], before: number): Repair[] {
  const once = new Map<string, Repair>();
  for (const repair of repairs) if (!once.has(repair.name)) once.set(repair.name, repair);
  return [...once.values()].map((repair, index) => {
    const prefix = `R${before + index + 1}.`;
    const known = numberedRepairs.get(repair);
    if (known?.steps[0]?.number === `${prefix}1`) return known;
    const steps = repair.steps.map((step, place) => ({
      ...step,
      number: `${prefix}${place + 1}`,
      key: `${repair.name}/${step.verb}`,
    }));
    const made = { ...repair, steps };
    numberedRepairs.set(repair, made);
    return made;
  });
}

/** Repairs that are written inside `on fail`, with their numbers: one that is the same stays the same object. */
const numberedRepairs = new WeakMap<Repair, Repair>();

/** A repair is tried as often as the most generous of its mentions says; null: without limit. */
function withTries(blocks: readonly LoweredBlock[], repairs: readonly Repair[]): Repair[] {
  const counts = new Map<string, number>();
  for (const block of blocks)
    for (const [repair, tries] of block.tries) counts.set(repair, Math.max(tries, counts.get(repair) ?? tries));
  return repairs.map((repair) => {
    const most = counts.get(repair.name) ?? (byDegrees(repair) ? Number.POSITIVE_INFINITY : 1);
    const tries = Number.isFinite(most) ? most : null;
    if (repair.tries === tries) return repair;
    const before = tried.get(repair);
    const made = before?.tries === tries ? before : { ...repair, tries };
    tried.set(repair, made);
    return made;
  });
}

/** Repairs with their tries, so that one that is the same stays the same object. */
const tried = new WeakMap<Repair, Repair>();

/** It brings a reading nearer each time, so that one try is not what is meant where no count is written. */
export function byDegrees(repair: Repair): boolean {
  return repair.steps.some((step) => step.verb === 'choose' || step.verb === 'set');
}

/** Puts hazards that name their steps at these. Reports those that no step is named by. */
function placeHazards(
  context: Context,
  family: Family,
  lowered: readonly LoweredBlock[],
  addressed: readonly AddressedHazard[],
  memo: StepMemo,
): Block[] {
  if (addressed.length === 0) return lowered.map(({ block }) => block);
  const byAddress = new Map<string, AddressedHazard[]>();
  for (const one of addressed) {
    const address = addressOf(one.verb, one.object?.name ?? null);
    const same = byAddress.get(address);
    if (same === undefined) byAddress.set(address, [one]);
    else same.push(one);
  }
  const order = new Map(addressed.map((one, index) => [one, index]));
  const verbs = new Set(addressed.map(({ verb }) => verb));
  /** The first step of each address. */
  const named = new Map<string, Step>();
  const lists = new Map<string, readonly AddressedHazard[]>();
  const hazardsAt = (step: Step) => {
    if (!verbs.has(step.verb)) return none;
    const addresses = addressesOf(step);
    const key = addresses.join('\n');
    let list = lists.get(key);
    if (list === undefined) {
      for (const address of addresses) if (byAddress.has(address) && !named.has(address)) named.set(address, step);
      const all = addresses.flatMap((address) => byAddress.get(address) ?? []);
      // The list that there was before, if it is the same: then its steps are the same too.
      list = memo.sameList(
        key,
        all.sort((a, b) => order.get(a)! - order.get(b)!),
      );
      lists.set(key, list);
    }
    return list;
  };
  const blocks = lowered.map((block) => block.withHazards(hazardsAt));
  for (const { verb, object, source } of addressed) {
    const address = addressOf(verb, object?.name ?? null);
    const step = named.get(address);
    if (step !== undefined) {
      if (object !== null) context.link(object.source, namedBy(family, step, object.name), object.name, 'step');
      continue;
    }
    const objects = blocks.flatMap(({ steps }) =>
      steps.flatMap((step) => (step.verb === verb ? addressees(step) : [])),
    );
    const near = object === null ? [] : nearest(object.name, objects);
    context.syntax(
      'no-such-step',
      say`This hazard is for “${address}”, and there is no such step. ${
        near.length > 0
          ? say`Did you mean ${joined(
              near.map((name) => `${verb} ${name}`),
              say` or `,
            )}?`
          : say`Name the step by its verb and first object.`
      }`,
      source,
    );
  }
  return blocks;
}

/** Where what a hazard names its step by is declared: what the step acts on, or else the step, which has its reading. */
function namedBy({ parts, faces, ports, adjusters }: Family, { objects, source }: Step, name: string): Source {
  const [object] = objects;
  if (object === undefined || object.name !== name) return source;
  const declared = {
    part: parts,
    face: faces.map((face) => ({ ...face, name: face.id })),
    port: ports,
    adjuster: adjusters,
  }[object.kind];
  return declared.find((one) => one.name === name)?.source ?? source;
}
