import { type Relations, restsOn } from '../../analysis/relations.ts';
import type { Part } from '../../model/family.ts';
import type { ShapeName } from './shapes/index.ts';

const least = 0.3;

/** Shapes that are wide at one end only: what goes on them is as wide as their stem needs. */
const slim: ReadonlySet<ShapeName> = new Set(['shaft', 'shaft-and-wheel', 'rod', 'valve']);

/** Least and most share of shapes that are known to be wide or narrow. */
const widths: { readonly [shape in ShapeName]?: { readonly least?: number; readonly most?: number } } = {
  plate: { least: 0.92 },
  'retaining-nut': { least: 0.9 },
  'shaft-and-wheel': { least: 0.92 },
  shaft: { least: 0.5 },
  wheel: { least: 0.86 },
  diaphragm: { least: 0.7 },
  screw: { most: 0.6 },
  nut: { most: 0.6 },
  'cap-nut': { most: 0.7 },
};

/** Widths of parts as shares of the widest: what lies in another is narrower, what holds others goes around them. */
export function shares(
  relations: Relations,
  order: readonly Part[],
  carrier: string,
  shapes: ReadonlyMap<string, ShapeName>,
): Map<string, number> {
  const found = new Map<string, number>();
  /** Parts that have something on them already: what comes on them next goes inside of that. */
  const covered = new Set<string>();
  for (const part of order) {
    const [host = null] = restsOn(part).filter((name) => found.has(name));
    const under = host === null ? 1 : found.get(host)!;
    const onCarrier = host === carrier;
    const joint = relations.joint(part.name);
    const share =
      part.name === carrier
        ? 1
        : host === null
          ? 0.84
          : part.through.length > 0
            ? onCarrier
              ? 0.6
              : Math.min(0.66, under)
            : part.in.includes(host)
              ? onCarrier
                ? 0.46
                : under * 0.6
              : joint !== undefined && part.holds.length > 0
                ? onCarrier
                  ? 0.96
                  : Math.min(0.96, under * 1.1)
                : onCarrier
                  ? 0.8
                  : joint === undefined
                    ? Math.min(under, 0.8)
                    : Math.min(under, 0.8) * 0.85;
    const { least: narrowest = least, most = 1 } = widths[shapes.get(part.name)!] ?? {};
    const isOnShaft = host !== null && slim.has(shapes.get(host)!);
    const isInside = host !== null && !onCarrier && part.on.includes(host) && covered.has(host);
    found.set(part.name, Math.min(most, Math.max(narrowest, isOnShaft ? 0.42 : isInside ? share * 0.6 : share)));
    for (const other of part.on) covered.add(other);
  }
  return found;
}
