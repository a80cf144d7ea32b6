import type { Row } from '../analysis/build-order.ts';
import { manyFasteners, type Relations, restsOn } from '../analysis/relations.ts';
import type { Adjuster, Family, Part } from '../model/family.ts';
import { type Said, say } from '../say/say.ts';
import { blank, firstOfBase, list } from './blank.ts';
import type { Workplaces } from './workplaces.ts';

interface Drafted {
  readonly family: Family;
  readonly relations: Relations;
  readonly rows: readonly Row[];
  readonly at: Workplaces;
  readonly reads: ReadonlyMap<string, string>;
  readonly tell: (said: Said) => string;
}

interface DraftedSequence {
  readonly name: string;
  readonly steps: readonly string[];
}

interface DraftedRepair {
  readonly name: string;
  readonly title: string;
  readonly steps: readonly string[];
}

/** Kinds of quantity that are read without a fluid. */
const dry: ReadonlySet<string> = new Set(['length', 'angle', 'unbalance', 'mass', 'force', 'resistance']);

/** The steps by which a unit of a family comes apart, goes together, gets onto the tester and off it. */
export class DraftedSteps {
  /** The part that all others rest on, unless the family has none. */
  readonly body: string | undefined;
  /** From the bench onto the tester, and off it. */
  readonly onto: readonly string[];
  readonly off: readonly string[];
  readonly primed: readonly string[];
  private readonly grip: readonly string[];
  private readonly release: readonly string[];
  /** Covers of ground faces, and the parts that are put on for it. */
  readonly guard: readonly string[];
  readonly guards: readonly string[];
  /** What is set on the tester, is locked there, and shuts it in. Empty where shims set the unit, or nothing does. */
  private readonly setting: readonly string[];
  /** Parts that must move freely are felt once the joints over them are tight. */
  readonly felt: readonly string[];
  private readonly moving: readonly Part[];
  /** One of each that copies of a part have. */
  private readonly adjusters: readonly Adjuster[];
  private readonly of: Drafted;
  /** Parts that go on once the unit is set. */
  private readonly late: ReadonlySet<string>;

  constructor(of: Drafted) {
    this.of = of;
    const { family, relations, rows, at } = of;
    this.body = family.parts.find((part) => restsOn(part).length === 0)?.name;
    const held = family.parts.find(({ heldIn }) => heldIn !== null)?.name;
    this.grip = held === undefined ? [] : [`clamp ${held}`];
    this.release = held === undefined ? [] : [`unclamp ${held}`];
    // What is only measured, as a length, needs no line; what is only watched, as a spray, does.
    const isWet = family.provenBy.some(({ name }) => !dry.has(of.reads.get(name) ?? ''));
    const inlet = isWet ? family.ports.find(({ under }) => under === null)?.name : undefined;
    this.onto = inlet === undefined ? this.grip : [`connect ${inlet}`];
    this.off = inlet === undefined ? this.release : ['relieve', `disconnect ${inlet}`];
    this.primed = inlet === undefined || at.oil === null ? [] : ['prime 6 strokes with gauge shut'];
    const guarded = family.faces.filter(({ guardedBy }) => guardedBy !== null);
    this.guard = guarded.map(({ id, guardedBy }) => `guard ${id} with ${guardedBy}`);
    this.guards = [...new Set(guarded.map(({ guardedBy }) => guardedBy!))];
    const locks = new Set(family.adjusters.flatMap(({ lockedBy }) => (lockedBy === null ? [] : [lockedBy])));
    this.late = new Set(
      rows.flatMap(({ part }) =>
        [...locks].some((lock) => part.name !== lock && isOver(relations, part, lock)) ? [part.name] : [],
      ),
    );
    this.adjusters = firstOfBase(family.adjusters, ({ part }) => this.base(part));
    this.moving = firstOfBase(
      family.parts.filter(({ moves }) => moves !== null),
      ({ base }) => base,
    );
    // Which joint can bind what, the family does not say: it is felt again after each of them.
    const tightened = rows.filter(
      ({ part }) => relations.joint(part.name) !== undefined && !this.late.has(part.name) && !locks.has(part.name),
    );
    const proves = tightened.length === 0 ? '' : `   proves through ${list(tightened.map(({ part }) => part.base))}`;
    this.felt = this.moving.map(
      ({ base, moves }) => `check ${base} ${moves} "${blank}"${proves}   on fail free (${blank} times)`,
    );
    this.setting = this.adjusters.flatMap(({ part, sets, lockedBy }) =>
      of.reads.has(sets)
        ? [
            `set ${sets} within ${sets} by ${this.base(part)}`,
            ...(isWet ? ['relieve'] : []),
            ...(lockedBy === null ? [] : [`lock ${this.base(lockedBy)} to ${this.base(lockedBy)}-fit with ${blank}`]),
            ...this.fitted(rows.filter((row) => this.late.has(row.part.name))),
          ]
        : [],
    );
  }

