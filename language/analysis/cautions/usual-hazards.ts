import { say } from '../../say/say.ts';
import { byVerb, either } from './calls.ts';
import type { UsualCaution } from './caution.ts';
import { declared, isHarmfulDust, isHeavy, isHotOrCold } from './declared.ts';
import { isDriven, testsInsulation } from './electric.ts';
import { fluidIs, usesFlammable, withFluid } from './fluids.ts';
import { handlesSpring, isDrivenByPower, isSharp, isTurning, movesRod, spinsRotor } from './moving.ts';
import { blowsAir, filledWithAir, isSprayed, isStored, underPressure } from './pressure.ts';

/** The usual hazards of a rebuild shop, in order of how badly they hurt, and what calls for each. */
export const usualHazards: readonly UsualCaution[] = [
  {
    topic: 'injection',
    word: 'DANGER',
    repeats: true,
    from: say`connect, prime, and a reading under pressure; not from air below 7 bar, nor from vacuum`,
    when: underPressure,
  },
  {
    topic: 'rail',
    word: 'DANGER',
    repeats: true,
    from: say`stored pressure; 500 bar or more in any figure of the procedure, where the unit is under pressure or is let down`,
    when: isStored,
  },
  {
    topic: 'electrical',
    word: 'DANGER',
    repeats: true,
    from: say`live, where it is driven or read; a reading or a figure in V, A or ohms`,
    when: isDriven,
  },
  {
    topic: 'let-down',
    word: 'WARNING',
    repeats: true,
    from: say`disconnect, relieve`,
    when: byVerb('let-down'),
  },
  {
    topic: 'mist',
    word: 'WARNING',
    repeats: true,
    from: say`prime, and a test or a setting under liquid pressure`,
    when: isSprayed,
  },
  { topic: 'caustic', word: 'WARNING', repeats: true, from: say`a fluid that is caustic`, when: fluidIs('caustic') },
  { topic: 'flammable', word: 'WARNING', repeats: true, from: say`a fluid with a flash point`, when: usesFlammable },
  {
    topic: 'insulation',
    word: 'WARNING',
    repeats: true,
    from: say`a resistance of 1 MΩ or more`,
    when: testsInsulation,
  },
  {
    topic: 'drive',
    word: 'WARNING',
    repeats: true,
    from: say`a speed in rpm, of the step or of a point`,
    when: isDrivenByPower,
  },
  {
    topic: 'rotor',
    word: 'WARNING',
    repeats: true,
    from: say`a rotor in an air jet or at speed: a part that is rotating, balanced, or drawn as a wheel`,
    when: spinsRotor,
  },
  {
    topic: 'rotating',
    word: 'WARNING',
    repeats: true,
    from: say`rotating, of the step; of a part or a station where it may turn`,
    when: isTurning,
  },
  { topic: 'wheel', word: 'WARNING', repeats: true, from: say`buff`, when: byVerb('wheel') },
  { topic: 'blasting', word: 'WARNING', repeats: true, from: say`blast`, when: byVerb('blasting') },
  {
    topic: 'spring',
    word: 'WARNING',
    repeats: true,
    from: say`compress, release; a part that is freed or loaded and is spring-loaded, drawn as a spring or a circlip, binds over some shim, or is next to one that presses on another`,
    when: either(byVerb('spring'), handlesSpring),
  },
  { topic: 'press', word: 'WARNING', repeats: true, from: say`press`, when: byVerb('press') },
  { topic: 'air', word: 'WARNING', repeats: true, from: say`blow-dry; with air in what is no test`, when: blowsAir },
  {
    topic: 'hose',
    word: 'WARNING',
    repeats: true,
    from: say`a test, a setting or a reading with air`,
    when: filledWithAir,
  },
  {
    topic: 'rod',
    word: 'WARNING',
    repeats: true,
    from: say`a test with air or vacuum that reads a length, an angle or a force, or of a unit in which a part slides`,
    when: movesRod,
  },
  {
    topic: 'dust-fumes',
    word: 'WARNING',
    repeats: true,
    from: say`toxic; a part of asbestos or lead`,
    when: isHarmfulDust,
  },
  { topic: 'ultrasonic', word: 'CAUTION', repeats: true, from: say`ultrasonic`, when: declared('ultrasonic') },
  {
    topic: 'hot-cold',
    word: 'CAUTION',
    repeats: true,
    from: say`hot, cold; a figure from 60 °C up or below −10 °C`,
    when: isHotOrCold,
  },
  {
    topic: 'lifting',
    word: 'CAUTION',
    repeats: true,
    from: say`heavy; a part of 23 kg or more where it is lifted; the unit, if its parts weigh that together`,
    when: isHeavy,
  },
  { topic: 'sharp', word: 'CAUTION', repeats: true, from: say`sharp; a part that is drawn as a wheel`, when: isSharp },
  { topic: 'solvent', word: 'CAUTION', repeats: true, from: say`a fluid that is a solvent`, when: fluidIs('solvent') },
  {
    topic: 'oil-on-skin',
    word: 'CAUTION',
    repeats: false,
    from: say`a fluid that is test oil; prime`,
    when: either(fluidIs('test-oil'), byVerb('oil-on-skin')),
  },
  {
    topic: 'noise',
    word: 'CAUTION',
    repeats: false,
    from: say`blow-dry, blast, buff`,
    when: byVerb('noise'),
  },
  {
    topic: 'rags',
    word: 'CAUTION',
    repeats: false,
    from: say`wipe; a fluid with a flash point`,
    when: either(byVerb('rags'), usesFlammable),
  },
  {
    topic: 'alone',
    word: 'CAUTION',
    repeats: false,
    from: say`connect, buff; a fluid that is caustic`,
    when: either(byVerb('alone'), fluidIs('caustic')),
  },
  { topic: 'lapping', word: 'NOTICE', repeats: true, from: say`lap`, when: byVerb('lapping') },
  {
    topic: 'disposal',
    word: 'NOTICE',
    repeats: false,
    from: say`wash, rinse, soak or clean with a fluid`,
    when: withFluid(byVerb('disposal')),
  },
];
