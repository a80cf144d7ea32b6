import type { UsualCaution } from './caution.ts';
import { fluidOf, handlesSpring, underPressure, usesFlammable, usesFluid, verbIs, wordsSay } from './scene.ts';

/** The usual hazards of a rebuild shop, in order of how badly they hurt, and what calls for each. */
export const usualHazards: readonly UsualCaution[] = [
  {
    topic: 'injection',
    word: 'DANGER',
    repeats: true,
    when: underPressure,
  },
  {
    topic: 'rail',
    word: 'DANGER',
    repeats: true,
    when: wordsSay(/\b(common rail|fuel rail|rail pressure|accumulator)\b/iu),
  },
  {
    topic: 'electrical',
    word: 'DANGER',
    repeats: true,
    when: (scene) =>
      wordsSay(/\b(solenoid|piezo|coil|voltage|energi[sz]e|high.voltage)s?\b/iu)(scene) ||
      ['voltage', 'current', 'resistance'].includes(scene.step.test?.reads ?? ''),
  },
  {
    topic: 'let-down',
    word: 'WARNING',
    repeats: true,
    when: verbIs('relieve', 'disconnect'),
  },
  {
    topic: 'mist',
    word: 'WARNING',
    repeats: true,
    when: (scene) =>
      scene.step.verb === 'prime' ||
      ((scene.step.verb === 'test' || scene.step.verb === 'set') && underPressure(scene)),
  },
  {
    topic: 'caustic',
    word: 'WARNING',
    repeats: true,
    when: (scene) => fluidOf(scene)?.kind === 'caustic',
  },
  {
    topic: 'flammable',
    word: 'WARNING',
    repeats: true,
    when: usesFlammable,
  },
  {
    topic: 'wheel',
    word: 'WARNING',
    repeats: true,
    when: verbIs('buff'),
  },
  {
    topic: 'blasting',
    word: 'WARNING',
    repeats: true,
    when: verbIs('blast'),
  },
  {
    topic: 'spring',
    word: 'WARNING',
    repeats: true,
    when: (scene) => verbIs('compress', 'release')(scene) || handlesSpring(scene),
  },
  {
    topic: 'press',
    word: 'WARNING',
    repeats: true,
    when: verbIs('press'),
  },
  {
    topic: 'air',
    word: 'WARNING',
    repeats: true,
    when: (scene) => scene.step.verb === 'blow-dry' || scene.step.air !== null,
  },
  {
    topic: 'dust-fumes',
    word: 'WARNING',
    repeats: true,
    when: wordsSay(/\b(lining|asbestos|paint|weld|solder|braz|fume|gasket)(s|ing|ed|e)?\b/iu),
  },
  {
    topic: 'ultrasonic',
    word: 'CAUTION',
    repeats: true,
    when: wordsSay(/ultra-?soni/iu),
  },
  {
    topic: 'hot-cold',
    word: 'CAUTION',
    repeats: true,
    when: wordsSay(/\b(hot|heat(ed|ing)?|oven|freez(e|er|ing)|chill(ed)?|dry ice|liquid nitrogen|quench)\b/iu),
  },
  {
    topic: 'lifting',
    word: 'CAUTION',
    repeats: true,
    when: wordsSay(/\b(lift(ing|ed)? (with|by|on|out with|eyes?|points?|tackle)|hoist|heavy|crane|sling)\b/iu),
  },
  {
    topic: 'solvent',
    word: 'CAUTION',
    repeats: true,
    when: (scene) => fluidOf(scene)?.kind === 'solvent',
  },
  {
    topic: 'noise',
    word: 'CAUTION',
    repeats: false,
    when: verbIs('blow-dry', 'blast', 'buff'),
  },
  {
    topic: 'rags',
    word: 'CAUTION',
    repeats: false,
    when: (scene) => scene.step.verb === 'wipe' || usesFlammable(scene),
  },
  {
    topic: 'alone',
    word: 'CAUTION',
    repeats: false,
    when: (scene) => verbIs('connect', 'buff')(scene) || fluidOf(scene)?.kind === 'caustic',
  },
  {
    topic: 'lapping',
    word: 'NOTICE',
    repeats: true,
    when: verbIs('lap'),
  },
  {
    topic: 'disposal',
    word: 'NOTICE',
    repeats: false,
    when: (scene) => usesFluid(scene) && verbIs('wash', 'rinse', 'soak', 'clean-holes', 'clean-outside')(scene),
  },
];
