import type { Family } from '../model/family.ts';
import type { Action, Gate, Hazard, Procedure, Repair, Stage, Step } from '../model/procedure.ts';
import type { Shop } from '../model/shop.ts';
import type { Allow, Named, NameUse, Source } from '../model/source.ts';
import { failEntries } from '../model/steps.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { nearest } from '../syntax/nearest.ts';
import { textOf } from '../syntax/place.ts';
import { lowerAllow } from './allows.ts';
import { type BodyBlock, lowerBody } from './body.ts';
import type { Context } from './context.ts';
import { ExpansionSize, mostSteps } from './expansion.ts';
import { findLike, hasBeginning } from './like-chain.ts';
import {
  addressedObject,
  addressees,
  isAddressed,
  type LoweredStep,
  lowerHazard,
  plainAddress,
  StepLowering,
  type StepScope,
  unquoted,
  verbOf,
} from './lower-steps.ts';
import { type Scope, Sequences } from './scope.ts';
import { lowerDate, named } from './shop.ts';
import { lowerPartNumber, lowerSpec } from './specs.ts';
import { unreadLine } from './unread.ts';

/** Makes a procedure plain data. Null where it has no family or shop to be replayed over (reported). */
export function lowerProcedure(context: Context, node: ast.Procedure, scope: Scope): Procedure | null {
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
      ]);
  }
  const { family, shop } = heads;
  if (family === null || shop === null || !isLike) return null;
  const specs = context.unique(
    node.items.flatMap((item) => (item.$type === 'Spec' ? [lowerSpec(context, item, family)] : [])),
    'spec',
  );
  const numbers = context.unique(
    node.items.flatMap((item) => (item.$type === 'PartNumber' ? [lowerPartNumber(context, item, specs, family)] : [])),
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
  const names: StepScope = {
    family,
    shop,
    specs,
    numbers,
    repairs: repairBlocks,
    tests: testsOf(context, [...stageBlocks, ...repairBlocks], family, sequences),
    sequences,
    scope,
    procedure: node,
  };
  const maker = new StepLowering(context, names);
  const stepsOf = (block: BodyBlock) =>
    heads.likeSource === null || node.items.some((item) => item === block.node)
      ? maker.steps(block.lines)
      : context.expand({ message: `${node.name} takes this over here.`, source: heads.likeSource }, () =>
          maker.steps(block.lines),
        );
  const stages = stageBlocks.map(
    (block, index): Stage => ({
      ...blockHead(context, block, shop),
      together: block.together,
      allow: block.allows.map((allow) => lowerAllow(context, allow)),
      steps: numbered(stepsOf(block), `${index + 1}.`, block.name),
    }),
  );
  const written = repairBlocks.map(
    (block, index): Repair => ({
      ...blockHead(context, block, shop),
      steps: numbered(stepsOf(block), `R${index + 1}.`, block.name),
      tries: null,
      inline: false,
      allow: block.allows.map((allow) => lowerAllow(context, allow)),
    }),
  );
  const hazards = body.hazards
    .filter((hazard) => hazard.step === undefined)
    .map((hazard) => lowerHazard(context, hazard));
  for (const { step } of body.hazards) if (step !== undefined) plainAddress(context, step);
  const addressed = [
    ...maker.addressed,
    ...body.hazards.flatMap((hazard) =>
      hazard.step === undefined
        ? []
        : [
            {
              hazard: lowerHazard(context, hazard),
              verb: verbOf(hazard.step.verb),
              object: addressedObject(context, hazard.step),
              source: context.source(hazard),
            },
          ],
    ),
  ];
  const withHazards = placeHazards(context, family, stages, written, addressed);
  const repairs = withTries(withHazards.stages, [
    ...withHazards.repairs,
    ...inlineRepairs(maker.inlineRepairs, written.length),
  ]);
  return {
    ...named(context, node),
    ...heads,
    extent: context.source(node),
    files: [
      ...new Set([
        ...[node, ...basesOf(node, scope)].map((one) => context.source(one).file),
        family.source.file,
        shop.source.file,
        ...maker.files,
      ]),
    ],
    family,
    shop,
    specs,
    numbers,
    stages: withHazards.stages,
    repairs,
    hazards,
    allow: [
      ...heads.allow,
      ...node.items.flatMap((item) => (item.$type === 'Allow' ? [lowerAllow(context, item)] : [])),
    ],
  };
}

interface Heads {
  family: Family | null;
  shop: Shop | null;
  revision: string | null;
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
        `${textOf(head).split(' ')[0]} appears twice in the head of ${node.name}. Delete one.`,
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
      `${node.name} is not checked: it takes ${noFamily ? 'its family' : 'its shop'} from ${heads.like}, where it is missing or unknown. Correct it there, or add “${noFamily ? 'for FAMILY' : 'at SHOP'}” here.`,
      context.source(node, 'name'),
    );
  if ((noFamily || noShop) && heads.like === null) {
    const lacks =
      noFamily && noShop
        ? 'neither says which family it is for nor at which shop it is done: add “for FAMILY at SHOP”'
        : noFamily
          ? 'does not say which family it is for: add “for FAMILY”'
          : 'does not say at which shop it is done: add “at SHOP”';
    context.syntax(
      'head-incomplete',
      `Procedure ${node.name} ${lacks} to its head. Until then the procedure is not checked.`,
      context.source(node, 'name'),
    );
  }
  return heads;
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
  const lines = blocks.flatMap((block) => block.lines);
  if (writtenOut.count(lines) <= mostSteps) return true;
  const call = writtenOut.culprit(lines);
  const what = call === null ? `Procedure ${node.name}` : `Sequence ${call.name.name}`;
  context.syntax(
    'endless-steps',
    `${what} has more than ${mostSteps} steps once every sequence is expanded: nobody can follow that, and it is not checked. Have the sequences call one another less.`,
    call === null ? context.source(node, 'name') : context.source(call.name),
  );
  return false;
}

