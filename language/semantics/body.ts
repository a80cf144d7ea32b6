import type { AstNode } from 'langium';
import type { Source } from '../model/source.ts';
import { joined, type Said, say } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { nearest } from '../syntax/nearest.ts';
import { textOf } from '../syntax/place.ts';
import type { Context } from './context.ts';
import { findLike } from './like-chain.ts';
import { lowerCount } from './limits.ts';
import { pathText, verbOf } from './lower-steps.ts';
import type { Scope } from './scope.ts';

/** A stage or repair before its lines are made into steps: patches of `like` act on these. */
export interface BodyBlock {
  readonly kind: 'stage' | 'repair';
  readonly name: string;
  readonly title: string;
  readonly station: ast.NameRef | null;
  readonly together: boolean;
  readonly lines: readonly ast.StepLine[];
  readonly allows: readonly ast.Allow[];
  readonly node: ast.Stage | ast.Repair;
}

/** The stages and repairs of a procedure, with those of the one that it is `like` patched in. */
export interface Body {
  readonly blocks: readonly BodyBlock[];
  readonly sequences: ReadonlyMap<string, ast.Sequence>;
  readonly hazards: readonly ast.Hazard[];
}

/** Own blocks of a procedure, and those it takes over, patched. What it is like has a beginning (`hasBeginning`). */
export function lowerBody(
  context: Context,
  node: ast.Procedure,
  scope: Scope,
  known = new Map<ast.Procedure, Body>(),
): Body {
  const before = known.get(node);
  if (before !== undefined) return before;
  const body = madeBody(context, node, scope, known);
  known.set(node, body);
  return body;
}

const patchTypes: readonly string[] = ['InsteadOf', 'After', 'Before', 'Without'] satisfies ast.Patch['$type'][];

function isPatch(item: ast.ProcedureItem): item is ast.Patch {
  return patchTypes.includes(item.$type);
}

function madeBody(context: Context, node: ast.Procedure, scope: Scope, known: Map<ast.Procedure, Body>): Body {
  const like = findLike(node);
  const own = node.items.flatMap((item) => (item.$type === 'Stage' || item.$type === 'Repair' ? [blockOf(item)] : []));
  const sequences = new Map(
    node.items.flatMap((item) => (item.$type === 'Sequence' ? [[item.name, item] as const] : [])),
  );
  const hazards = node.items.filter((item) => item.$type === 'Hazard') as ast.Hazard[];
  const patches = node.items.filter(isPatch);
  const base = like === undefined ? null : scope.procedure(like.procedure.name);
  if (base === null) {
    for (const patch of patches)
      context.syntax(
        'patch-without-effect',
        say`There is nothing to patch: this procedure is not written like another.`,
        context.source(patch),
      );
    return { blocks: own, sequences, hazards };
  }
  const inherited = lowerBody(context, base, scope, known);
  const patched = patchAll(context, inherited.blocks, patches);
  return {
    blocks: [
      ...patched.filter((block) => !own.some((other) => other.kind === block.kind && other.name === block.name)),
      ...own,
    ],
    sequences: new Map([...inherited.sequences, ...sequences]),
    hazards: [...inherited.hazards, ...hazards],
  };
}

function blockOf(node: ast.Stage | ast.Repair): BodyBlock {
  const stage = node.$type === 'Stage';
  return {
    kind: stage ? 'stage' : 'repair',
    name: node.name,
    title: node.title ?? node.name,
    station: node.station ?? null,
    together: stage && (node as ast.Stage).together !== undefined && Boolean((node as ast.Stage).together),
    lines: node.lines,
    allows: node.allows,
    node,
  };
}

