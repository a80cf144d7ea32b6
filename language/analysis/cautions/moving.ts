import { isDeclared, saidOf } from '../../model/danger.ts';
import type { DrawnAs } from '../../model/drawn-as.ts';
import type { Family, Part } from '../../model/family.ts';
import { own } from '../../model/steps.ts';
import type { Verb } from '../../model/verbs.ts';
import { type Said, say } from '../../say/say.ts';
import { verbsThat } from '../../syntax/verbs/index.ts';
import { type Calls, either, partsAt, somePart, stepSays, worksWith } from './calls.ts';
import type { Scene } from './caution.ts';
import { declared, nearDeclares, stepDeclares } from './declared.ts';
import { figuresOf, ofKind } from './figures.ts';

/** What lies under load by its shape. */
const sprung: readonly (DrawnAs | null)[] = ['spring', 'circlip'];
/** What has blades, and spins in an air jet, by its shape. */
const bladed: readonly (DrawnAs | null)[] = ['wheel', 'shaft-and-wheel'];

export const hasBlades = ({ drawnAs }: Part): boolean => bladed.includes(drawnAs);

const drawn = ({ name, drawnAs }: Part): Said => say`part ${name} is drawn as ${drawnAs!}`;

/**
 * What the family shows about a spring: its shape, shim that binds it, or its place next to a part that presses on another,
 * which is pressed there by what is behind it. Null if there is nothing.
 */
export function springTrait(family: Family, part: Part): Said | null {
  if (sprung.includes(part.drawnAs)) return drawn(part);
  if (part.bindsOver !== null) return say`part ${part.name} binds, so it is a spring`;
  const bearer = family.parts.find(
    (other) => other.bearsOn.length > 0 && (other.on.includes(part.name) || part.on.includes(other.name)),
  );
  if (bearer === undefined) return null;
  return say`part ${part.name} is next to ${bearer.name}, which bears on ${bearer.bearsOn[0]!}`;
}

/** Verbs that let go of a part, or put load on it. */
const frees: readonly Verb[] = verbsThat('frees');

/** A spring or a clip is handled: what lies under load flies. Only the parts and the step itself say so. */
export const handlesSpring: Calls = either(stepDeclares('spring-loaded'), (scene) => {
  const { step, procedure } = scene;
  if (!frees.includes(step.verb) || saidOf(step, 'spring-loaded') !== undefined) return null;
  return somePart((part) => {
    const said = saidOf(part, 'spring-loaded');
    if (said === undefined) return springTrait(procedure.family, part);
    return said.denied ? null : say`part ${part.name} says ${'spring-loaded'}`;
  })(scene);
});

/** Verbs at which a part that can turn may turn; the air line spins a rotor until it bursts. */
const spins: readonly Verb[] = verbsThat('spins');

/** Something turns by power: what is said to, and is at work. */
export const isTurning: Calls = either(stepDeclares('rotating'), (scene) =>
  spins.includes(scene.step.verb) ? nearDeclares('rotating')(scene) : null,
);

/** A drive turns the unit: a speed in turns, of the step or of one of its points. A lever’s strokes are no speed of it. */
export const isDrivenByPower: Calls = ({ procedure, step }) => {
  const figure = ofKind(figuresOf(procedure, step), 'speed');
  return figure === null ? null : worksWith(figure);
};

/** What a family shows about a rotor. */
function rotorTrait(part: Part, { procedure: { family } }: Scene): Said | null {
  const said = saidOf(part, 'rotating');
  if (said !== undefined) return said.denied ? null : say`part ${part.name} says ${'rotating'}`;
  if (hasBlades(part)) return drawn(part);
  const balanced =
    part.balancedWith.length > 0 || family.parts.some(({ balancedWith }) => balancedWith.includes(part.name));
  return balanced ? say`part ${part.name} is balanced` : null;
}

/** A rotor in an air jet, or at speed: it can burst, and runs on. */
export const spinsRotor: Calls = (scene) => {
  const { step, procedure } = scene;
  const inJet = step.verb === 'blow-dry' || (step.air !== null && step.objects.length > 0);
  if (inJet) return somePart(rotorTrait)(scene);
  const atSpeed = isDrivenByPower(scene) !== null || own(step, 'test')?.reads === 'unbalance';
  if (!atSpeed) return null;
  return somePart(rotorTrait, () => (step.objects.length > 0 ? partsAt(scene) : procedure.family.parts))(scene);
};

/** Edges that cut the hand that takes them up: declared, or blades. */
export const isSharp: Calls = either(
  declared('sharp'),
  somePart((part) => {
    const said = saidOf(part, 'sharp');
    return said === undefined && hasBlades(part) ? drawn(part) : null;
  }),
);

/** Something that slides out by air or vacuum: an actuator’s rod. What is read of it is how far, or how hard, or how it turns. */
export const movesRod: Calls = ({ procedure, step }) => {
  if (step.gas === null && step.air === null) return null;
  if (step.verb !== 'test' && step.verb !== 'set' && step.verb !== 'read') return null;
  const reads = own(step, 'test')?.reads ?? null;
  if (reads === 'length' || reads === 'angle' || reads === 'force') return stepSays(`read ${reads}`);
  const moving = procedure.family.parts.find((part) => part.moves === 'slides' && !isDeclared(part, 'spring-loaded'));
  return moving === undefined ? null : { because: say`part ${moving.name} slides` };
};
