import type { Danger } from '../../model/danger.ts';
import type { Family, Part } from '../../model/family.ts';
import type { Step } from '../../model/procedure.ts';
import type { Fluid } from '../../model/shop.ts';
import { namedIn, own } from '../../model/steps.ts';
import type { Verb } from '../../model/verbs.ts';
import type { Quantity } from '../../quantities/types.ts';
import { verbsThat, verbTable } from '../../syntax/verbs/index.ts';
import type { VerbCaution } from '../../syntax/verbs/verb.ts';
import { isPneumatic } from '../hydraulic.ts';
import type { Because, WordsOf } from './because.ts';
import type { Call, Scene } from './caution.ts';
import { atLeast, below, figuresOf, highest, ofKind } from './figures.ts';
import { partsOfObject } from './parts.ts';
import { suspectWord } from './suspect-words.ts';

/** The first of several that calls for it. */
export const either =
  (...calls: readonly ((scene: Scene) => Call | null)[]) =>
  (scene: Scene): Call | null => {
    for (const call of calls) {
      const made = call(scene);
      if (made !== null) return made;
    }
    return null;
  };

/** The record of the step's verb has this caution. */
export const byVerb =
  (caution: VerbCaution) =>
  ({ step: { verb } }: Scene): Call | null =>
    verbTable[verb].cautions?.includes(caution) ? { because: { from: 'verb', verb } } : null;

/** The step's verb is one of these. */
const verbIs =
  (...verbs: readonly Verb[]) =>
  ({ step }: Scene): Call | null =>
    verbs.includes(step.verb) ? { because: { from: 'verb', verb: step.verb } } : null;

/** The fluid that the step uses, as the shop declares it. */
function fluidAt({ procedure, step }: Scene): Fluid | null {
  return procedure.shop.fluids.find((fluid) => fluid.name === own(step, 'fluid')) ?? null;
}

/** The step's fluid is of this kind. */
export const fluidIs =
  (kind: Fluid['kind']) =>
  (scene: Scene): Call | null => {
    const fluid = fluidAt(scene);
    return fluid?.kind === kind ? { because: { from: 'fluid', fluid: fluid.name, trait: kind } } : null;
  };

/** A solvent, detergent or oil that burns by its own declaration. */
export function usesFlammable(scene: Scene): Call | null {
  const fluid = fluidAt(scene);
  return fluid?.flammable == null ? null : { because: { from: 'fluid', fluid: fluid.name, trait: 'flammable' } };
}

/** It is called for, and there is a fluid: that is the reason then. */
export const withFluid =
  (call: (scene: Scene) => Call | null) =>
  (scene: Scene): Call | null => {
    const fluid = fluidAt(scene);
    if (fluid === null || call(scene) === null) return null;
    return { because: { from: 'fluid', fluid: fluid.name, trait: fluid.kind } };
  };

/** The parts that a step handles. */
function partsAt({ procedure, step }: Scene): Part[] {
  return namedIn(step).flatMap((object) => partsOfObject(procedure.family, object));
}

/** The author's own words of a step, without those of its station and its parts. */
export function ownWords(step: Step): string {
  return [
    step.text,
    own(step, 'reading'),
    step.note,
    own(step, 'holder'),
    own(step, 'accept'),
    ...(own(step, 'conditions') ?? []),
    ...step.tools.map((tool) => (tool.form === 'words' ? tool.text : '')),
  ]
    .filter((word) => word != null)
    .join(' ');
}

/**
 * What an author declared of the step, its station or the parts that it handles; and where nobody said yes or no, what
 * their words sound like. Nothing said about the unit (`receive`, `pack`) is lost: there `whole` counts every part.
 */
export const declared =
  (danger: Danger, whole: readonly Verb[] = []) =>
  (scene: Scene): Call | null => {
    const because = declaredAt(danger, whole, scene);
    return because === null ? null : { because };
  };

