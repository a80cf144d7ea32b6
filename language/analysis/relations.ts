import type { Face, Family, Joint, Part, Port } from '../model/family.ts';

/** From this many fasteners on a face, the order in which they are tightened matters. */
export const manyFasteners = 4;

/** What a family's relations say together, each worked out once. Names are ids of parts. */
export class Relations {
  /** The relations of a family: those of one family are the same, whoever asks. */
  static of(family: Family): Relations {
    const relations = known.get(family) ?? new Relations(family);
    known.set(family, relations);
    return relations;
  }

  private readonly parts: ReadonlyMap<string, Part>;
  private readonly joints: ReadonlyMap<string, Joint>;
  private readonly facesById: ReadonlyMap<string, Face>;
  private readonly portsByName: ReadonlyMap<string, Port>;
  private readonly restsOnIt = new Map<string, Part[]>();
  private readonly heldBy = new Map<string, Part[]>();
  private readonly closures = new Map<string, ReadonlySet<string>>();

  readonly family: Family;

  private constructor(family: Family) {
    this.family = family;
    const { parts, joints, faces, ports } = family;
    // Of one name that is declared twice the first counts.
    this.parts = byName(parts, ({ name }) => name);
    this.joints = byName(joints, ({ part }) => part);
    this.facesById = byName(faces, ({ id }) => id);
    this.portsByName = byName(ports, ({ name }) => name);
    for (const part of parts) {
      for (const under of restsOn(part)) push(this.restsOnIt, under, part);
      for (const held of part.holds) push(this.heldBy, held, part);
    }
    for (const joint of joints) this.closures.set(joint.part, this.closureOf(joint));
  }

  part(name: string): Part {
    return this.parts.get(name)!;
  }

  joint(part: string): Joint | undefined {
    return this.joints.get(part);
  }

  face(id: string): Face {
    return this.facesById.get(id)!;
  }

  port(name: string): Port {
    return this.portsByName.get(name)!;
  }

  /** Parts that lie directly on, in or through a part. */
  onIt(part: string): readonly Part[] {
    return this.restsOnIt.get(part) ?? none;
  }

  /** Parts that hold a part. */
  holders(part: string): readonly Part[] {
    return this.heldBy.get(part) ?? none;
  }

  /**
   * Parts that come out with a part: those that are in it and on nothing else, and a ring or a seal on it, renewed
   * anyway, that nothing lies on or holds.
   */
  readonly inside = once((part): readonly Part[] =>
    this.isCarrier(part)
      ? none
      : this.onIt(part).filter(
          (other) =>
            this.joint(other.name) === undefined &&
            other.through.length === 0 &&
            (other.on.length === 0 ? other.in.includes(part) : this.clingsTo(other, part)),
        ),
  );

  private clingsTo({ name, on, in: within, renewed, holds, bearsOn }: Part, carrier: string): boolean {
    return (
      renewed &&
      on.length === 1 &&
      on[0] === carrier &&
      [within, holds, bearsOn, this.onIt(name), this.holders(name)].every((others) => others.length === 0)
    );
  }

  /** The part that everything rests on or in is the unit itself: what is in it does not come out with it. */
  private isCarrier(part: string): boolean {
    return restsOn(this.part(part)).length === 0;
  }

  /**
   * What a joint closes over: the parts that its part holds, what those rest on down to the part that it is joined
   * to, what lies inside them, and the chain (a spring's) that presses on any of them.
   */
  closure(joint: string): ReadonlySet<string> {
    return this.closures.get(joint) ?? nothing;
  }

  /** Joints whose closure has the part. */
  readonly closedBy = once((part): readonly Joint[] =>
    this.family.joints.filter((joint) => this.closure(joint.part).has(part)),
  );

  /** Parts that are used once and that a joint pulls tight: its own, those under it, and those that it closes over. */
  readonly squeezedBy = once((joint): readonly string[] => {
    const { to } = this.joint(joint)!;
    const squeezed = new Set([joint]);
    const add = (name: string) => {
      if (name === to || squeezed.has(name) || !this.parts.has(name)) return;
      squeezed.add(name);
      for (const under of restsOn(this.part(name))) add(under);
    };
    for (const name of [...restsOn(this.part(joint)), ...this.closure(joint)]) add(name);
    // What lies in a part is not between faces: a lip seal in its cover.
    return [...squeezed].filter(
      (name) => this.part(name).usedOnce && (name === joint || this.part(name).on.length > 0),
    );
  });