  /** Around work on a unit that is held. */
  clamped(steps: readonly string[]): string[] {
    return [...this.grip, ...steps, ...this.release];
  }

  /** What several stages and repairs do, written once. */
  sequences(): DraftedSequence[] {
    return [
      { name: 'take-apart', steps: this.opened(true) },
      { name: 'put-together', steps: this.putTogether() },
      ...(this.setting.length === 0 ? [] : [{ name: 'set-and-close', steps: this.setting }]),
    ];
  }

  /** With what is measured as it comes out. */
  takenApart(): string[] {
    const { at } = this.of;
    const chosen = this.shims();
    return ['take-apart', ...(chosen.length === 0 ? [] : [`measure ${list(chosen)} with ${at.measure ?? blank}`])];
  }

  /**
   * Down to what sets the unit, or all of it: from outside in; springs are let off before what is under their load comes
   * loose.
   */
  private opened(whole: boolean): string[] {
    const { relations, rows } = this.of;
    const steps = new Run();
    const loosened = new Set<string>();
    const loosen = (part: string) => {
      if (relations.joint(part) === undefined || loosened.has(part)) return;
      loosened.add(part);
      steps.add(`slacken ${relations.part(part).base}`);
    };
    const takeOff = (row: Row) => {
      loosen(row.part.name);
      const out = [row.part, ...row.inner];
      // What comes out with a part that stays in use may be renewed for itself.
      steps.take('remove', ...out.filter(({ renewed }) => !renewed).map(({ base }) => base));
      steps.take('discard', ...out.filter(({ renewed }) => renewed).map(({ base }) => base));
    };
    const off = [...rows].reverse().filter(({ part }) => part.name !== this.body);
    for (const row of off.filter(({ part }) => this.late.has(part.name))) takeOff(row);
    for (const { part, lockedBy } of this.adjusters) {
      if (lockedBy !== null) loosen(lockedBy);
      if (whole) steps.add(`back-off ${this.base(part)}`);
    }
    if (whole) for (const row of off.filter(({ part }) => !this.late.has(part.name))) takeOff(row);
    return steps.done();
  }

  /** From inside out, as far as it goes before the unit is set. */
  private putTogether(): string[] {
    const isSet = this.setting.length > 0;
    return this.fitted(
      this.of.rows.filter(({ part }) => part.name !== this.body && !(isSet && this.late.has(part.name))),
    );
  }

  /** Parts that wait at the tester until the unit is set. */
  waiting(): string[] {
    const { rows } = this.of;
    const isWaiting = ({ part }: Row) => this.late.has(part.name) && !part.renewed && this.setting.length > 0;
    return rows.filter(isWaiting).map(({ part }) => part.base);
  }

  /** It is set on the tester. */
  get isSet(): boolean {
    return this.setting.length > 0;
  }

  /** The repair that a failed test sends a unit to. Of several shims nobody can tell from the family which one sets what. */
  repairOf(test: string): string {
    const { family, reads } = this.of;
    if (family.adjusters.some(({ sets }) => sets === test && reads.has(sets))) return 'reset';
    const [first] = reads.keys();
    return test === first && this.shims().length === 1 ? 'reshim' : 'rework';
  }

