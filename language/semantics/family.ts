import { restsOn } from '../analysis/relations.ts';
import { type DrawnAs, drawnAs } from '../model/drawn-as.ts';
import type { Adjuster, Assembly, Face, Family, Joint, Part, Port } from '../model/family.ts';
import { type Material, materialSpellings, materials } from '../model/material.ts';
import type { Places } from '../model/plan.ts';
import type { NameUse } from '../model/source.ts';
import { amount, formatQuantity, kindOfUnit, type Quantity } from '../quantities/index.ts';
import { joined, listed, type Said, say } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { nearest } from '../syntax/nearest.ts';
import { allowsWithin, lowerAllow } from './allows.ts';
import type { Context } from './context.ts';
import { withDanger } from './dangers.ts';
import { lowerCount, lowerMeasure, lowerNumber, lowerQuantity } from './limits.ts';
import { placesOf } from './plans.ts';
import { named } from './shop.ts';
import { lowerSolidBolt } from './solid-bolt.ts';
import { unreadLine } from './unread.ts';

/** Most positions that `for each cylinder` may have. */
const mostCylinders = 32;

export function lowerFamily(context: Context, node: ast.Family): Family {
  const items = <T extends ast.FamilyItem>(type: T['$type']) => node.items.filter((item) => item.$type === type) as T[];
  for (const item of items<ast.Unread>('Unread')) {
    unreadLine(context, item, ['part', 'assembly', 'places', 'face', 'port', 'joint', 'adjuster', 'proven', 'always']);
  }
  const places = placesOf(context, items<ast.Places>('Places'));
  const parts = partsOf(context, items<ast.Part>('Part'), places);
  const ports = items<ast.Port>('Port').flatMap((port) => portsOf(context, port, parts));
  const family = {
    ...named(context, node),
    parts,
    places,
    assemblies: assembliesOf(context, items<ast.Assembly>('Assembly'), parts),
    faces: facesOf(context, items<ast.Face>('Face'), parts),
    ports,
    joints: items<ast.Joint>('Joint').flatMap((joint) => jointsOf(context, joint, parts, ports)),
    adjusters: items<ast.Adjuster>('Adjuster').flatMap((adjuster) => adjustersOf(context, adjuster, parts)),
    ...proofs(context, items<ast.ProvenBy>('ProvenBy')),
    alwaysChecked: items<ast.AlwaysChecked>('AlwaysChecked').flatMap((item) =>
      item.parts.flatMap((ref) =>
        findParts(context, parts, ref).map(({ name }) => ({ name, source: context.source(ref) })),
      ),
    ),
    allow: node.items.flatMap((item) => (item.$type === 'Part' ? [] : allowsWithin(context, item))),
  };
  return {
    ...family,
    ports: context.unique(family.ports, 'port'),
    joints: context.unique(family.joints, 'joint of'),
  };
}

/** Assemblies in which one part carries the others; of any other it is not known what is taken in hand (reported). */
function assembliesOf(context: Context, nodes: readonly ast.Assembly[], parts: readonly Part[]): Assembly[] {
  const made = nodes.flatMap((node): Assembly[] => {
    const inside = [...new Set(node.parts.flatMap((ref) => findParts(context, parts, ref)))];
    const inIt = new Set(inside.map(({ name }) => name));
    const carriers = inside.filter((part) => !restsOn(part).some((under) => inIt.has(under)));
    const [carrier] = carriers;
    if (carriers.length > 1)
      context.syntax(
        'wrong-use-of-name',
        say`In ${node.name} nothing carries ${listed(carriers.map(({ base }) => base))} together: taken off as one, it would fall apart. Name the part that they rest on too, or say in the family what they rest on.`,
        context.source(node, 'name'),
      );
    // With one too many it is known all the same, so that no step is blamed for its name.
    if (carrier === undefined) return [];
    const others = inside.filter((part) => part !== carrier);
    return [{ ...named(context, node), parts: [carrier, ...others].map(({ name }) => name) }];
  });
  // A step names it as it names a part.
  return context.unique<Part | Assembly>([...parts, ...made], 'part').filter((one) => 'parts' in one);
}