function declaredAt(danger: Danger, whole: readonly Verb[], scene: Scene): Because | null {
  const { step, station, procedure } = scene;
  const said = (of: { readonly dangers: Step['dangers'] }) => of.dangers.find((fact) => fact.danger === danger);
  const parts = whole.includes(step.verb) && step.objects.length === 0 ? procedure.family.parts : partsAt(scene);
  const own = said(step);
  if (own?.denied === false) return { from: 'step', danger };
  if (station !== null && said(station)?.denied === false)
    return { from: 'station', station: station.name, trait: danger };
  const part = parts.find((one) => said(one)?.denied === false);
  if (part !== undefined) return { from: 'part', part: part.name, trait: `is ${danger}` };
  if (own !== undefined) return null;
  const sounding: { readonly text: string; readonly of: WordsOf }[] = [
    { text: ownWords(step), of: { kind: 'step' } as const },
    ...(station === null || said(station) !== undefined
      ? []
      : [{ text: station.title, of: { kind: 'station', name: station.name } as const }]),
    ...partsAt(scene)
      .filter((one) => said(one) === undefined)
      .map((one) => ({ text: one.title, of: { kind: 'part', name: one.name } as const })),
  ];
  for (const { text, of } of sounding) {
    const word = suspectWord(danger, text);
    if (word !== null) return { from: 'words', word, danger, of };
  }
  return null;
}

/** Verbs that let go of a part, or put load on it. */
const frees: readonly Verb[] = verbsThat('frees');

/**
 * What the model shows about a spring: shim that binds it, or its place next to a part that presses on another, which is
 * pressed there by what is behind it. Null if there is nothing.
 */
function springTrait(family: Family, part: Part): string | null {
  if (part.bindsOver !== null) return 'binds, so it is a spring';
  const bearer = family.parts.find(
    (other) => other.bearsOn.length > 0 && (other.on.includes(part.name) || part.on.includes(other.name)),
  );
  return bearer === undefined ? null : `is next to ${bearer.name}, which bears on ${bearer.bearsOn[0]}`;
}

/** A spring or a clip is handled: what lies under load flies. Only the parts and the step itself say so. */
export function handlesSpring(scene: Scene): Call | null {
  const { step } = scene;
  if (step.dangers.some(({ danger, denied }) => danger === 'spring-loaded' && !denied))
    return { because: { from: 'step', danger: 'spring-loaded' } };
  if (!frees.includes(step.verb) || step.dangers.some(({ danger }) => danger === 'spring-loaded')) return null;
  for (const part of partsAt(scene)) {
    const said = part.dangers.find(({ danger }) => danger === 'spring-loaded');
    if (said?.denied === false) return { because: { from: 'part', part: part.name, trait: 'is spring-loaded' } };
    if (said !== undefined) continue;
    const trait = springTrait(scene.procedure.family, part);
    if (trait !== null) return { because: { from: 'part', part: part.name, trait } };
    const word = suspectWord('spring-loaded', part.title);
    if (word !== null)
      return { because: { from: 'words', word, danger: 'spring-loaded', of: { kind: 'part', name: part.name } } };
  }
  return null;
}

/** Verbs at which what is driven may be driven. */
const drives: readonly Verb[] = verbsThat('drives');

/** Driven electrically: a figure, a reading, or a live part, station or step. Handling a live part dead is not near it. */
export function isDriven(scene: Scene): Call | null {
  const { procedure, step } = scene;
  const electrical = ['voltage', 'current', 'resistance'] as const;
  const reads = own(step, 'test')?.reads;
  if (electrical.some((kind) => kind === reads)) return { because: { from: 'reading', what: `read ${reads}` } };
  const figure = ofKind(figuresOf(procedure, step), ...electrical);
  if (figure !== null) return { because: { from: 'figure', figure } };
  const call = declared('live')(scene);
  return nearOnly(call, drives, step);
}

/** What a part or station is said to be: the head of the stage warns of it wherever it is near, steps where it is met. */
function nearOnly(call: Call | null, meets: readonly Verb[], { verb }: Step): Call | null {
  if (call === null || meets.includes(verb)) return call;
  const { because } = call;
  const ofStep = because.from === 'step' || (because.from === 'words' && because.of.kind === 'step');
  return ofStep ? call : { ...call, headOnly: true };
}

/** Verbs that take the whole unit up, whatever part they name. */
const wholeUnit: readonly Verb[] = verbsThat('whole unit');
/** Verbs at which what is heavy is taken up or set down. */
const lifts: readonly Verb[] = verbsThat('lifts');

/** Something heavy is lifted, or near. */
export function isHeavy(scene: Scene): Call | null {
  return nearOnly(declared('heavy', wholeUnit)(scene), lifts, scene.step);
}

/** Verbs at which a part that can turn may turn; the air line spins a rotor until it bursts. */
const spins: readonly Verb[] = verbsThat('spins');

