import type { Danger } from '../model/danger.ts';
import { oncePerText } from '../quantities/memo.ts';

/**
 * Words of titles and notes that sound like a danger, in the languages that sheets are printed in. No caution follows from
 * one: the author is asked to declare it or to deny it. `but` is taken out of the text first: a heat shield is not hot, a
 * copper gasket holds no asbestos.
 */
interface Suspect {
  readonly words: RegExp;
  readonly but: RegExp | null;
}

/** Whole words, where letters with accents are letters too. */
const whole = (...alternatives: string[]) =>
  new RegExp(`(?<![\\p{L}\\p{N}])(?:${alternatives.join('|')})(?![\\p{L}\\p{N}])`, 'giu');

const harmless = '(?:copper|alumini?um|steel|brass|metal|rubber|nitrile|silicone|ptfe)';
const inocua = '(?:de cobre|de aluminio|de acero|de latón|de goma|de nitrilo|metálicas?|tóricas?)';

const suspects: Readonly<Record<Danger, Suspect | null>> = {
  live: {
    words: whole(
      'solenoids?',
      'piezos?',
      'coils?',
      'voltages?',
      'energi[sz]es?',
      'high.voltage',
      // Spanish
      'solenoides?',
      'electroválvulas?',
      'piezo\\p{L}*',
      'bobinas?',
      'voltajes?',
      'alta tensión',
      'energiza\\p{L}*',
      // German
      '\\p{L}*magnetventile?n?',
      '\\p{L}*spulen?',
      '(?:hoch|ansteuer|versorgungs)spannung',
      'elektrische\\p{L}? spannung',
      'bestrom\\p{L}*',
    ),
    but: whole('coil springs?'),
  },
  rotating: null,
  hot: {
    words: whole(
      'hot',
      'heat(?:ed|ing)?',
      'ovens?',
      // Spanish
      'calientes?',
      'cal(?:entar|entad[oa]s?|iéntese|ienta)',
      'hornos?',
      // German
      'heiß(?:e[nmrs]?)?',
      'erhitz\\p{L}*',
      '(?:er|an|auf)wärm\\p{L}*',
      '\\p{L}*ofen',
    ),
    but: whole(
      'heat (?:shield|exchanger|sink)s?',
      'heat-(?:proof|resistant|treated)',
      'hot (?:side|end|section)s?',
      'lados? calientes?',
      'heiße[nmrs]? seite',
    ),
  },
  cold: {
    words: whole(
      'freez(?:e|er|ing)',
      'chill(?:ed)?',
      'dry ice',
      'liquid nitrogen',
      'quench',
      // Spanish
      'congela\\p{L}*',
      'hielo seco',
      'nitrógeno líquido',
      'enfria(?:r|d[oa]s?)',
      // German
      'tiefgekühlt\\p{L}*',
      'gefrier\\p{L}*',
      'trockeneis',
      'flüssig(?:er |en |em )?stickstoff',
      'abschreck\\p{L}*',
    ),
    but: null,
  },
  heavy: {
    words: whole(
      'lift(?:ing|ed)? (?:with|by|on|out with|eyes?|points?|tackle)',
      'hoists?',
      'heavy',
      'cranes?',
      'slings?',
      // Spanish
      'iza(?:r|d[oa]s?)',
      'polipastos?',
      'grúas?',
      'eslingas?',
      'pesad[oa]s?',
      'cáncamos?',
      // German
      '\\p{L}*kran',
      'hebe(?:zeug|öse|ösen)',
      'anheben',
      'kettenzug',
      'anschlag(?:mittel|punkte?n?)',
      'schwere[nmrs]?',
    ),
    but: whole('heavy (?:fuel )?oil', 'heavy fuel', 'heavy.duty'),
  },
  sharp: {
    words: whole(
      'sharp[ -]edge[sd]?',
      'blades?',
      '(?:compressor|turbine) wheels?',
      // Spanish
      'álabes?',
      'cantos? cortantes?',
      'ruedas? (?:de|del|de la) (?:compresor|turbina)',
      // German
      'scharfkantig\\p{L}*',
      '\\p{L}*schaufeln?',
      '(?:verdichter|turbinen)r[aä]d(?:er)?',
    ),
    but: whole('blade (?:screwdriver|puller)s?'),
  },
  'spring-loaded': {
    words: whole(
      'springs?',
      'circlips?',
      'snap rings?',
      'retaining rings?',
      // Spanish
      'muelles?',
      'resortes?',
      'anillos? (?:de retención|de seguridad|elásticos?|seeger)',
      // German
      '\\p{L}*federn?',
      '(?:sicherungs|spreng|seeger)ringe?n?',
    ),
    but: whole(
      'springs? (?:seat|plate|pin|cap)s?',
      '(?:asientos?|platillos?|pasador|tapas?) (?:de|del|de los|para) (?:muelles?|resortes?)',
    ),
  },
  'stored pressure': {
    words: whole(
      'common.rail',
      'fuel rails?',
      'rail pressure',
      'accumulators?',
      // Spanish
      'rai?l común',
      'rieles? (?:común|de combustible)',
      'rail de combustible',
      'presión de(?:l)? rail',
      'acumulador(?:es)?',
      // German
      'raildruck',
      'kraftstoffrail',
      '(?:hoch)?druckspeicher',
    ),
    but: null,
  },
  ultrasonic: { words: /ultra-?soni\p{L}*|ultras[oó]ni?d?\p{L}*|ultraschall\p{L}*/giu, but: null },
  toxic: {
    words: whole(
      '(?:lining|asbestos|paint|weld|solder|braz|fume|gasket)(?:s|ing|ed|e)?',
      // Spanish
      'amianto',
      'asbesto',
      'forros?',
      'pintura',
      'pintad[oa]s?',
      'sold(?:ar|ad[oa]s?|adura)',
      'humos',
      'juntas?',
      // German
      'asbest\\p{L}*',
      'lack(?:e|ier\\p{L}*)?',
      'anstrich',
      'farbreste?n?',
      '\\p{L}*schwei(?:ß|ss)(?:en|t|ung|naht)',
      '\\p{L}*löt(?:en|et|ung|stelle)',
      '\\p{L}*bel(?:ag|äge|ägen)',
      'dämpfe',
      '\\p{L}*dichtung(?:en)?',
    ),
    but: whole(
      `${harmless} gaskets?`,
      `gaskets?, ${harmless}`,
      'paint (?:pen|marker|mark|dot)s?',
      `juntas? ${inocua}`,
      '(?:kupfer|alu|aluminium|stahl|metall|gummi)dichtung(?:en)?',
      'lackstift',
    ),
  },
};

/** The first word of a text that sounds like this danger, as written; null where none does. */
export function suspectWord(danger: Danger, text: string): string | null {
  return suspectWords(text)[danger] ?? null;
}

/** The first word of a text for each danger that it sounds like. Most texts of a procedure are as they were before. */
const suspectWords = oncePerText((text) => {
  const found: Partial<Record<Danger, string>> = {};
  for (const [danger, suspect] of Object.entries(suspects) as [Danger, Suspect | null][]) {
    if (suspect === null) continue;
    const left = suspect.but === null ? text : text.replace(suspect.but, '·');
    const word = left.match(suspect.words)?.[0];
    if (word !== undefined) found[danger] = word;
  }
  return found;
});

/** Before a figure that is no value of its own: a difference, a ceiling, an end. In the languages of sheets. */
const compared =
  /(?:[±+−-]|\b(?:above|below|over|under|than|most|least|to|from|max\w*|min\w*|not|never|about|first|hasta|menos|más|máximo|mínimo|de|nunca|über|unter|bis|von|ab|höchstens|mindestens|nie|zuerst))\s*$/iu;

/** Whether the words before a figure say that it is a difference, a ceiling or an end. */
export const comparesBefore = (before: string): boolean => compared.test(before);
