import type { Family, Joint, Part } from '../../language/model/family.ts';
import type { FailEntry, Procedure, Repair, Step } from '../../language/model/procedure.ts';

/*
 * What the oracle needs to know of a family, from the language document: “rests on”, “comes out with”, “closes over”.
 * Written a second time on purpose: a mistake in language/analysis/relations.ts has to show.
 */

export class Facts {
  private readonly closures = new Map<string, ReadonlySet<string>>();

  readonly family: Family;

  constructor(family: Family) {
    this.family = family;
    for (const joint of family.joints) this.closures.set(joint.part, this.closure(joint));
  }

  part(name: string): Part {
    return this.family.parts.find((part) => part.name === name)!;
  }

  joint(name: string): Joint | undefined {
    return this.family.joints.find((joint) => joint.part === name);
  }

  /** What a part needs in place to be fitted. */
  restsOn(name: string): readonly string[] {
    const { on, in: inside, through } = this.part(name);
    return [...on, ...inside, ...through];
  }

  /**
   * Parts that come out with a part as a sub-assembly: in it and on nothing else, or a ring or washer on it that is
   * renewed anyway. Nothing comes out with the unit itself.
   */
  inside(name: string): readonly string[] {
    if (this.restsOn(name).length === 0) return [];
    const direct = this.family.parts.filter(
      (part) =>
        this.joint(part.name) === undefined &&
        ((part.in.includes(name) && part.on.length === 0) || this.isLooseRing(part, name)),
    );
    return direct.flatMap((part) => [part.name, ...this.inside(part.name)]);
  }

  /** Renewed, on this part alone, and nothing else is on, in or around it, or under its load. */
  private isLooseRing({ name, on, in: inside, through, renewed, holds, bearsOn }: Part, carrier: string): boolean {
    const isAlone = [on.slice(1), inside, through, holds, bearsOn].every((others) => others.length === 0);
    return (
      renewed &&
      isAlone &&
      on[0] === carrier &&
      !this.family.parts.some((part) => this.restsOn(part.name).includes(name) || part.holds.includes(name))
    );
  }

  /** What keeps a part from coming off: what lies on it, what holds it, a joint that closes over it. */
  over(name: string): readonly string[] {
    const direct = this.family.parts.filter(
      (part) => part.holds.includes(name) || this.restsOn(part.name).includes(name),
    );
    return [...new Set([...direct.map((part) => part.name), ...this.closedBy(name)])];
  }

  /** A joint closes over what its part holds and all that those rest on, down to the part it is joined to. */
  closedOver(joint: string): ReadonlySet<string> {
    return this.closures.get(joint) ?? new Set();
  }

  closedBy(name: string): readonly string[] {
    return this.family.joints.map((joint) => joint.part).filter((joint) => this.closedOver(joint).has(name));
  }

  /** A joint that holds pressure or spring load. */
  isLoaded(joint: string): boolean {
    return this.closedOver(joint).size > 0;
  }

  /** A spindle that is in the body itself is loaded from the top: the joint below does not close over it. */
  private standsInBody(name: string): boolean {
    return this.restsOn(name).every((under) => this.restsOn(under).length === 0);
  }

  /** A part that is in another, or presses on it, is closed over with it. */
  private closure(joint: Joint): ReadonlySet<string> {
    const closed = new Set<string>();
    const open = [...this.part(joint.part).holds];
    for (let name = open.pop(); name !== undefined; name = open.pop()) {
      if (name === joint.to || name === joint.part || closed.has(name)) continue;
      closed.add(name);
      open.push(...this.restsOn(name));
      for (const part of this.family.parts)
        if (part.in.includes(name) || (part.bearsOn.includes(name) && !this.standsInBody(part.name)))
          open.push(part.name);
    }
    return closed;
  }
}

/** Whether a step puts the unit under pressure: the oracle knows tests that read a pressure or say whether the gauge is open. */
export function isHydraulic(step: Step, procedure: Procedure): boolean {
  if (step.verb === 'prime') return true;
  if (step.verb !== 'test' && step.verb !== 'read') return false;
  if (step.gauge !== null) return true;
  if (step.verb === 'test') return step.test.reads === 'pressure' || step.test.hold !== null;
  return procedure.specs.find((one) => one.name === step.reading)?.kind === 'pressure';
}

/**
 * Tries of an entry of `on fail`: its count; without one that which the other mentions give the repair; without any
 * one, and without end if the repair works by degrees.
 */
export function triesOf(entry: FailEntry, repair: Repair, mentions: readonly FailEntry[]): number {
  if (entry.tries !== null) return entry.tries;
  const counts = mentions.filter((other) => other.repair === repair.name).flatMap((other) => other.tries ?? []);
  if (counts.length > 0) return Math.max(...counts);
  return repair.steps.some((step) => step.verb === 'choose' || step.verb === 'set') ? Number.POSITIVE_INFINITY : 1;
}