/** Something turns by power: a speed in turns, or a part or station that is said to. A lever’s strokes are no speed of it. */
export function isTurning(scene: Scene): Call | null {
  const figure = ofKind(figuresOf(scene.procedure, scene.step), 'speed');
  if (figure !== null) return { because: { from: 'figure', figure } };
  const call = declared('rotating')(scene);
  return call !== null && (call.because.from === 'step' || spins.includes(scene.step.verb)) ? call : null;
}

/**
 * Metal and water from 60 °C burn at a touch of seconds (ISO 13732-1: bare metal 60 °C in about 5 s, from memory);
 * metal under −10 °C sticks to the skin and freezes it (rule of thumb after ISO 13732-3, from memory).
 */
const burns: Quantity = { number: '60', unit: '°C' };
const freezes: Quantity = { number: '-10', unit: '°C' };

export function isHotOrCold(scene: Scene): Call | null {
  const figures = figuresOf(scene.procedure, scene.step);
  const figure = atLeast(figures, burns) ?? below(figures, freezes);
  if (figure !== null) return { because: { from: 'figure', figure } };
  return either(declared('hot'), declared('cold'))(scene);
}

/** Under this air goes through no skin that is whole (common figure of 100 psi, from memory). */
const piercing: Quantity = { number: '7', unit: 'bar' };

/** Tested with air or vacuum under what pierces skin. With air and no figure nobody knows, and it is not taken for so. */
export function isHarmlessGas(scene: Pick<Scene, 'procedure' | 'step'>): boolean {
  const { procedure, step } = scene;
  if (!isPneumatic(step)) return false;
  if (step.gas === 'vacuum') return true;
  const top = highest([...figuresOf(procedure, step), ...(step.air === null ? [] : airFigures(step))], 'pressure');
  return top !== null && atLeast([top], piercing) === null;
}

function airFigures({ air }: Step): Quantity[] {
  switch (air?.form) {
    case 'nominal':
      return [air.nominal];
    case 'range':
      return [air.high];
    case 'at most':
      return [air.most];
    case 'at least':
      return [air.least];
    default:
      return [];
  }
}

/** The unit is under pressure, of whatever: its gauge is read, or it is pumped. */
export function isPressed({ step, station }: Pick<Scene, 'step' | 'station'>): boolean {
  if (step.verb !== 'test' && step.verb !== 'set' && step.verb !== 'read') return false;
  if (station?.pressure === true || step.gauge !== null) return true;
  if (step.verb !== 'test') return false;
  const { reads, hold, from, neverAbove } = step.test;
  return reads === 'pressure' || hold !== null || from !== null || neverAbove !== null;
}

/** The unit is under test pressure that goes through skin. */
export function underPressure(scene: Scene): Call | null {
  const { step, station } = scene;
  if (step.verb === 'connect' || step.verb === 'prime')
    return scene.gasOnly && step.verb === 'connect' ? null : { because: { from: 'verb', verb: step.verb } };
  if (!isPressed(scene) || isHarmlessGas(scene)) return null;
  if (station?.pressure === true) return { because: { from: 'station', station: station.name, trait: 'pressure' } };
  return { because: { from: 'reading', what: step.verb } };
}

/** Spray of a liquid under test pressure: what is pumped, tested or set. */
export function isSprayed(scene: Scene): Call | null {
  const { step } = scene;
  if (step.verb === 'prime') return verbIs('prime')(scene);
  if (step.verb !== 'test' && step.verb !== 'set') return null;
  return isPneumatic(step) ? null : underPressure(scene);
}

/** Compressed air by hand, or in a test. */
export function usesAir(scene: Scene): Call | null {
  const { step } = scene;
  if (step.verb === 'blow-dry') return verbIs('blow-dry')(scene);
  const withAir = step.air !== null || step.gas === 'air';
  return withAir ? { because: { from: 'reading', what: 'with air' } } : null;
}

/**
 * From this pressure on, pipes and rails hold enough to hurt after the pump has stopped. Mechanical injectors open
 * under it, rails work above it (common practice, no source).
 */
export const stores: Quantity = { number: '500', unit: 'bar' };

/** Pressure that stays when the pump has stopped: a declared store, or high pressure put on or taken off. */
export function isStored(scene: Scene): Call | null {
  const { step, storedFigure } = scene;
  const call = declared('stored pressure')(scene);
  if (call !== null) return call;
  const pressed = underPressure(scene) !== null || step.verb === 'relieve' || step.verb === 'disconnect';
  return storedFigure !== null && pressed ? { because: { from: 'figure', figure: storedFigure } } : null;
}