function patchAll(context: Context, blocks: readonly BodyBlock[], patches: readonly ast.Patch[]): BodyBlock[] {
  let now = [...blocks];
  const touched = new Map<AstNode, Source>();
  const touch = (target: AstNode, patch: ast.Patch): boolean => {
    const earlier = touched.get(target);
    if (earlier !== undefined)
      context.syntax(
        'patch-without-effect',
        say`Two patches touch the same step: it would not be clear which comes first. Combine them into one.`,
        context.source(patch),
      );
    touched.set(target, context.source(patch));
    return earlier === undefined;
  };
  /** Blocks that are replaced or taken out whole: a patch inside one would be lost. */
  const whole = new Set(
    patches.flatMap((patch) =>
      'stage' in patch && patch.stage !== undefined
        ? [`stage ${patch.stage.name}`]
        : 'repair' in patch && patch.repair !== undefined
          ? [`repair ${patch.repair.name}`]
          : [],
    ),
  );
  const touchStep = (target: ast.Step, patch: ast.Patch): boolean => {
    const block = blocks.find(({ lines }) => flat(lines).includes(target));
    const name = `${block?.kind} ${block?.name}`;
    if (!whole.has(name)) return touch(target, patch);
    context.syntax(
      'patch-without-effect',
      say`This step is in ${name}, which another patch replaces or deletes: this patch would change nothing. Delete it, or put its steps there.`,
      context.source(patch),
    );
    return false;
  };
  for (const patch of patches) {
    if ('stage' in patch && patch.stage !== undefined)
      now = patchBlock(context, now, patch, 'stage', patch.stage, touch);
    else if ('repair' in patch && patch.repair !== undefined)
      now = patchBlock(context, now, patch, 'repair', patch.repair, touch);
    else if (patch.step !== undefined) now = patchStep(context, now, blocks, patch, patch.step, touchStep);
  }
  return now;
}

function patchBlock(
  context: Context,
  blocks: readonly BodyBlock[],
  patch: ast.Patch,
  kind: BodyBlock['kind'],
  ref: ast.NameRef,
  touch: (target: AstNode, patch: ast.Patch) => boolean,
): BodyBlock[] {
  const target = blocks.find((block) => block.kind === kind && block.name === ref.name);
  if (target === undefined) {
    context.unknown(
      ref.name,
      kind,
      blocks.filter((block) => block.kind === kind).map((block) => block.name),
      context.source(ref),
    );
    return [...blocks];
  }
  context.link(context.source(ref), context.source(target.node, 'name'), ref.name, kind);
  if (!touch(target.node, patch)) return [...blocks];
  if (patch.$type === 'Without') return blocks.filter((block) => block !== target);
  const instead = patch as ast.InsteadOf;
  return blocks.map((block) =>
    block === target
      ? {
          ...block,
          lines: instead.lines,
          title: instead.title ?? block.title,
          station: instead.station ?? block.station,
        }
      : block,
  );
}