/** Tests by name: those of the body, of its sequences' callers, and what the family is proven by. */
function testsOf(context: Context, blocks: readonly BodyBlock[], family: Family, sequences: Sequences): NameUse[] {
  const tests = new Map<string, NameUse>();
  const called = new Set<ast.Sequence>();
  const read = (lines: readonly ast.StepLine[]) => {
    for (const step of lines.flatMap(({ steps }) => steps)) {
      if (step.$type === 'OnlySteps') read(step.lines);
      else if (step.$type === 'TestStep' && !tests.has(step.name.name))
        tests.set(step.name.name, { name: step.name.name, source: context.source(step.name) });
      const sequence = step.$type === 'Call' ? sequences.get(step.name.name) : undefined;
      if (sequence !== undefined) called.add(sequence);
    }
  };
  for (const { lines } of blocks) read(lines);
  // A set takes what is put into it while it is walked.
  for (const { lines } of called) read(lines);
  return [...tests.values(), ...family.provenBy.filter(({ name }) => !tests.has(name))];
}

function blockHead(context: Context, block: BodyBlock, shop: Shop) {
  return {
    name: block.name,
    title: block.title,
    source: context.source(block.node, 'name' in block.node ? 'name' : undefined),
    station:
      block.station === null
        ? null
        : (context.find(block.station.name, 'station', shop.stations, context.source(block.station))?.name ?? null),
  };
}

/** Gives each step its printed number (2.3, and 2.3a, 2.3b for a call) and its key. */
function numbered(made: readonly LoweredStep[], prefix: string, place: string): Step[] {
  const seen = new Map<string, number>();
  return made.map(({ step, group }, index) => {
    const letter =
      step.call === null ? '' : letters(made.slice(0, index).filter((other) => other.group === group).length);
    const bare = `${place}/${[step.verb, keyOf(step)].join(' ').trim()}`;
    const ordinal = (seen.get(bare) ?? 0) + 1;
    seen.set(bare, ordinal);
    const number = `${prefix}${group}${letter}`;
    return numberedStep(step, number, ordinal === 1 ? bare : `${bare} (${ordinal})`);
  });
}

/** Two checks of one part are two gates: each is passed for itself. */
function numberedStep(step: Action, number: string, key: string): Step {
  const own = <G extends Gate>(gate: G): G => ({ ...gate, id: `${gate.id} (${number})` });
  if (step.verb === 'check') return { ...step, gate: own(step.gate), number, key };
  if (step.verb === 'measure' && step.gate !== null) return { ...step, gate: own(step.gate), number, key };
  return { ...step, number, key };
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
  const once = repairs.filter((repair, index) => repairs.findIndex((other) => other.name === repair.name) === index);
  return once.map((repair, index) => ({
    ...repair,
    steps: repair.steps.map((step, place) => ({
      ...step,
      number: `R${before + index + 1}.${place + 1}`,
      key: `${repair.name}/${step.verb}`,
    })),
  }));
}

/** A repair is tried as often as the most generous of its mentions says; null: without limit. */
function withTries(stages: readonly Stage[], repairs: readonly Repair[]): Repair[] {
  const entries = [...stages, ...repairs].flatMap((block) => block.steps.flatMap((step) => failEntries(step)));
  return repairs.map((repair) => {
    const counts = entries.filter((entry) => entry.repair === repair.name).flatMap((entry) => entry.tries ?? []);
    const most = counts.length === 0 ? (byDegrees(repair) ? Number.POSITIVE_INFINITY : 1) : Math.max(...counts);
    return { ...repair, tries: Number.isFinite(most) ? most : null };
  });
}

/** It brings a reading nearer each time, so that one try is not what is meant where no count is written. */
export function byDegrees(repair: Repair): boolean {
  return repair.steps.some((step) => step.verb === 'choose' || step.verb === 'set');
}

function placeHazards(
  context: Context,
  family: Family,
  stages: readonly Stage[],
  repairs: readonly Repair[],
  addressed: readonly { hazard: Hazard; verb: string; object: NameUse | null; source: Hazard['source'] }[],
) {
  const fits = isAddressed;
  const steps = [...stages, ...repairs].flatMap((block) => block.steps);
  for (const { verb, object, source } of addressed) {
    const step = steps.find((one) => fits(one, verb, object));
    if (step !== undefined) {
      if (object !== null) context.link(object.source, namedBy(family, step, object.name), object.name, 'step');
      continue;
    }
    const objects = steps.flatMap((step) => (step.verb === verb ? addressees(step) : []));
    const near = object === null ? [] : nearest(object.name, objects);
    context.syntax(
      'no-such-step',
      `This hazard is for “${[verb, object?.name].filter(Boolean).join(' ')}”, and there is no such step. ${near.length > 0 ? `Did you mean ${near.map((name) => `${verb} ${name}`).join(' or ')}?` : 'Name the step by its verb and first object.'}`,
      source,
    );
  }
  const put = <T extends Stage | Repair>(block: T): T => ({
    ...block,
    steps: block.steps.map((step) => {
      const more = addressed.filter(({ verb, object }) => fits(step, verb, object)).map(({ hazard }) => hazard);
      return more.length === 0 ? step : { ...step, hazards: [...step.hazards, ...more] };
    }),
  });
  return { stages: stages.map(put), repairs: repairs.map(put) };
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
