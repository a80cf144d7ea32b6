import type { Fluid } from '../model/shop.ts';
import type { Verb } from '../model/verbs.ts';
import type { Scene } from './caution.ts';
import { partsOfObject } from './parts.ts';

/** True where the step's verb is one of these. */
export const verbIs =
  (...verbs: readonly Verb[]) =>
  ({ step }: Scene) =>
    verbs.includes(step.verb);

/** The fluid that the step uses, as the shop declares it. */
export function fluidOf({ procedure, step }: Scene): Fluid | null {
  return procedure.shop.fluids.find((fluid) => fluid.name === step.fluid) ?? null;
}

/** The author's own words at the step, its station and its parts: some hazards show in words alone. */
export function wordsAt({ procedure, step, station }: Scene): string {
  const parts = [...step.objects, ...step.withObjects].flatMap((object) => partsOfObject(procedure.family, object));
  return [
    step.text,
    step.reading,
    step.note,
    step.holder,
    step.accept,
    ...(step.test?.conditions ?? []),
    ...step.tools.map((tool) => (tool.form === 'words' ? tool.text : '')),
    station?.title,
    ...parts.map((part) => part.title),
  ]
    .filter((word) => word != null)
    .join(' ');
}

/** True where one of the author's words at the step matches. */
export const wordsSay = (pattern: RegExp) => (scene: Scene) => pattern.test(wordsAt(scene));

/** The parts handled have a spring or a clip among them: what lies under load flies. */
export function handlesSpring({ procedure, step }: Scene): boolean {
  if (!['remove', 'fit', 'discard', 'renew', 'slacken', 'back-off'].includes(step.verb)) return false;
  const springs = /\b(spring|circlip|clip|snap ring|retaining ring)s?\b/iu;
  return [...step.objects, ...step.withObjects].some((object) =>
    partsOfObject(procedure.family, object).some(
      (part) => springs.test(part.title) && !/\bspring (seat|plate|pin|cap)\b/iu.test(part.title),
    ),
  );
}

/** The unit is under test pressure: its gauge is read, or it is pumped. */
export function underPressure(scene: Scene): boolean {
  const { step, station } = scene;
  if (step.verb === 'connect' || step.verb === 'prime') return true;
  if (step.verb !== 'test' && step.verb !== 'set' && step.verb !== 'read') return false;
  const figures = step.test;
  const pressed =
    figures != null &&
    (figures.reads === 'pressure' ||
      figures.hold !== null ||
      figures.gauge !== null ||
      figures.from !== null ||
      figures.neverAbove !== null);
  return pressed || station?.pressure === true;
}

/** Something is wet with a fluid at this step. */
export function usesFluid(scene: Scene): boolean {
  return fluidOf(scene) !== null;
}

/** A solvent, detergent or oil that burns by its own declaration. */
export function usesFlammable(scene: Scene): boolean {
  return fluidOf(scene)?.flammable != null;
}
