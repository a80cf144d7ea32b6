import type { Difference, Kind, Limit, Quantity, RangeLimit, ToleranceOnly } from '../quantities/types.ts';
import type { DangerFact } from './danger.ts';
import type { Allow, Named, Source } from './source.ts';

/** The shop that a procedure is written at: stations, assets, fluids, stock and standing tolerances. */
export interface Shop extends Named {
  readonly about: Letterhead;
  /** ISO 639 code of the language that its words are in, and those of its procedures that do not say; null: not said. */
  readonly language: string | null;
  readonly stations: readonly Station[];
  readonly assets: readonly Asset[];
  readonly fluids: readonly Fluid[];
  readonly stocks: readonly Stock[];
  readonly masters: readonly Master[];
  readonly unlessStated: readonly StandingTolerance[];
  /** `air below 30 psi`: hand-held blowing stays under it; null: 29 CFR 1910.242(b) is taken. */
  readonly airBelow: { readonly limit: Quantity; readonly source: Source } | null;
  readonly acceptance: Acceptance;
  /** Concessions on its stations, tools, fluids, stocks and standing tolerances. */
  readonly allow: readonly Allow[];
}

/** What a customer reads about the shop; null: not said. */
export interface Letterhead {
  /** On one line: `Harbor road 5, 12345 Somewhere`. */
  readonly address: string | null;
  readonly telephone: string | null;
  /** By whom, to what, under which number. */
  readonly accreditation: string | null;
  /** Standing words: warranty, claims. */
  readonly terms: string | null;
}

/** A place of work. Traits may combine (`clean, pressure`). */
export interface Station extends Named {
  readonly clean: boolean;
  readonly dirty: boolean;
  readonly abrasive: boolean;
  readonly wet: boolean;
  readonly pressure: boolean;
  readonly dangers: readonly DangerFact[];
  /** Protective equipment in the author's words: `wear "face shield, gloves"`. */
  readonly wear: string | null;
}

export type AssetKind = 'wrench' | 'gauge' | 'tool';

/** A numbered wrench, gauge or measuring tool. */
export interface Asset extends Named {
  readonly kind: AssetKind;
  readonly range: RangeLimit | null;
  /** `within 4 %` or `within 0.003 mm`: the permissible error, of reading where in percent. */
  readonly within: Difference | null;
  /** EN 837-1 class, percent of span, as written. */
  readonly accuracyClass: string | null;
  readonly graduated: Difference | null;
  /** The station that it is fixed at. */
  readonly at: string | null;
  /** ISO date of the last calibration; null: not said. */
  readonly calibrated: string | null;
  /** ISO date of the next calibration. */
  readonly due: string | null;
  /** All of them that are written down, the last included, the oldest first. */
  readonly calibrations: readonly Calibration[];
  /** ISO date from which it is no longer used, for good or until it is repaired; null: it is in use. */
  readonly outOfUse: string | null;
  readonly damped: boolean;
  readonly digital: boolean;
  /** Of a wrench: from the grip's mark to the square drive. */
  readonly length: Quantity | null;
}

/** `calibrated 2026-01-15 due 2027-01-15 certificate "K-113" found 3 bar high at 250 bar`. */
export interface Calibration {
  /** ISO date; null: not said. */
  readonly calibrated: string | null;
  /** ISO date. */
  readonly due: string | null;
  /** Number of its certificate. */
  readonly certificate: string | null;
  /** How far off the tool was found when it came in; what it had shown before is in doubt by that. */
  readonly found: { readonly error: Difference; readonly high: boolean; readonly at: Quantity } | null;
}

/** `test-oil` calibration fluid; `oil` assembly oil; a fluid with no trait is a solvent. */
export type FluidKind = 'solvent' | 'detergent' | 'caustic' | 'water' | 'test-oil' | 'oil' | 'preservative';

export interface Fluid extends Named {
  readonly kind: FluidKind;
  /** Flash point; null: not stated. */
  readonly flammable: Quantity | null;
}

/** A test piece of known reading: it is read before and after the units at its station. */
export interface Master extends Named {
  readonly station: string;
  /** What it has to read; null: the shop does not say. */
  readonly limit: Limit | null;
}

/** Setting shims and the like, by thickness. */
export interface Stock extends Named {
  /** All thicknesses, thinnest first. */
  readonly sizes: readonly Quantity[];
  /** How many there are of each size, in the order of `sizes`; null: as many as are wanted. */
  readonly counts: readonly (number | null)[];
  /** `stacks of two`: two of them may lie on each other. */
  readonly stacks: boolean;
}

/** `unless stated torque ±10 % source "…"`. */
export interface StandingTolerance {
  readonly source: Source;
  readonly kind: Kind;
  readonly limit: ToleranceOnly;
  readonly sourceText: string | null;
}

/**
 * How a reading is judged. `simple`: a reading inside the limit passes, whatever the tool is good for. Guarded: the
 * limit is drawn in by a share of the tool's expanded uncertainty (two standard deviations): 0.83 of it by
 * ISO 14253-1:2017 (from memory), or all of it.
 */
export type DecisionRule = 'simple' | 'guarded' | 'fully guarded';

/** `acceptance guarded source "…"`; simple where the shop says nothing. */
export interface Acceptance {
  readonly rule: DecisionRule;
  readonly sourceText: string | null;
}