/** All copies of a part by the name that they share; a name of one copy (`holder-3`) finds that one. */
export function partsNamed(parts: readonly Part[], name: string): Part[] {
  const copies = parts.filter((part) => part.base === name);
  return copies.length > 0 ? copies : parts.filter((part) => part.name === name);
}

/** Looks up a part, links it or reports it. One name may mean several copies. */
function findParts(context: Context, parts: readonly Part[], ref: ast.NameRef): Part[] {
  const found = partsNamed(parts, ref.name);
  const use = context.source(ref);
  if (found.length === 0)
    context.unknown(
      ref.name,
      'part',
      parts.map((part) => part.base),
      use,
    );
  else context.link(use, found[0]!.source, ref.name, 'part');
  return found;
}

function partsOf(context: Context, nodes: readonly ast.Part[], places: readonly Places[]): Part[] {
  const declared = nodes.flatMap((node) => {
    return copiesOf(context, node, places).map((copy) => ({ node, part: bareParts(context, node, copy) }));
  });
  const parts = context.unique(
    declared.map(({ part }) => part),
    'part',
  );
  return declared
    .filter(({ part }) => parts.includes(part))
    .map(({ node, part }) => withRelations(context, node, part, parts));
}

/** Which of several a part is: by cylinder, or by side. Nothing of both: there is one. */
interface Copy {
  readonly position: number | null;
  readonly side: string | null;
}

const theOnly: Copy = { position: null, side: null };

function copiesOf(context: Context, node: ast.Part, places: readonly Places[]): readonly Copy[] {
  const each = node.facts.find((fact) => fact.$type === 'PartEach') as ast.PartEach | undefined;
  const named = node.facts.find((fact) => fact.$type === 'PartSides') as ast.PartSides | undefined;
  if (named === undefined)
    return each === undefined
      ? [theOnly]
      : positionsOf(context, each, places).map((position) => ({ ...theOnly, position }));
  const sides = [...new Set(named.sides)];
  if (each !== undefined)
    context.syntax(
      'two-ways-at-once',
      say`${node.name} is distinguished by cylinder and by side, and a step could not say which is meant. Write a part for each side, each of them for each cylinder.`,
      context.source(named),
    );
  else if (sides.length < named.sides.length)
    context.syntax(
      'written-twice',
      say`${node.name} has the same side twice. Give each side a name of its own, or write quantity ${named.sides.length} if they are all alike.`,
      context.source(named),
    );
  else if (sides.length < 2)
    context.syntax(
      'wrong-use-of-name',
      say`${node.name} has one side only, which tells nothing apart. Name all sides: sides left, right.`,
      context.source(named),
    );
  return sides.map((side, index) => ({ position: index + 1, side }));
}

function positionsOf(context: Context, each: ast.PartEach, places: readonly Places[]): (number | null)[] {
  const { low: from, high: to } = each;
  if (from === undefined || to === undefined) {
    const listed = places.find(({ name }) => name === 'cylinder');
    if (listed !== undefined) return listed.places.map(({ name }) => Number(name));
    context.syntax(
      'wrong-use-of-name',
      say`The family lists no cylinders, so nobody knows how many of these there are. Write places cylinder 1..6 in the family, or for each cylinder 1..6 here.`,
      context.source(each),
    );
    return [null];
  }
  const ends = [lowerNumber(context, each, 'low', from), lowerNumber(context, each, 'high', to)];
  if (ends.includes(null)) return [null];
  const [low, high] = ends.map(Number) as [number, number];
  if (!Number.isInteger(low) || !Number.isInteger(high) || low < 1 || high < low || high - low >= mostCylinders) {
    context.syntax(
      'impossible-figure',
      say`Cylinders are counted up from a whole number, at most ${mostCylinders} of them: write, for example, 1..6.`,
      context.source(each),
    );
    return [null];
  }
  return Array.from({ length: high - low + 1 }, (_, index) => low + index);
}

