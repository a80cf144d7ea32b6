import type { Step } from '../../model/procedure.ts';
import { window } from '../../quantities/index.ts';
import type { Quantity } from '../../quantities/types.ts';
import { say } from '../../say/say.ts';
import { isPneumatic } from '../hydraulic.ts';
import { because, type Calls, either, stepSays, verbIs, worksWith } from './calls.ts';
import type { Scene } from './caution.ts';
import { declared } from './declared.ts';
import { atLeast, figuresOf, highest } from './figures.ts';

/** Under this air goes through no skin that is whole (common figure of 100 psi, from memory). */
const piercing: Quantity = { number: '7', unit: 'bar' };

/** Tested with air or vacuum under what pierces skin. With air and no figure nobody knows, and it is not taken for so. */
export function isHarmlessGas({ procedure, step }: Pick<Scene, 'procedure' | 'step'>): boolean {
  if (!isPneumatic(step)) return false;
  if (step.gas === 'vacuum') return true;
  const top = highest([...figuresOf(procedure, step), ...airFigures(step)], 'pressure');
  return top !== null && atLeast([top], piercing) === null;
}

function airFigures({ air }: Step): Quantity[] {
  if (air === null) return [];
  const { low, high, nominal } = window(air);
  const top = high ?? nominal ?? low;
  return top === null ? [] : [top];
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
export const underPressure: Calls = (scene) => {
  const { step, station } = scene;
  if (step.verb === 'connect' || step.verb === 'prime')
    return scene.gasOnly && step.verb === 'connect' ? null : stepSays(step.verb);
  if (!isPressed(scene) || isHarmlessGas(scene)) return null;
  return station?.pressure === true ? because(say`station ${station.name} says ${'pressure'}`) : stepSays(step.verb);
};

/** Spray of a liquid under test pressure: what is pumped, tested or set. */
export const isSprayed: Calls = (scene) => {
  const { step } = scene;
  if (step.verb === 'prime') return stepSays(step.verb);
  if (step.verb !== 'test' && step.verb !== 'set') return null;
  return isPneumatic(step) ? null : underPressure(scene);
};

/** Compressed air by hand. */
export const blowsAir: Calls = either(verbIs('blow-dry'), ({ step }) =>
  step.air === null || isTested(step) ? null : stepSays('with air'),
);

/** A unit is filled with compressed air: its hose can come off, and what it is filled from holds more. */
export const filledWithAir: Calls = ({ step }) =>
  isTested(step) && (step.air !== null || step.gas === 'air') ? stepSays('with air') : null;

function isTested({ verb }: Step): boolean {
  return verb === 'test' || verb === 'set' || verb === 'read';
}

/**
 * From this pressure on, pipes and rails hold enough to hurt after the pump has stopped. Mechanical injectors open
 * under it, rails work above it (common practice, no source).
 */
export const stores: Quantity = { number: '500', unit: 'bar' };

/** Pressure that stays when the pump has stopped: a declared store, or high pressure put on or taken off. */
export const isStored: Calls = either(declared('stored pressure'), (scene) => {
  const { step, storedFigure } = scene;
  const pressed = underPressure(scene) !== null || step.verb === 'relieve' || step.verb === 'disconnect';
  return storedFigure !== null && pressed ? worksWith(storedFigure) : null;
});
