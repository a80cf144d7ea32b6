export type { Caution, Topic } from './caution.ts';
export { topics } from './caution.ts';
export { hasBlades, springTrait } from './moving.ts';
export {
  type Called,
  cautionsByStep,
  type StepCautions,
  type UsualCautions,
  usualCautions,
} from './usual.ts';
export { usualHazards } from './usual-hazards.ts';
