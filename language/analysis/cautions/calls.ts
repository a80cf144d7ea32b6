import type { Part } from '../../model/family.ts';
import { namedIn } from '../../model/steps.ts';
import type { Verb } from '../../model/verbs.ts';
import { type Said, say } from '../../say/say.ts';
import { verbTable } from '../../syntax/verbs/index.ts';
import type { VerbCaution } from '../../syntax/verbs/verb.ts';
import type { Call, Scene } from './caution.ts';
import { partsOfObject } from './parts.ts';

/** Whether a step calls for something, and why. */
export type Calls = (scene: Scene) => Call | null;

/** The first of several that calls for it. */
export const either =
  (...calls: readonly Calls[]): Calls =>
  (scene) => {
    for (const call of calls) {
      const made = call(scene);
      if (made !== null) return made;
    }
    return null;
  };

export const because = (fact: Said): Call => ({ because: fact });

/** The step says a word, or works with a figure. */
export const stepSays = (word: string): Call => because(say`the step says ${word}`);
export const worksWith = (figure: string): Call => because(say`the step works with ${figure}`);

/** The record of the step's verb has this caution. */
export const byVerb =
  (caution: VerbCaution): Calls =>
  ({ step: { verb } }) =>
    verbTable[verb].cautions?.includes(caution) ? stepSays(verb) : null;

/** The step's verb is one of these. */
export const verbIs =
  (...verbs: readonly Verb[]): Calls =>
  ({ step }) =>
    verbs.includes(step.verb) ? stepSays(step.verb) : null;

/** The parts that a step handles. */
export function partsAt({ procedure, step }: Scene): Part[] {
  return namedIn(step).flatMap((object) => partsOfObject(procedure.family, object));
}

/** One of the parts that the step handles has what calls for it. */
export const somePart =
  (trait: (part: Part, scene: Scene) => Said | null, parts: (scene: Scene) => readonly Part[] = partsAt): Calls =>
  (scene) => {
    for (const part of parts(scene)) {
      const found = trait(part, scene);
      if (found !== null) return because(found);
    }
    return null;
  };