function bareParts(context: Context, node: ast.Part, { position, side }: Copy): Part {
  const { name, title, source } = named(context, node);
  const which = side ?? position;
  return {
    name: which === null ? name : `${name}-${which}`,
    title: which === null ? title : `${title}, ${side?.replaceAll('-', ' ') ?? `cylinder ${position}`}`,
    source,
    base: name,
    baseTitle: title,
    quantity: 1,
    position,
    side,
    on: [],
    in: [],
    through: [],
    bearsOn: [],
    holds: [],
    matchedTo: [],
    balancedWith: [],
    locatedBy: null,
    marks: null,
    chosenFrom: null,
    renewed: false,
    usedOnce: false,
    film: null,
    neverIn: [],
    heldIn: null,
    suppliedLoose: false,
    readyToFit: false,
    moves: null,
    bindsOver: null,
    drawnAs: null,
    fromBelow: false,
    material: null,
    weight: null,
    fromAbove: false,
    dangers: [],
    allow: [],
  };
}

function withRelations(context: Context, node: ast.Part, bare: Part, parts: readonly Part[]): Part {
  const part = { ...bare } as { -readonly [key in keyof Part]: Part[key] };
  for (const fact of node.facts) {
    switch (fact.$type) {
      case 'PartRelation': {
        // Copies relate position by position; a copy and a single part relate all to one.
        const related = fact.parts
          .flatMap((ref) => findParts(context, parts, ref))
          .filter((other) => goTogether(bare, other))
          .map((other) => other.name);
        const key = (
          {
            on: 'on',
            in: 'in',
            through: 'through',
            holds: 'holds',
            bears: 'bearsOn',
            matched: 'matchedTo',
            balanced: 'balancedWith',
          } as const
        )[fact.relation];
        part[key] = [...part[key], ...related];
        break;
      }
      case 'PartLocated':
        part.locatedBy = fact.text;
        break;
      case 'PartMarks':
        part.marks = fact.text;
        break;
      case 'PartHeld':
        part.heldIn = fact.text;
        break;
      case 'PartChosen':
        part.chosenFrom = fact.stock.name;
        break;
      case 'PartTrait':
        if (fact.trait === 'renewed') {
          part.renewed = true;
          part.usedOnce = !fact.rebuild;
        } else if (fact.trait === 'supplied') part.suppliedLoose = true;
        else part.readyToFit = true;
        break;
      case 'PartFilm':
        part.film = fact.film ?? fact.fluid ?? null;
        break;
      case 'PartNever':
        part.neverIn = [...part.neverIn, ...fact.fluids];
        break;
      case 'PartAllow':
        part.allow = [...part.allow, lowerAllow(context, fact.allow)];
        break;
      case 'PartBinds':
        part.bindsOver = lowerMeasure(context, fact, 'limit', fact.limit, {
          what: say`What ${part.base} binds over`,
          why: say`no shim over it is given out`,
          like: 'binds over 1.90 mm',
          kind: 'length',
        });
        break;
      case 'PartDrawn':
        part.drawnAs = shapeNamed(context, fact.shape);
        break;
      case 'PartEnd':
        part.fromBelow ||= fact.end === 'below';
        part.fromAbove ||= fact.end === 'above';
        if (part.fromBelow && part.fromAbove)
          context.syntax(
            'two-ways-at-once',
            say`${bare.base} goes in from below and from above: nobody knows at which end to look for it. Delete one.`,
            context.source(fact),
          );
        break;
      case 'PartMaterial':
        part.material = materialNamed(context, fact.material);
        break;
      case 'PartWeight':
        part.weight = lowerMeasure(context, fact, 'weight', fact.weight, {
          what: say`The weight of a part`,
          why: say`it says whether the part is lifted by hand`,
          like: 'weight 25 kg',
          kind: 'mass',
        });
        break;
      case 'PartDanger':
        part.dangers = withDanger(context, part.dangers, fact.danger, context.source(fact));
        break;
      case 'PartFree':
        part.moves = fact.moves;
        break;
      case 'PartQuantity':
        part.quantity = lowerCount(context, fact, 'count', fact.count, { least: 2, like: 'quantity 3' }) ?? 1;
        break;
      case 'PartEach':
      case 'PartSides':
        break;
    }
  }
  return part;
}

