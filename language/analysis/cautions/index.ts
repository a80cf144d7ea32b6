export { type Because, becauseText } from './because.ts';
export type { Caution, Topic } from './caution.ts';
export { topics } from './caution.ts';
export { ownWords } from './scene.ts';
export { suspectWord } from './suspect-words.ts';
export {
  type Called,
  cautionsByStep,
  type StepCautions,
  type UsualCautions,
  usualCautions,
} from './usual.ts';
export { usualHazards } from './usual-hazards.ts';
