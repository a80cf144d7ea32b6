import { type Danger, type DangerFact, saidOf } from '../../model/danger.ts';
import type { Part } from '../../model/family.ts';
import { isToxic } from '../../model/material.ts';
import type { Verb } from '../../model/verbs.ts';
import { amount, formatQuantity, type Quantity } from '../../quantities/index.ts';
import { say } from '../../say/say.ts';
import { verbsThat } from '../../syntax/verbs/index.ts';
import { because, type Calls, either, partsAt, somePart, stepSays, worksWith } from './calls.ts';
import type { Call, Scene } from './caution.ts';
import { atLeast, below, figuresOf } from './figures.ts';

/** `hot 120 °C` */
function written({ danger, figure }: DangerFact): string {
  return figure === null ? danger : `${danger} ${formatQuantity(figure)}`;
}

/** What an author declared of the step, its station or the parts that it handles. */
export const declared = (danger: Danger): Calls => either(stepDeclares(danger), nearDeclares(danger));

/** The step itself. */
export const stepDeclares =
  (danger: Danger): Calls =>
  ({ step }) => {
    const fact = saidOf(step, danger);
    return fact === undefined || fact.denied ? null : stepSays(written(fact));
  };

const stationDeclares =
  (danger: Danger): Calls =>
  ({ station }) => {
    const fact = station === null ? undefined : saidOf(station, danger);
    return fact === undefined || fact.denied ? null : because(say`station ${station!.name} says ${written(fact)}`);
  };

const partDeclares = (danger: Danger, parts: (scene: Scene) => readonly Part[] = partsAt): Calls =>
  somePart((part) => {
    const fact = saidOf(part, danger);
    return fact === undefined || fact.denied ? null : say`part ${part.name} says ${written(fact)}`;
  }, parts);

/** The station of the step, or a part that it handles. */
export const nearDeclares = (danger: Danger): Calls => either(stationDeclares(danger), partDeclares(danger));

/** What is near: the head of the stage warns of it, steps where it is met. */
export const metAt =
  (verbs: readonly Verb[], call: Calls): Calls =>
  (scene) => {
    const made = call(scene);
    return made === null || verbs.includes(scene.step.verb) ? made : { ...made, headOnly: true };
  };

/** Verbs that take the whole unit up, whatever part they name. */
const wholeUnit: readonly Verb[] = verbsThat('whole unit');
/** Verbs at which what is heavy is taken up or set down. */
const lifts: readonly Verb[] = verbsThat('lifts');

/** From this weight on nobody lifts by hand: the load constant of the revised NIOSH lifting equation, 51 lb (from memory). */
const byHand: Quantity = { number: '23', unit: 'kg' };

/** What is in the hands at a step: its parts; all of them where the unit is taken up, whatever it names. */
function takenUp(scene: Scene): readonly Part[] {
  const { step, procedure } = scene;
  return wholeUnit.includes(step.verb) && step.objects.length === 0 ? procedure.family.parts : partsAt(scene);
}

/** Something heavy is lifted, or near: declared, or by its weight. */
export const isHeavy: Calls = either(
  stepDeclares('heavy'),
  metAt(
    lifts,
    either(
      stationDeclares('heavy'),
      partDeclares('heavy', takenUp),
      somePart(
        ({ name, weight }) =>
          weight !== null && atLeast([weight], byHand) !== null
            ? say`part ${name} weighs ${formatQuantity(weight)}`
            : null,
        takenUp,
      ),
      weighsTogether,
    ),
  ),
);

/** A unit whose parts weigh too much together, where it is taken up whole. */
function weighsTogether(scene: Scene): Call | null {
  const { step, procedure } = scene;
  if (!wholeUnit.includes(step.verb)) return null;
  const weights = procedure.family.parts.flatMap(({ weight }) => weight ?? []);
  const sum = weights.reduce((all, weight) => all.add(amount(weight)), amount({ number: '0', unit: 'kg' }));
  if (sum.compare(amount(byHand)) < 0) return null;
  return because(say`its parts weigh ${formatQuantity(byHand)} or more together`);
}

/**
 * Metal and water from 60 °C burn at a touch of seconds (ISO 13732-1: bare metal 60 °C in about 5 s, from memory);
 * metal under −10 °C sticks to the skin and freezes it (rule of thumb after ISO 13732-3, from memory).
 */
const burns: Quantity = { number: '60', unit: '°C' };
const freezes: Quantity = { number: '-10', unit: '°C' };

export const isHotOrCold: Calls = either(
  ({ procedure, step }) => {
    const figures = figuresOf(procedure, step);
    const figure = atLeast(figures, burns) ?? below(figures, freezes);
    return figure === null ? null : worksWith(figure);
  },
  declared('hot'),
  declared('cold'),
);

/** Harmful dust or fumes: declared, or by what a part is made of. */
export const isHarmfulDust: Calls = either(
  declared('toxic'),
  somePart(({ name, material }) => (isToxic(material) ? say`part ${name} is of ${material!}` : null)),
);
