import { type Relations, restsOn } from '../../analysis/relations.ts';
import { printable } from '../../i18n/printable.ts';
import type { Face, Port } from '../../model/family.ts';
import type { DrawingWords } from './labels.ts';
import type { DrawnFamily } from './once-each.ts';

/** What the family says about a part, in words: for its label, and for the description. */
export class Facts {
  readonly drawn: DrawnFamily;
  readonly relations: Relations;
  readonly words: DrawingWords;
  /** Torques as the caller writes them, by the part that is drawn. */
  private readonly torques: ReadonlyMap<string, string>;

  constructor(drawn: DrawnFamily, relations: Relations, words: DrawingWords, torques: ReadonlyMap<string, string>) {
    this.drawn = drawn;
    this.relations = relations;
    this.words = words;
    this.torques = new Map([...torques].map(([part, text]) => [drawn.standsFor(part), printable(text)]));
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

  /** Whether a part rests on any of these. */
  restsOnAny(name: string, parts: readonly string[]): boolean {
    return restsOn(this.relations.part(name)).some((under) => parts.includes(under));
  }

  located(name: string): string[] {
    const { locatedBy } = this.relations.part(name);
    return locatedBy === null ? [] : [this.words.locatedBy(printable(locatedBy))];
  }

  /** `M20x1.5`, the torque. */
  joint(name: string): string[] {
    const thread = this.relations.joint(name)?.thread ?? null;
    const torque = this.torques.get(name);
    return [
      ...(thread === null ? [] : [printable(thread)]),
      ...(torque === undefined ? [] : [unbroken(this.words.torque(torque))]),
    ];
  }

  leftHand(name: string): string[] {
    return this.relations.joint(name)?.leftHand === true ? [this.words.leftHand] : [];
  }

  loose(name: string): string[] {
    return this.relations.part(name).suppliedLoose ? [this.words.suppliedLoose] : [];
  }

  /** `lapped`, `guarded by nozzle nut`; with what it meets where that is not to be seen. */
  face(face: Face, other: string | null): string[] {
    const finish =
      face.finish === 'lapped' ? this.words.lapped : face.finish === 'ground' ? this.words.ground : this.words.face;
    return [
      other === null ? finish : `${finish}, ${this.words.meets(this.inText(other))}`,
      ...(face.guardedBy === null ? [] : [this.words.guardedBy(this.inText(face.guardedBy))]),
    ];
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
