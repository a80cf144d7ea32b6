import type { Procedure, SignalWord, Step } from '../../model/index.ts';
import type { Station } from '../../model/shop.ts';
import type { Said } from '../../say/say.ts';

/** What a usual caution warns of. One text each. */
export const topics = [
  'injection',
  'let-down',
  'mist',
  'flammable',
  'solvent',
  'oil-on-skin',
  'caustic',
  'ultrasonic',
  'wheel',
  'blasting',
  'spring',
  'press',
  'air',
  'hose',
  'rod',
  'hot-cold',
  'lifting',
  'sharp',
  'noise',
  'rags',
  'dust-fumes',
  'electrical',
  'insulation',
  'rail',
  'drive',
  'rotor',
  'rotating',
  'lapping',
  'disposal',
  'alone',
] as const;

export type Topic = (typeof topics)[number];

/** A standard text with its signal word (ANSI Z535.4). The words are in the catalogue of the language, by topic. */
export interface UsualText {
  readonly topic: Topic;
  readonly word: SignalWord;
  /** Later steps get a short line; else the text is at the head of a stage only. */
  readonly repeats: boolean;
}

/** A usual caution where it is called for. */
export interface Caution extends UsualText {
  /** What it follows from; at the head of a stage, at the first step that calls for it. */
  readonly because: Said;
}

/** A step with what is around it: all that a caution may depend on. */
export interface Scene {
  readonly procedure: Procedure;
  readonly step: Step;
  /** Where the step is done; null: not said. */
  readonly station: Station | null;
  /** All that is tested where the step is done is tested with air or vacuum. */
  readonly gasOnly: boolean;
  /** The highest pressure of the procedure, as written, where pipes and rails store it; else null. */
  readonly storedFigure: string | null;
}

/** What calls for a caution at a step. */
export interface Call {
  readonly because: Said;
  /** The danger is near, but not in what this step does: the head of the stage warns of it, the step does not. */
  readonly headOnly?: boolean;
}

/** A usual caution and the steps that call for it. */
export interface UsualCaution extends UsualText {
  /** What it follows from, whatever the step: for the lead. */
  readonly from: Said;
  readonly when: (scene: Scene) => Call | null;
}