  repairs(): DraftedRepair[] {
    const { family, at, reads, tell } = this.of;
    const tests = [...family.provenBy, ...family.provenAcrossSet].map(({ name }) => this.repairOf(name));
    if (this.moving.length > 0) tests.push('free');
    const again = this.setting.length > 0 ? [...this.onto, ...this.primed, 'set-and-close'] : this.onto;
    const opened = (work: readonly string[]) => ['take-apart', ...work, 'put-together'];
    // What is felt then is felt in the stage that builds, and from there the unit goes on to the tester as it did before.
    const after = this.moving.length > 0 ? [] : [...again, ...this.primed];
    const around = (work: readonly string[]) => [...this.off, ...this.clamped(opened(work)), ...after];
    const [first] = reads.keys();
    const shims = list(this.shims());
    // What is done in it is done to a part: the author names the right one.
    const inner = (family.parts[1] ?? family.parts[0]!).name;
    const rinse = (parts: string) => (at.oil === null ? [] : [`rinse ${parts} in ${at.oil}`]);
    const known: readonly DraftedRepair[] = [
      {
        name: 'reshim',
        title: tell(say`Change the shim`),
        steps: around([`choose ${shims} to bring ${first} to ${first} by shim-rate`, ...rinse(shims)]),
      },
      {
        name: 'reset',
        title: tell(say`Set it again`),
        steps: [...this.off, ...this.clamped(this.opened(false)), ...again, ...this.primed],
      },
      {
        name: 'rework',
        title: tell(say`Open it again`),
        steps: around([`do "${blank}" to ${inner}`, ...rinse('all')]),
      },
      {
        name: 'free',
        title: tell(say`Free what binds`),
        steps: this.clamped(opened([`do "${blank}" to ${list(this.moving.map(({ base }) => base))}`, ...rinse('all')])),
      },
    ];
    return known.filter(({ name }) => tests.includes(name));
  }

  private base(part: string): string {
    return this.of.relations.part(part).base;
  }

  private shims(): string[] {
    return this.of.family.parts.filter(({ chosenFrom }) => chosenFrom !== null).map(({ base }) => base);
  }

  private fitted(rows: readonly Row[]): string[] {
    const { relations, at } = this.of;
    const steps = new Run();
    for (const { part, inner } of rows) {
      const joint = relations.joint(part.name);
      if (joint !== undefined) {
        const { base } = part;
        const pattern = part.quantity >= manyFasteners ? ' in cross pattern' : '';
        if (joint.oiled) steps.add(`oil ${base} with ${at.oil ?? blank}`);
        steps.add(`run-down ${base}`);
        if (!joint.handTightIsFinal && !this.isSetBy(part.name))
          steps.add(`torque ${base} to ${base}-fit with ${blank}${pattern}`);
        continue;
      }
      const group = [part, ...inner];
      const oiled = group.filter(({ film }) => film !== null && film !== 'dry');
      if (oiled.length > 0)
        steps.add(
          `oil ${list(oiled.map(({ base }) => base))} with ${oiled.every(({ film }) => film === 'oiled') ? (at.oil ?? blank) : blank}`,
        );
      const located = `${part.base}${part.locatedBy === null ? '' : ' located'}`;
      const aids = [
        ...inner.map(({ base }) => base),
        ...(group.some(({ marks }) => marks !== null) ? ['marks aligned'] : []),
      ];
      if (aids.length === 0) steps.take('fit', located);
      else steps.add(`fit ${located} with ${list(aids)}`);
    }
    return steps.done();
  }

  /** A lock that is tightened once the unit is set. */
  private isSetBy(lock: string): boolean {
    return this.of.family.adjusters.some(({ lockedBy, sets }) => lockedBy === lock && this.of.reads.has(sets));
  }
}

/** Steps in which objects of one verb that follow each other share a line. */
class Run {
  private readonly steps: string[] = [];
  private verb = '';
  private objects: string[] = [];

  take(verb: string, ...objects: readonly string[]) {
    if (objects.length === 0) return;
    if (verb !== this.verb) this.done();
    this.verb = verb;
    this.objects.push(...objects);
  }

  add(step: string) {
    this.done();
    this.steps.push(step);
  }

  done(): string[] {
    if (this.objects.length > 0) this.steps.push(`${this.verb} ${list(this.objects)}`);
    this.objects = [];
    return this.steps;
  }
}

/** Whether a part rests on another, directly or by way of others. */
function isOver(relations: Relations, part: Part, under: string, seen = new Set<string>()): boolean {
  return restsOn(part).some((name) => {
    if (name === under) return true;
    if (seen.has(name)) return false;
    seen.add(name);
    const next = relations.family.parts.find((other) => other.name === name);
    return next !== undefined && isOver(relations, next, under, seen);
  });
}