  /** A joint pulls it tight; else it is old as soon as it comes off. */
  readonly isSqueezed = once((part): boolean =>
    this.family.joints.some((joint) => this.squeezedBy(joint.part).includes(part)),
  );

  /** A joint that holds pressure or carries a spring's load: it closes over something. */
  loaded(joint: string): boolean {
    return this.closure(joint).size > 0;
  }

  private closureOf(joint: Joint): ReadonlySet<string> {
    const closed = new Set<string>();
    const add = (name: string) => {
      if (name === joint.to || name === joint.part || closed.has(name) || !this.parts.has(name)) return;
      closed.add(name);
      for (const under of restsOn(this.part(name))) add(under);
      for (const other of this.family.parts) {
        if (other.in.includes(name) || (other.bearsOn.includes(name) && !this.isOnCarrier(other.name))) add(other.name);
      }
    };
    for (const held of this.part(joint.part).holds) add(held);
    return closed;
  }

  /**
   * A part that presses on another and is itself in the unit's body, as the spindle of a holder that is loaded from
   * the top: the part that it presses on does not block it, and the joint below does not close over it.
   */
  private isOnCarrier(part: string): boolean {
    return (
      this.part(part).bearsOn.length > 0 &&
      restsOn(this.part(part)).every((under) => this.parts.has(under) && this.isCarrier(under))
    );
  }

  /** Parts that cannot be in place before a part is: those that its own stack presses on. */
  readonly bornBy = once((part): ReadonlySet<string> => {
    const stack = new Set<string>();
    const climb = (name: string) => {
      if (stack.has(name)) return;
      stack.add(name);
      for (const other of this.onIt(name)) climb(other.name);
    };
    if (restsOn(this.part(part)).length > 0) climb(part);
    const presses = (name: string) =>
      this.part(name).bearsOn.filter((loaded) => this.parts.has(loaded) && !this.areApart(name, loaded));
    return new Set([...stack].filter((name) => !this.isOnCarrier(name)).flatMap(presses));
  });

  /** They go in from two ends, and the family says so of both: neither is in the other's way. */
  private areApart(one: string, other: string): boolean {
    const ends = [this.endOf(one), this.endOf(other)];
    return ends.includes('below') && ends.includes('above');
  }

  /** From which end a part goes in: as it says, or as all say that it rests on. Null: nothing says. */
  private endOf(name: string, seen: ReadonlySet<string> = new Set()): 'below' | 'above' | null {
    const part = this.part(name);
    if (part.fromBelow || part.fromAbove) return part.fromBelow ? 'below' : 'above';
    const hosts = restsOn(part).filter((under) => this.parts.has(under) && !this.isCarrier(under));
    if (seen.has(name)) return null;
    const ends = new Set(hosts.map((under) => this.endOf(under, new Set([...seen, name]))));
    return ends.size === 1 ? [...ends][0]! : null;
  }

  /** Faces of a part. */
  readonly faces = once((part): readonly Face[] => this.family.faces.filter((face) => face.part === part));

  /** Ports of a part. */
  readonly ports = once((part): readonly Port[] => this.family.ports.filter((port) => port.part === part));

  /** A part with a lapped or ground face, or matched to another: small and easily spoilt. */
  readonly isFine = once(
    (part): boolean => this.matches(part).length > 0 || this.faces(part).some((face) => face.finish !== null),
  );

  /** The parts that a part is matched to, said at either. */
  readonly matches = once((part): readonly string[] => [
    ...new Set([
      ...this.part(part).matchedTo,
      ...this.family.parts.filter((other) => other.matchedTo.includes(part)).map((other) => other.name),
    ]),
  ]);
}

const known = new WeakMap<Family, Relations>();
const none: readonly never[] = [];
const nothing: ReadonlySet<string> = new Set();

/** A function of a name that is worked out once for each. */
function once<T>(work: (name: string) => T): (name: string) => T {
  const results = new Map<string, T>();
  return (name) => {
    if (results.has(name)) return results.get(name)!;
    const result = work(name);
    results.set(name, result);
    return result;
  };
}

function byName<T>(all: readonly T[], nameOf: (one: T) => string): ReadonlyMap<string, T> {
  return new Map([...all].reverse().map((one) => [nameOf(one), one]));
}

/** What a part lies on, in or through. */
export function restsOn(part: Part): readonly string[] {
  let under = supports.get(part);
  if (under === undefined) {
    under = [...part.on, ...part.in, ...part.through];
    supports.set(part, under);
  }
  return under;
}

const supports = new WeakMap<Part, readonly string[]>();

function push<K, V>(map: Map<K, V[]>, key: K, value: V) {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}
