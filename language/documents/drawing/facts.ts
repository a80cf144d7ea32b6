import { type Relations, restsOn } from '../../analysis/relations.ts';
import { printable } from '../../i18n/printable.ts';
import type { Face, Port } from '../../model/family.ts';
import type { DrawingWords } from './labels.ts';
import type { DrawnFamily } from './once-each.ts';

/** What a procedure tells about the parts of its family, as it is to be printed. By the names of parts. */
export interface Annotations {
  /** What a joint's part is tightened to. */
  readonly torques?: ReadonlyMap<string, string>;
  /** The number of the step that it is fitted at. */
  readonly steps?: ReadonlyMap<string, string>;
  /** Figures of a part: the length of a spring, the shims in the drawer. */
  readonly figures?: ReadonlyMap<string, readonly string[]>;
  /** Parts that set the gap to the next one. */
  readonly gaps?: ReadonlySet<string>;
  /** Names of ports that a line is connected to. */
  readonly feeds?: ReadonlySet<string>;
}

/** What the family says about a part, in words: for its label, and for the description. */
export class Facts {
  readonly drawn: DrawnFamily;
  readonly relations: Relations;
  readonly words: DrawingWords;
  /** Parts over which a gap is set: dimensions are drawn there. */
  readonly gaps: ReadonlySet<string>;
  /** Ports that fluid comes in by. */
  readonly feeds: ReadonlySet<string>;
  /** By the part that is drawn. */
  private readonly torques: ReadonlyMap<string, string>;
  private readonly steps: ReadonlyMap<string, string>;
  private readonly texts: ReadonlyMap<string, readonly string[]>;

  constructor(drawn: DrawnFamily, relations: Relations, words: DrawingWords, notes: Annotations = {}) {
    this.drawn = drawn;
    this.relations = relations;
    this.words = words;
    const byDrawn = <T>(map: ReadonlyMap<string, T> = new Map()) =>
      // The first of all copies speaks for them.
      new Map([...map].reverse().map(([part, one]) => [drawn.standsFor(part), one] as const));
    this.torques = byDrawn(notes.torques);
    this.steps = byDrawn(notes.steps);
    this.texts = byDrawn(notes.figures);
    this.gaps = new Set([...(notes.gaps ?? [])].map(drawn.standsFor));
    this.feeds = notes.feeds ?? new Set();
  }

  /** `Valve holder × 6`. */
  heading(part: string): string {
    return `${this.drawn.title(part)}${this.count(part)}`;
  }

  /** Behind the title of what is drawn once and there more often; else empty. It does not part from the last word. */
  count(part: string): string {
    const count = this.drawn.counts.get(part) ?? 1;
    return count === 1 ? '' : `\u00a0${unbroken(this.words.times(count))}`;
  }

  /** A part's title inside a line. */
  inText(part: string): string {
    return this.words.inText(this.drawn.title(part));
  }

  list(parts: readonly string[]): string {
    return this.words.list(parts.map((part) => this.inText(part)));
  }

  /** `in holder`, `on guide disc`, `through shield`. */
  rests(name: string): string[] {
    const part = this.relations.part(name);
    return [
      ...(part.on.length > 0 ? [this.words.on(this.list(part.on))] : []),
      ...(part.in.length > 0 ? [this.words.in(this.list(part.in))] : []),
      ...(part.through.length > 0 ? [this.words.through(this.list(part.through))] : []),
    ];
  }

  /** Whether the picture shows what a part rests on: it is beside it, a bracket joins their faces, or it is screwed to the body. */
  isShownOn(name: string, beside: readonly string[]): boolean {
    const hosts = restsOn(this.relations.part(name));
    const faces = this.relations.family.faces;
    const meets = this.relations.faces(name).map((face) => faces.find(({ id }) => id === face.meets)?.part);
    const to = this.relations.joint(name)?.to;
    return hosts.some(
      (host) =>
        beside.includes(host) ||
        meets.includes(host) ||
        (to === host && restsOn(this.relations.part(host)).length === 0),
    );
  }

  located(name: string): string[] {
    const { locatedBy } = this.relations.part(name);
    return locatedBy === null ? [] : [this.words.locatedBy(printable(locatedBy))];
  }

  /** `M20x1.5`, `threads oiled`. */
  thread(name: string): string[] {
    const joint = this.relations.joint(name);
    return [
      ...(joint?.thread == null ? [] : [printable(this.words.thread(joint.thread))]),
      ...(joint?.oiled === true ? [this.words.oiled] : []),
    ];
  }

  torque(name: string): string[] {
    const torque = this.torques.get(name);
    return torque === undefined ? [] : [this.words.torque(printable(torque))];
  }

  leftHand(name: string): string[] {
    return this.relations.joint(name)?.leftHand === true ? [this.words.leftHand] : [];
  }

  loose(name: string): string[] {
    return this.relations.part(name).suppliedLoose ? [this.words.suppliedLoose] : [];
  }

  /** `new`, of what is always renewed. */
  renewed(name: string): string[] {
    return this.relations.part(name).renewed ? [this.words.renewed] : [];
  }

  /** What the caller has to say about a part. */
  figures(name: string): string[] {
    return (this.texts.get(name) ?? []).map(printable);
  }

  step(name: string): string | null {
    const step = this.steps.get(name);
    return step === undefined ? null : printable(step);
  }

  /** `end face of holder`, or the author's own words for it. */
  faceName(face: Face): string {
    const part = this.relations.part(face.part);
    return face.title === `${part.title}, ${face.name} face`
      ? this.words.faceOf(printable(face.name), this.inText(face.part))
      : this.words.inText(printable(face.title));
  }

  /** Two faces that close against each other, the upper one first, and what guards them: a line each. */
  pair(upper: Face, lower: Face): string[] {
    const guards = [...new Set([lower, upper].flatMap(({ guardedBy }) => guardedBy ?? []))];
    return [
      this.faceName(upper),
      ...(lower.finish === null
        ? [this.words.meets(this.faceName(lower))]
        : [this.words.meetsFace(this.finish(lower)), this.faceName(lower)]),
      ...(guards.length === 0 ? [] : [this.words.guardedBy(this.list(guards))]),
    ];
  }

  /** `end face of holder`, `lapped`, what it meets, `guarded by nozzle nut`. */
  face(face: Face, other: Face | null): string[] {
    return [
      this.faceName(face),
      ...(face.finish === null ? [] : [this.finish(face)]),
      ...(other === null ? [] : [this.words.meets(this.faceName(other))]),
      ...(face.guardedBy === null ? [] : [this.words.guardedBy(this.inText(face.guardedBy))]),
    ];
  }

  private finish({ finish }: Face): string {
    return finish === 'lapped' ? this.words.lapped : finish === 'ground' ? this.words.ground : this.words.face;
  }

  port(port: Port): string {
    const title = printable(port.title);
    if (port.openInTransit) return this.words.openInTransit(title);
    return port.under === null ? this.words.capped(title) : this.words.coveredBy(title, this.inText(port.under));
  }
}

/** A short text that stays on one line: `60 N·m ±5`. */
function unbroken(text: string): string {
  return text.length > 24 ? text : text.replaceAll(' ', '\u00a0');
}
