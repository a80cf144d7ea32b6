import { printable } from '../../i18n/printable.ts';
import type { Face, Family, Part } from '../../model/family.ts';

/** A family as it is drawn: of copies (`for each cylinder 1..6`) only the first, and how many there are. */
export interface DrawnFamily {
  readonly family: Family;
  /** Copies of a part, by its name. */
  readonly counts: ReadonlyMap<string, number>;
  /** The part that stands for each part in the drawing. */
  readonly standsFor: (part: string) => string;
  /** A part's title without its cylinder, fit to be set. */
  readonly title: (part: string) => string;
}

/** Copies are alike: they are drawn once, with all relations to copies as relations to the one that is drawn. */
export function onceEach(family: Family): DrawnFamily {
  const firsts = new Map<string, Part>();
  const counts = new Map<string, number>();
  const keyOf = (part: Part) => (part.position === null ? part.name : `${part.base} each`);
  for (const part of family.parts) if (!firsts.has(keyOf(part))) firsts.set(keyOf(part), part);
  const represented = new Map(family.parts.map((part) => [part.name, firsts.get(keyOf(part))!.name]));
  const quantities = new Map(family.parts.map(({ name, quantity }) => [name, quantity]));
  for (const name of represented.values()) counts.set(name, (counts.get(name) ?? 0) + (quantities.get(name) ?? 1));
  const standsFor = (part: string) => represented.get(part) ?? part;
  const isDrawn = ({ part }: { readonly part: string }) => standsFor(part) === part;
  const others = (names: readonly string[], self: string) => [
    ...new Set(
      names
        .filter((name) => represented.has(name))
        .map(standsFor)
        .filter((name) => name !== self),
    ),
  ];
  const faces = new Map(family.faces.map((face) => [face.id, face]));
  const drawnFace = (face: Face): string => `${standsFor(face.part)}.${face.name}`;
  const parts = [...firsts.values()].map(
    (part): Part => ({
      ...part,
      on: others(part.on, part.name),
      in: others(part.in, part.name),
      through: others(part.through, part.name),
      bearsOn: others(part.bearsOn, part.name),
      holds: others(part.holds, part.name),
      matchedTo: others(part.matchedTo, part.name),
      balancedWith: others(part.balancedWith, part.name),
    }),
  );
  const titles = new Map(parts.map((part) => [part.name, titleOf(part)]));
  return {
    family: {
      ...family,
      parts,
      faces: family.faces.filter(isDrawn).map((face) => {
        const other = face.meets === null ? undefined : faces.get(face.meets);
        return {
          ...face,
          meets: other === undefined ? null : drawnFace(other),
          guardedBy: face.guardedBy === null ? null : standsFor(face.guardedBy),
        };
      }),
      ports: family.ports
        .filter(isDrawn)
        .map((port) => ({ ...port, under: port.under === null ? null : standsFor(port.under) })),
      joints: family.joints.filter(isDrawn).map((joint) => ({ ...joint, to: standsFor(joint.to) })),
      adjusters: family.adjusters.filter(isDrawn),
    },
    counts,
    standsFor,
    title: (part) => titles.get(standsFor(part)) ?? printable(part),
  };
}

/** The author's words; if there are none, the name with blanks. */
function titleOf({ title, base, baseTitle, position }: Part): string {
  const own = position === null ? title : baseTitle;
  return printable(own === base ? base.replace(/[-_]+/gu, ' ') : own);
}
