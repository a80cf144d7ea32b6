import type { Procedure, SignalWord, Step } from '../model/index.ts';
import type { Station } from '../model/shop.ts';

/** What a usual caution warns of. One text each. */
export const topics = [
  'injection',
  'let-down',
  'mist',
  'flammable',
  'solvent',
  'caustic',
  'ultrasonic',
  'wheel',
  'blasting',
  'spring',
  'press',
  'air',
  'hot-cold',
  'lifting',
  'noise',
  'rags',
  'dust-fumes',
  'electrical',
  'rail',
  'lapping',
  'disposal',
  'alone',
] as const;

export type Topic = (typeof topics)[number];

/** A standard text with its signal word (ANSI Z535.4). The words stand in the catalogue of the language, by topic. */
export interface Caution {
  readonly topic: Topic;
  readonly word: SignalWord;
  /** Later steps get a short line; else the text stands at the head of a stage only. */
  readonly repeats: boolean;
}

/** A step with what is around it: all that a caution may depend on. */
export interface Scene {
  readonly procedure: Procedure;
  readonly step: Step;
  /** Where the step is done; null: not said. */
  readonly station: Station | null;
}

/** A usual caution and the steps that call for it. */
export interface UsualCaution extends Caution {
  readonly when: (scene: Scene) => boolean;
}