function shapeNamed(context: Context, ref: ast.NameRef): DrawnAs | null {
  const shape = drawnAs.find((one) => one === ref.name);
  if (shape !== undefined) return shape;
  const near = nearest(ref.name, drawnAs);
  unknownWord(
    context,
    ref,
    near,
    near.length > 0
      ? say`Nothing can be drawn as ${ref.name}. Did you mean ${joined(near, say` or `)}?`
      : say`Nothing can be drawn as ${ref.name}. Write one of ${drawnAs.join(', ')}, or delete it: the drawing then has a plain turned piece.`,
  );
  return null;
}

function materialNamed(context: Context, ref: ast.NameRef): Material | null {
  const material = materialSpellings.get(ref.name) ?? materials.find((one) => one === ref.name);
  if (material !== undefined) return material;
  const near = nearest(ref.name, materials);
  unknownWord(
    context,
    ref,
    near,
    near.length > 0
      ? say`No material is called ${ref.name}. Did you mean ${joined(near, say` or `)}?`
      : say`No material is called ${ref.name}. Write one of ${materials.join(', ')}, or delete it: nothing follows from another.`,
  );
  return null;
}

/** A word that is none of a closed list; a single near one is the fix. */
function unknownWord(context: Context, ref: ast.NameRef, near: readonly string[], problem: Said): void {
  context.syntax('unknown-word', problem, context.source(ref), near.length === 1 ? near[0] : undefined, ref.name);
}

type Changing<T> = { -readonly [key in keyof T]: T[key] };

/** Copies go with the copies of the same position or side; a copy and a single part, all with the one. */
function goTogether(part: Part, other: Part): boolean {
  if (part.position === null || other.position === null) return true;
  // What is distinguished by cylinder and what is distinguished by side have nothing in common.
  return (part.side === null) !== (other.side === null) || which(part) === which(other);
}

const which = ({ position, side }: Part) => side ?? position;

/** The copy of the same position, or the single part that all copies share. */
function besides(part: Part, others: readonly Part[]): Part | undefined {
  return (
    others.find((other) => which(other) === which(part)) ??
    others.find((other) => other.position === null) ??
    (part.position === null ? others[0] : undefined)
  );
}

function facesOf(context: Context, nodes: readonly ast.Face[], parts: readonly Part[]): Face[] {
  const faces: Changing<Face>[] = [];
  const faceOf = (part: Part, path: ast.Path, title?: string): Changing<Face> => {
    const id = `${part.name}.${path.tail}`;
    const known = faces.find((face) => face.id === id);
    if (known !== undefined) return known;
    const face = {
      name: path.tail!,
      id,
      title: title ?? `${part.title}, ${path.tail} face`,
      part: part.name,
      source: context.source(path),
      finish: null,
      meets: null,
      guardedBy: null,
    };
    faces.push(face);
    return face;
  };
  for (const node of nodes) {
    const guards = node.guard === undefined ? [] : findParts(context, parts, node.guard);
    const others = node.meets === undefined ? [] : pathParts(context, node.meets, parts);
    for (const part of pathParts(context, node.face, parts)) {
      const face = faceOf(part, node.face, node.title);
      face.finish = node.finish ?? face.finish;
      face.guardedBy = besides(part, guards)?.name ?? face.guardedBy;
      const otherPart = besides(part, others);
      if (otherPart === undefined) continue;
      // Declared once for the pair: the other face is lapped or ground as this one is.
      const other = faceOf(otherPart, node.meets!);
      if (other.meets !== null && other.meets !== face.id) {
        context.syntax(
          'written-twice',
          say`${other.id} already meets ${other.meets}: a face meets one other face.`,
          context.source(node.meets!),
        );
        continue;
      }
      other.finish ??= face.finish;
      other.meets = face.id;
      face.meets = other.id;
    }
  }
  return faces;
}

