import type { UsualCaution } from './caution.ts';
import { fluidOf, handlesSpring, underPressure, usesFlammable, usesFluid, verbIs, wordsSay } from './scene.ts';

/**
 * The usual hazards of a rebuild shop, in order of how badly they hurt. Each text says what hurts, how, and what
 * keeps it off, in that order (ANSI Z535.4), and leaves the last word to local codes and the maker's data.
 */
export const usualTexts: readonly UsualCaution[] = [
  {
    topic: 'injection',
    word: 'DANGER',
    text: "Spray at test pressure goes through skin and gloves. A wound like a pinprick can cost a hand or a life. Keep hands and face away from the tip, joints and pipes, keep the spray guard shut, and never feel for a leak by hand. Local codes and the maker's data come first.",
    short: 'Spray goes through skin: hands and face away from tip, joints and pipes.',
    when: underPressure,
  },
  {
    topic: 'rail',
    word: 'DANGER',
    text: "A rail or accumulator holds its pressure after the pump has stopped. Wait as long as the maker says, let the pressure down by the maker's way, and prove it gone before a joint is touched. Local codes and the maker's data come first.",
    short: 'Stored rail pressure: wait, let it down, prove it gone.',
    when: wordsSay(/\b(common rail|fuel rail|rail pressure|accumulator)\b/iu),
  },
  {
    topic: 'electrical',
    word: 'DANGER',
    text: "Drive voltage for solenoids and piezo stacks can kill, and stays after switching off. Use only the maker's driver and leads, switch off and wait before touching a terminal. Work by qualified people, to local codes and the maker's data.",
    short: 'Drive voltage: switch off and wait before touching a terminal.',
    when: (scene) =>
      wordsSay(/\b(solenoid|piezo|coil|voltage|energi[sz]e|high.voltage)s?\b/iu)(scene) ||
      ['voltage', 'current', 'resistance'].includes(scene.step.test?.reads ?? ''),
  },
  {
    topic: 'let-down',
    word: 'WARNING',
    text: "A joint opened under pressure throws fluid and parts. Let the pressure down and see the gauge at zero before anything is slackened or taken off. Local codes and the maker's data come first.",
    short: 'Pressure down and gauge seen at zero before anything is opened.',
    when: verbIs('relieve', 'disconnect'),
  },
  {
    topic: 'mist',
    word: 'WARNING',
    text: "Sprayed fluid is a mist that burns far below its flash point and harms lungs. Run the extraction, keep flames, sparks and hot surfaces away, and do not breathe it. Local codes and the maker's data come first.",
    short: 'Mist burns below the flash point: extraction on, no flame or spark.',
    when: (scene) =>
      scene.step.verb === 'prime' ||
      ((scene.step.verb === 'test' || scene.step.verb === 'set') && underPressure(scene)),
  },
  {
    topic: 'caustic',
    word: 'WARNING',
    text: "Caustic fluid burns eyes and skin and attacks aluminium and zinc. Wear face shield, gloves and apron, put parts in slowly, and know where the eye wash is. Follow the fluid's safety data sheet, local codes and the maker's data.",
    short: 'Caustic burns eyes and skin: face shield, gloves and apron.',
    when: (scene) => fluidOf(scene)?.kind === 'caustic',
  },
  {
    topic: 'flammable',
    word: 'WARNING',
    text: "Flammable fluid: its vapour lights from a spark and travels along the floor. Use it in the tank with the lid at hand and the extraction on, away from flames, sparks and hot parts. Follow the fluid's safety data sheet and local codes.",
    short: 'Flammable: extraction on, no flame, spark or hot part.',
    when: usesFlammable,
  },
  {
    topic: 'wheel',
    word: 'WARNING',
    text: "A wheel grabs and throws parts, and takes in sleeves, gloves and hair. Wear eye and face protection, no gloves or loose clothing at the wheel, work below the centre line, and keep guards on. Local codes and the maker's data come first.",
    short: 'Wheels throw parts: face protection, guards on, nothing loose.',
    when: verbIs('buff'),
  },
  {
    topic: 'blasting',
    word: 'WARNING',
    text: "Blasting throws grit that blinds and makes dust that ruins lungs. Blast in the closed cabinet only, with extraction on and gloves whole. Never use sand with free silica. Local codes and the maker's data come first.",
    short: 'Grit and dust: closed cabinet, extraction on.',
    when: verbIs('blast'),
  },
  {
    topic: 'spring',
    word: 'WARNING',
    text: "Springs, clips and rings under load fly. Wear eye protection, keep the face out of line, and let the load off slowly with the right tool. The maker's data come first.",
    short: 'Under spring load: eye protection, face out of line, off slowly.',
    when: (scene) => verbIs('compress', 'release')(scene) || handlesSpring(scene),
  },
  {
    topic: 'press',
    word: 'WARNING',
    text: "A part in the press can burst or spring out. Use square supports and the guard, stand aside, keep hands clear of the ram, and stay within the press's rating. Local codes and the maker's data come first.",
    short: 'Parts burst out of a press: guard shut, hands clear.',
    when: verbIs('press'),
  },
  {
    topic: 'air',
    word: 'WARNING',
    text: 'Compressed air drives debris into eyes and air into the blood. Never point it at skin or clothes; wear eye protection, blow away from people, and keep to the air pressure in the step and in local codes.',
    short: 'Air: never at skin or clothes, eye protection on.',
    when: (scene) => scene.step.verb === 'blow-dry' || scene.step.air !== null,
  },
  {
    topic: 'dust-fumes',
    word: 'WARNING',
    text: 'Old linings, gaskets and paint may hold asbestos, lead or chromium; heated or worked dry they give off dust or fumes that harm for life. Do not blow, brush, sand or burn them. Follow local codes and the maker’s data before touching them.',
    short: 'Old linings, gaskets and paint: no dry dust, no heat.',
    when: wordsSay(/\b(lining|asbestos|paint|weld|solder|braz|fume|gasket)(s|ing|ed|e)?\b/iu),
  },
  {
    topic: 'ultrasonic',
    word: 'CAUTION',
    text: "An ultrasonic bath harms the hand that reaches in and heats its fluid. Use the basket, switch off before reaching in, lid on, and never fill it with a flammable fluid unless the bath's maker says so. Local codes and the maker's data come first.",
    short: 'Ultrasonic bath: off before reaching in, lid on.',
    when: wordsSay(/ultra-?soni/iu),
  },
  {
    topic: 'hot-cold',
    word: 'CAUTION',
    text: 'Hot and deep-cold parts burn, and look like any other. Use the right gloves and tongs, set the part down where it is marked, and air the place where dry ice or liquid nitrogen is used. Local codes and the maker’s data come first.',
    short: 'Hot or cold parts: gloves and tongs.',
    when: wordsSay(/\b(hot|heat(ed|ing)?|oven|freez(e|er|ing)|chill(ed)?|dry ice|liquid nitrogen|quench)\b/iu),
  },
  {
    topic: 'lifting',
    word: 'CAUTION',
    text: 'A heavy unit injures backs and crushes hands and feet. Use the hoist and the lifting points that the maker names, nobody under the load. Local codes come first.',
    short: 'Heavy: hoist and lifting points, nobody under the load.',
    when: wordsSay(/\b(lift(ing|ed)? (with|by|on|out with|eyes?|points?|tackle)|hoist|heavy|crane|sling)\b/iu),
  },
  {
    topic: 'solvent',
    word: 'CAUTION',
    text: "Solvent harms skin, lungs and eyes. Wear gloves that stand up to it and eye protection, run the extraction, and do not wash hands in it. Follow the fluid's safety data sheet and local codes.",
    short: 'Solvent: gloves, eye protection, extraction.',
    when: (scene) => fluidOf(scene)?.kind === 'solvent',
  },
  {
    topic: 'noise',
    word: 'CAUTION',
    text: 'Air jets, blasting and wheels are loud enough to harm hearing. Wear hearing protection as local codes say.',
    short: null,
    when: verbIs('blow-dry', 'blast', 'buff'),
  },
  {
    topic: 'rags',
    word: 'CAUTION',
    text: 'Rags wet with oil or solvent can catch fire by themselves. Put them in the lidded metal bin, and empty it as local codes say.',
    short: null,
    when: (scene) => scene.step.verb === 'wipe' || usesFlammable(scene),
  },
  {
    topic: 'alone',
    word: 'CAUTION',
    text: 'Somebody must be within call while there is test pressure, caustic fluid or a wheel running. Do not work alone where local codes forbid it.',
    short: null,
    when: (scene) => verbIs('connect', 'buff')(scene) || fluidOf(scene)?.kind === 'caustic',
  },
  {
    topic: 'lapping',
    word: 'NOTICE',
    text: "Lapping compound left behind cuts the pair that it was to mend. Lap one face at a time on a true plate, and wash every trace off before the part goes near a clean station. The maker's data say how much may come off.",
    short: 'Lapping compound: wash every trace off.',
    when: verbIs('lap'),
  },
  {
    topic: 'disposal',
    word: 'NOTICE',
    text: 'Used fluids, sludge, seals and rags go into their marked containers, never down a drain. Dispose of them as local codes say.',
    short: null,
    when: (scene) => usesFluid(scene) && verbIs('wash', 'rinse', 'soak', 'clean-holes', 'clean-outside')(scene),
  },
];

/** First aid for a spray wound; stands on every page that has work under test pressure. */
export const injectionFirstAid =
  'FIRST AID, spray through the skin: hospital at once, even if it does not hurt. Do not wait for pain. Say: "high-pressure injection", and take the name of the fluid along.';
