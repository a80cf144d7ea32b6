import type { Quantity } from '../quantities/types.ts';
import type { DangerFact } from './danger.ts';
import type { DrawnAs } from './drawn-as.ts';
import type { Material } from './material.ts';
import type { Places } from './plan.ts';
import type { FluidKind } from './shop.ts';
import type { Allow, Named, NameUse } from './source.ts';

/** A family of units: parts, how they rest on and hold each other, faces, ports, joints, what proves them. */
export interface Family extends Named {
  readonly parts: readonly Part[];
  /** Where its units are read, one place after the other. */
  readonly places: readonly Places[];
  readonly assemblies: readonly Assembly[];
  readonly faces: readonly Face[];
  readonly ports: readonly Port[];
  readonly joints: readonly Joint[];
  readonly adjusters: readonly Adjuster[];
  /** Tests that every unit must pass, in the family's order. */
  readonly provenBy: readonly NameUse[];
  readonly provenAcrossSet: readonly NameUse[];
  /** Parts that every rebuild looks at or measures. */
  readonly alwaysChecked: readonly NameUse[];
  /** Concessions on its faces, ports, joints, adjusters and proofs. */
  readonly allow: readonly Allow[];
}

/** Names of other parts are ids in `Family.parts`; all refer to parts of the same family once resolved. */
export interface Part extends Named {
  readonly on: readonly string[];
  readonly in: readonly string[];
  readonly through: readonly string[];
  readonly bearsOn: readonly string[];
  readonly holds: readonly string[];
  readonly matchedTo: readonly string[];
  readonly balancedWith: readonly string[];
  /** The words of `located by "two dowels"`; null where nothing locates it. */
  readonly locatedBy: string | null;
  /** The words of `marks "…"`: what is to be lined up. */
  readonly marks: string | null;
  /** Stock in the shop, of `chosen from`. */
  readonly chosenFrom: string | null;
  /** Always renewed. */
  readonly renewed: boolean;
  /** `renewed`, and not only `at rebuild`: once it was tightened and released it is old, though it went in new. */
  readonly usedOnce: boolean;
  /** What must be on it when it goes in (`fitted dry`, `fitted oiled`, `fitted with test-oil`); null: not said. */
  readonly film: 'dry' | 'oiled' | FluidKind | null;
  /** Kinds of fluid that spoil it: `never in solvent, water`. */
  readonly neverIn: readonly FluidKind[];
  /** The words of `held in "holding fixture"`. */
  readonly heldIn: string | null;
  readonly suppliedLoose: boolean;
  /** A new one needs no wash before it is fitted. */
  readonly readyToFit: boolean;
  /** It must be felt to move after the joints over it are tight: `slides`, `turns-free`. */
  readonly moves: 'slides' | 'turns-free' | null;
  /** How many there are of it, alike, that are never told apart: `quantity 3`. */
  readonly quantity: number;
  /** Of `for each cylinder 1..6` and of `sides left, right`: this copy's position, and the name that all copies share. */
  readonly position: number | null;
  /** Of `sides left, right`: which of them this copy is. */
  readonly side: string | null;
  readonly base: string;
  /** The author's own words, which all copies share; `title` adds which copy it is. */
  readonly baseTitle: string;
  /** Of a spring: over this much shim its coils bind (`binds over 1.90 mm`). */
  readonly bindsOver: Quantity | null;
  /** What it is drawn as (`drawn as spring`); null: what the rest of the family tells. Nothing else follows from it. */
  readonly drawnAs: DrawnAs | null;
  /** It goes onto or into the part that carries all from the lower end, as that part is held (`from below`). */
  readonly fromBelow: boolean;
  /** It goes in from the upper end (`from above`): said where another does from below. */
  readonly fromAbove: boolean;
  /** `material aluminum`; null: not said. */
  readonly material: Material | null;
  /** `weight 25 kg`; null: not said. */
  readonly weight: Quantity | null;
  readonly dangers: readonly DangerFact[];
  readonly allow: readonly Allow[];
}

/** Parts that are taken off, kept, capped, marked, sent and renewed as one. */
export interface Assembly extends Named {
  /** Ids of the parts in it; the first carries the others: it rests on none of them. */
  readonly parts: readonly string[];
}

/** A lapped or ground face; `id` is `part.name`. Every lapped face meets one other. */
export interface Face extends Named {
  readonly id: string;
  readonly part: string;
  readonly finish: 'lapped' | 'ground' | null;
  /** Id of the face it closes against. */
  readonly meets: string | null;
  /** Part that can be put on as its cover. */
  readonly guardedBy: string | null;
}

export interface Port extends Named {
  readonly part: string;
  /** The name that the ports of all copies of its part share. */
  readonly base: string;
  /** The part that covers it when in place. */
  readonly under: string | null;
  readonly openInTransit: boolean;
}

/** A threaded joint, known by the part that is turned. */
export interface Joint extends Named {
  readonly part: string;
  readonly to: string;
  readonly thread: string | null;
  readonly oiled: boolean;
  readonly leftHand: boolean;
  readonly handTightIsFinal: boolean;
  /** Of `solid class 8.8`; null: not said. Nozzle nuts and valve holders are hollow, and have none. */
  readonly solid: SolidBolt | null;
}

/** A solid bolt or stud of an ISO metric thread, with the property class that is marked on it. */
export interface SolidBolt {
  readonly diameter: Quantity;
  readonly pitch: Quantity;
  readonly propertyClass: string;
}

/** A part with a setting. `locked-by` names the part that locks it. */
export interface Adjuster extends Named {
  readonly part: string;
  /** Name of the spec and test that it sets. */
  readonly sets: string;
  readonly rate: Quantity | null;
  readonly lockedBy: string | null;
}
