import type * as ast from '../grammar/generated/ast.ts';
import type { Family } from '../model/family.ts';
import type { Hazard, Procedure, Repair, Stage, Step } from '../model/procedure.ts';
import type { Shop } from '../model/shop.ts';
import type { Allow, NameUse } from '../model/source.ts';
import { allowOf } from './allows.ts';
import { type BodyBlock, bodyOf, type FindProcedure } from './body.ts';
import type { Context } from './context.ts';
import { dateOf, named } from './shop.ts';
import { partNumberOf, specOf } from './specs.ts';
import { hazardOf, isAddressed, type MadeStep, type Names, StepMaker, unquoted } from './steps.ts';
import { unreadLine } from './unread.ts';

/** What a procedure finds in the workspace. */
export interface World {
  readonly shops: readonly Shop[];
  readonly families: readonly Family[];
  readonly sequences: ReadonlyMap<string, ast.Sequence>;
  readonly findProcedure: FindProcedure;
}

/** Makes a procedure plain data. Null where it has no family or shop to be replayed over (reported). */
export function procedureOf(context: Context, node: ast.Procedure, world: World): Procedure | null {
  const heads = headsOf(context, node, world);
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
  if (family === null || shop === null) return null;
  const specs = context.unique(
    node.items.flatMap((item) => (item.$type === 'Spec' ? [specOf(context, item, family)] : [])),
    'spec',
  );
  const numbers = context.unique(
    node.items.flatMap((item) => (item.$type === 'PartNumber' ? [partNumberOf(context, item, specs, family)] : [])),
    'part number',
  );
  const body = bodyOf(context, node, world.findProcedure);
  const blocks = body.blocks.map((block) => ({ ...block, source: context.source(block.node, 'name') }));
  const stageBlocks = context.unique(
    blocks.filter((block) => block.kind === 'stage'),
    'stage',
  );
  const repairBlocks = context.unique(
    blocks.filter((block) => block.kind === 'repair'),
    'repair',
  );
  const names: Names = {
    family,
    shop,
    specs,
    numbers,
    repairs: repairBlocks,
    tests: testsOf(context, [...stageBlocks, ...repairBlocks], family),
    sequences: new Map([...world.sequences, ...body.sequences]),
    procedure: node,
  };
  const maker = new StepMaker(context, names);
  const stages = stageBlocks.map(
    (block, index): Stage => ({
      ...blockHead(context, block, shop),
      together: block.together,
      allow: block.allows.map((allow) => allowOf(context, allow)),
      steps: numbered(maker.steps(block.lines), `${index + 1}.`, block.name),
    }),
  );
  const written = repairBlocks.map(
    (block, index): Repair => ({
      ...blockHead(context, block, shop),
      steps: numbered(maker.steps(block.lines), `R${index + 1}.`, block.name),
      tries: null,
      inline: false,
      allow: block.allows.map((allow) => allowOf(context, allow)),
    }),
  );
  const hazards = body.hazards.filter((hazard) => hazard.step === undefined).map((hazard) => hazardOf(context, hazard));
  const addressed = [
    ...maker.addressed,
    ...body.hazards.flatMap((hazard) =>
      hazard.step === undefined
        ? []
        : [
            {
              hazard: hazardOf(context, hazard),
              verb: hazard.step.verb.replace(/^clean ?/u, 'clean-'),
              object: hazard.step.object?.head ?? null,
              source: context.source(hazard),
            },
          ],
    ),
  ];
  const withHazards = placeHazards(context, stages, written, addressed);
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
        ...[node, ...basesOf(node, world)].map((one) => context.source(one).file),
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
    allow: [...heads.allow, ...node.items.flatMap((item) => (item.$type === 'Allow' ? [allowOf(context, item)] : []))],
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

function headsOf(context: Context, node: ast.Procedure, world: World): Heads {
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
  for (const head of node.heads) {
    switch (head.$type) {
      case 'ForFamily':
        heads.family = context.find(head.family.name, 'family', world.families, context.source(head.family));
        break;
      case 'AtShop':
        heads.shop = context.find(head.shop.name, 'shop', world.shops, context.source(head.shop));
        break;
      case 'LikeProcedure': {
        heads.like = head.procedure.name;
        heads.likeSource = context.source(head.procedure);
        const base = world.findProcedure(head.procedure.name);
        if (base === null) {
          context.unknown(head.procedure.name, 'procedure', [], context.source(head.procedure));
          break;
        }
        context.link(context.source(head.procedure), context.source(base, 'name'), head.procedure.name, 'procedure');
        const taken = base === node ? null : inheritedHeads(context, base, world, [node]);
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
        heads.approvedOn = head.date === undefined ? null : dateOf(context, head, 'date', head.date);
        break;
      case 'HeadAllow':
        heads.allow.push(allowOf(context, head.allow));
        break;
    }
  }
  const damaged = node.heads.length === 0;
  const missing = [
    !saidFor && heads.family === null ? 'for FAMILY' : '',
    !saidAt && heads.shop === null ? 'at SHOP' : '',
  ].filter(Boolean);
  if (missing.length > 0 && heads.like === null) {
    context.syntax(
      `Procedure ${node.name} says neither whom it is for nor where it is done: add ${missing.join(' and ')} to its head.`.replace(
        missing.length === 2 || damaged ? '' : 'says neither whom it is for nor where it is done',
        missing[0] === 'for FAMILY' ? 'does not say which family it is for' : 'does not say at which shop it is done',
      ),
      context.source(node, 'name'),
    );
  }
  return heads;
}

/** Family and shop of the procedure that another is like, through a chain of them. */
function inheritedHeads(
  context: Context,
  node: ast.Procedure,
  world: World,
  inside: readonly ast.Procedure[],
): { family: Family | null; shop: Shop | null } {
  const head = <T extends ast.ProcedureHead>(type: T['$type']) =>
    node.heads.find((other) => other.$type === type) as T | undefined;
  const family = head<ast.ForFamily>('ForFamily')?.family.name;
  const shop = head<ast.AtShop>('AtShop')?.shop.name;
  const like = head<ast.LikeProcedure>('LikeProcedure');
  const base = like === undefined ? null : world.findProcedure(like.procedure.name);
  const further =
    base === null || inside.includes(base) ? null : inheritedHeads(context, base, world, [...inside, node]);
  return {
    family: world.families.find((other) => other.name === family) ?? further?.family ?? null,
    shop: world.shops.find((other) => other.name === shop) ?? further?.shop ?? null,
  };
}

/** Tests by name: those of the body, of its sequences' callers, and what the family is proven by. */
function testsOf(context: Context, blocks: readonly BodyBlock[], family: Family): NameUse[] {
  const written = blocks.flatMap((block) =>
    block.lines.flatMap((line) =>
      line.steps.flatMap((step) =>
        step.$type === 'TestStep' ? [{ name: step.name.name, source: context.source(step.name) }] : [],
      ),
    ),
  );
  return [...written, ...family.provenBy];
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
function numbered(made: readonly MadeStep[], prefix: string, place: string): Step[] {
  const seen = new Map<string, number>();
  return made.map(({ step, group }, index) => {
    const letter =
      step.call === null ? '' : letters(made.slice(0, index).filter((other) => other.group === group).length);
    const bare = `${place}/${[step.verb, step.gate?.name.replace(/^(check|set|across|measure) /u, '') ?? step.objects[0]?.name ?? ''].join(' ').trim()}`;
    const ordinal = (seen.get(bare) ?? 0) + 1;
    seen.set(bare, ordinal);
    const number = `${prefix}${group}${letter}`;
    // Two checks of one part are two gates: each is passed for itself.
    const looks = step.verb === 'check' || step.verb === 'measure';
    const gate = step.gate === null || !looks ? step.gate : { ...step.gate, name: `${step.gate.name} (${number})` };
    return { ...step, gate, number, key: ordinal === 1 ? bare : `${bare} (${ordinal})` };
  });
}

/** What a procedure is `like`, and what that is like, as far as the ring or the chain goes. */
function basesOf(node: ast.Procedure, world: World): ast.Procedure[] {
  const bases: ast.Procedure[] = [];
  const baseOf = (one: ast.Procedure) => {
    const like = one.heads.find((head) => head.$type === 'LikeProcedure') as ast.LikeProcedure | undefined;
    return like === undefined ? null : world.findProcedure(like.procedure.name);
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
  const entries = [...stages, ...repairs].flatMap((block) => block.steps.flatMap((step) => step.gate?.onFail ?? []));
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
  stages: readonly Stage[],
  repairs: readonly Repair[],
  addressed: readonly { hazard: Hazard; verb: string; object: string | null; source: Hazard['source'] }[],
) {
  const fits = isAddressed;
  for (const { verb, object, source } of addressed) {
    if (![...stages, ...repairs].some((block) => block.steps.some((step) => fits(step, verb, object)))) {
      context.syntax(
        `This hazard stands for “${[verb, object].filter(Boolean).join(' ')}”, and there is no such step. Name the step by its verb and first object.`,
        source,
      );
    }
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