/** The parts that a `part.face` is on. */
function pathParts(context: Context, path: ast.Path, parts: readonly Part[]): Part[] {
  if (path.tail === undefined) {
    context.syntax(
      'wrong-use-of-name',
      say`A face belongs to a part: write, for example, body.${path.head}.`,
      context.source(path),
    );
    return [];
  }
  const found = partsNamed(parts, path.head);
  const use = context.source(path, 'head');
  if (found.length === 0)
    context.unknown(
      path.head,
      'part',
      parts.map((other) => other.base),
      use,
    );
  else context.link(use, found[0]!.source, path.head, 'part');
  return found;
}

function portsOf(context: Context, node: ast.Port, parts: readonly Part[]): Port[] {
  const unders = node.under === undefined ? [] : findParts(context, parts, node.under);
  return findParts(context, parts, node.part).flatMap((part) =>
    node.names.map((ref) => ({
      name: part.position === null ? ref.name : `${ref.name}-${which(part)}`,
      base: ref.name,
      title: (node.names.length === 1 && node.title) || `${ref.name} port`,
      source: context.source(ref),
      part: part.name,
      under: besides(part, unders)?.name ?? null,
      openInTransit: node.transit,
    })),
  );
}

function jointsOf(context: Context, node: ast.Joint, parts: readonly Part[], ports: readonly Port[]): Joint[] {
  const has = (word: string) =>
    node.traits.some((trait) => trait.$type === 'JointWords' && trait.words.startsWith(word));
  const others = findParts(context, parts, node.to);
  const turned = findParts(context, parts, node.part);
  const solid = lowerSolidBolt(context, node, turned, { parts, ports });
  return turned.flatMap((part) => {
    const to = besides(part, others);
    if (to === undefined) return [];
    return {
      name: part.name,
      title: `${part.title} to ${to.title.toLowerCase()}`,
      source: context.source(node.part),
      part: part.name,
      to: to.name,
      thread: node.thread ?? null,
      oiled: has('threads'),
      leftHand: has('left-hand'),
      handTightIsFinal: has('hand-tight'),
      solid,
    };
  });
}

function adjustersOf(context: Context, node: ast.Adjuster, parts: readonly Part[]): Adjuster[] {
  const turned = findParts(context, parts, node.part);
  const locks = node.lock === undefined ? [] : findParts(context, parts, node.lock);
  const rate = turned.length === 0 || node.rate === undefined ? null : screwRateOf(context, node, node.rate);
  return turned.map((part) => ({
    name: part.name,
    title: part.title,
    source: context.source(node.part),
    part: part.name,
    sets: node.sets.name,
    rate,
    lockedBy: besides(part, locks)?.name ?? null,
  }));
}

/** How much one turn in adds: above zero, in pressure per turn. */
function screwRateOf(context: Context, node: ast.Adjuster, text: string): Quantity | null {
  const rate = lowerQuantity(context, node, 'rate', text);
  if (rate === null || (kindOfUnit(rate.unit) === 'screw rate' && amount(rate).compare(0) > 0)) return rate;
  context.syntax(
    kindOfUnit(rate.unit) === 'screw rate' ? 'impossible-figure' : 'unit-of-another-kind',
    say`${formatQuantity(rate)} does not say how much one turn in adds. Write a pressure per turn, above zero, such as 25 bar per turn. If a turn out raises it, leave the rate out and say so in a note.`,
    context.source(node, 'rate'),
  );
  return null;
}

function proofs(context: Context, nodes: readonly ast.ProvenBy[]) {
  const uses = (across: boolean): NameUse[] =>
    nodes
      .filter((node) => node.across === across)
      .flatMap((node) => node.tests.map((ref) => ({ name: ref.name, source: context.source(ref) })));
  return { provenBy: uses(false), provenAcrossSet: uses(true) };
}