/** The step is looked up in what is taken over: patches do not see each other. */
function patchStep(
  context: Context,
  blocks: readonly BodyBlock[],
  original: readonly BodyBlock[],
  patch: ast.Patch,
  address: ast.Address,
  touch: (target: ast.Step, patch: ast.Patch) => boolean,
): BodyBlock[] {
  const place = original.find((block) => block.name === address.place?.name);
  if (place !== undefined)
    context.link(context.source(address.place!), context.source(place.node, 'name'), place.name, place.kind);
  if (address.place !== undefined && place === undefined) {
    context.unknown(
      address.place.name,
      'stage or repair',
      original.map((block) => block.name),
      context.source(address.place),
    );
    return [...blocks];
  }
  const ordinal = { least: 1, like: 'torque nut (2)' };
  if (address.ordinal !== undefined && lowerCount(context, address, 'ordinal', address.ordinal, ordinal) === null)
    return [...blocks];
  const found = addressed(original, address);
  const [only] = found;
  if (only === undefined || found.length > 1) {
    const words = textOf(address);
    context.syntax(
      'no-such-step',
      only === undefined
        ? say`No step is called “${words}”. ${nearestStep(original, address)}`
        : say`${found.length} steps are called “${words}”. Say which: add the stage (in build), or (2) for the second.`,
      context.source(address),
    );
    return [...blocks];
  }
  const subject = firstObject(only);
  if (address.object !== undefined && subject !== null)
    context.link(context.source(address.object), context.source(subject), pathText(address.object), 'step');
  if (!touch(only, patch)) return [...blocks];
  const put = patch.$type === 'Without' ? [] : patch.lines;
  const replace = (line: ast.StepLine): ast.StepLine[] => {
    const at = line.steps.indexOf(only);
    if (at < 0) return [within(line)];
    const part = (steps: ast.Step[]): ast.StepLine[] => (steps.length === 0 ? [] : [{ ...line, steps }]);
    const before = part(line.steps.slice(0, at + (patch.$type === 'After' ? 1 : 0)));
    const after = part(line.steps.slice(at + (patch.$type === 'Before' ? 0 : 1)));
    return [...before, ...put, ...after];
  };
  /** Lines inside `only … { }` are patched too. */
  const within = (line: ast.StepLine): ast.StepLine => ({
    ...line,
    steps: line.steps.map((step) =>
      step.$type === 'OnlySteps' ? { ...step, lines: step.lines.flatMap(replace) } : step,
    ),
  });
  return blocks.map((block) => ({ ...block, lines: block.lines.flatMap(replace) }));
}

/** What an address may have meant: the same verb with a like object, or how a step is named. */
function nearestStep(blocks: readonly BodyBlock[], address: ast.Address): Said {
  const verb = verbOf(address.verb);
  const objects = blocks
    .flatMap((block) => flat(block.lines))
    .flatMap((step) => (verbOfStep(step) === verb ? (firstName(step) ?? []) : []));
  const near = address.object === undefined ? [] : nearest(pathText(address.object), objects);
  return near.length > 0
    ? say`Did you mean ${joined(
        near.map((object) => `${address.verb} ${object}`),
        say` or `,
      )}?`
    : say`A step is named by its verb, its first object and the stage: torque nut in build.`;
}

/** The steps that an address fits. */
function addressed(blocks: readonly BodyBlock[], address: ast.Address): ast.Step[] {
  const places = address.place === undefined ? blocks : blocks.filter((block) => block.name === address.place!.name);
  const all = places.flatMap((block) => flat(block.lines));
  const object = address.object === undefined ? null : pathText(address.object);
  const found = all.filter(
    (step) => verbOfStep(step) === verbOf(address.verb) && (object === null || firstName(step) === object),
  );
  if (address.ordinal === undefined) return found;
  const one = found[Number(address.ordinal) - 1];
  return one === undefined ? [] : [one];
}

function flat(lines: readonly ast.StepLine[]): ast.Step[] {
  return lines.flatMap((line) =>
    line.steps.flatMap((step) => (step.$type === 'OnlySteps' ? flat(step.lines) : [step])),
  );
}

function verbOfStep(step: ast.Step): string | null {
  switch (step.$type) {
    case 'ObjectStep':
    case 'BareStep':
      return step.verb;
    case 'CleanOutside':
      return 'clean-outside';
    case 'CleanHoles':
      return 'clean-holes';
    case 'TestStep':
      return 'test';
    case 'AcrossStep':
      return 'across';
    case 'RecordStep':
      return 'record';
    default:
      return null;
  }
}

/** The name that an address may call a step by, besides its verb. */
function firstObject(step: ast.Step): ast.Path | ast.NameRef | null {
  switch (step.$type) {
    case 'ObjectStep':
    case 'CleanHoles':
      return step.objects[0]?.path ?? null;
    case 'TestStep':
    case 'AcrossStep':
      return step.name;
    default:
      return null;
  }
}

function firstName(step: ast.Step): string | null {
  const node = firstObject(step);
  return node === null ? null : node.$type === 'Path' ? pathText(node) : node.name;
}
