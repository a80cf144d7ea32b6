import type { Part } from '../model/family.ts';
import { isDissolvedByCaustic } from '../model/material.ts';
import type { FluidKind } from '../model/shop.ts';
import { noFilm, wet } from './locations.ts';

/** Fluids that are mostly water: what water spoils, they spoil too. */
const watery: ReadonlySet<FluidKind> = new Set(['water', 'detergent', 'caustic']);

/** Whether a part must not get into a fluid: `never in solvent, water`, or caustic on what it is made of. */
export function isSpoiltBy({ neverIn, material }: Pick<Part, 'neverIn' | 'material'>, kind: FluidKind): boolean {
  return (
    neverIn.includes(kind) ||
    (watery.has(kind) && neverIn.includes('water')) ||
    (kind === 'caustic' && isDissolvedByCaustic(material))
  );
}

/** Values of `wet` with which a part must not go in. Preserving oil is for what is put away, where nothing else is said. */
export function wrongFilm({ film }: Pick<Part, 'film'>): number {
  const { oil, assembly, preserving } = wet;
  switch (film) {
    case null:
      return preserving;
    case 'dry':
      return oil | assembly | preserving;
    case 'oiled':
      return noFilm | preserving;
    case 'test-oil':
      return noFilm | assembly | preserving;
    case 'oil':
      return noFilm | oil | preserving;
    case 'preservative':
      return noFilm | oil | assembly;
    // The grammar takes these too: nothing goes in wet with them, and that is reported as such.
    case 'solvent':
    case 'detergent':
    case 'caustic':
    case 'water':
      return 0;
  }
}
