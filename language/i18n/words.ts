import {
  type Difference,
  formatLimit,
  formatNumber,
  formatQuantity,
  type Limit,
  type Quantity,
  type Wording,
} from '../quantities/index.ts';
import { de } from './de.ts';
import { en } from './en.ts';
import { es } from './es.ts';
import { type Filled, type Filling, fill, Messages, type Same, type Span } from './message.ts';

export const languages = ['en', 'es', 'de'] as const;
export type Language = (typeof languages)[number];

/** The language of a locale such as `es-MX` or `de_DE.UTF-8`; null: there is no text in it. */
export function languageOf(locale: string): Language | null {
  const [code] = locale.toLowerCase().split(/[-_.@]/u);
  return languages.find((language) => language === code) ?? null;
}

export type Catalogue = Same<typeof en>;
const catalogues: Readonly<Record<Language, Catalogue>> = { en, es, de };

type Steps = (typeof en)['steps'];
type Pieces = (typeof en)['pieces'];

/** The fixed words of a language, and how it writes figures and lists. */
export interface Words extends Filled<Omit<typeof en, 'steps' | 'pieces'>> {
  readonly language: Language;
  readonly wording: Wording;
  /** What is done at a step, or a piece of it, as runs of text. */
  readonly step: (key: keyof Steps, fillings: Readonly<Record<string, Filling>>) => Span[];
  readonly piece: (key: keyof Pieces, fillings?: Readonly<Record<string, Filling>>) => Span[];
  readonly number: (number: string) => string;
  readonly quantity: (quantity: Quantity | Difference) => string;
  readonly limit: (limit: Limit) => string;
  /** `a, b and c`; with semicolons where one of them has a comma of its own. */
  readonly list: (words: readonly string[]) => string;
  /** A title inside a sentence: `Setting shim` becomes `setting shim`, where the language writes so. */
  readonly inSentence: (title: string) => string;
}

const made = new Map<Language, Words>();

/** The words of a language; the same object at each call. */
export function wordsIn(language: Language): Words {
  const known = made.get(language);
  if (known !== undefined) return known;
  const words = wordsOf(language, catalogues[language]);
  made.set(language, words);
  return words;
}

function wordsOf(language: Language, catalogue: Catalogue): Words {
  const messages = new Messages(language);
  const { steps, pieces, ...others } = catalogue;
  const wording = wordingOf(language, catalogue);
  // British English has no comma before the last “and”, as the sheet never had.
  const conjunction = new Intl.ListFormat(language === 'en' ? 'en-GB' : language, { type: 'conjunction' });
  const said = messages.said<Omit<typeof en, 'steps' | 'pieces'>>(others as Same<Omit<typeof en, 'steps' | 'pieces'>>);
  return {
    ...said,
    language,
    wording,
    step: (key, fillings) => fill(messages.of(steps[key]), fillings),
    piece: (key, fillings = {}) => fill(messages.of(pieces[key]), fillings),
    number: (number) => formatNumber(number, { wording }),
    quantity: (quantity) => formatQuantity(quantity, { wording }),
    limit: (limit) => formatLimit(limit, { wording }),
    list: (words) =>
      words.length > 1 && words.some((word) => word.includes(','))
        ? said.listEnd({ head: words.slice(0, -1).join('; '), last: words.at(-1)! })
        : conjunction.format(words),
    inSentence: language === 'de' ? (title) => title : lowered,
  };
}

/** `O-ring`, `M8 stud` and `TDC mark` stay. */
function lowered(title: string): string {
  const [first = '', second = ''] = [...title];
  return first !== first.toLowerCase() && second !== '' && second === second.toLowerCase() && /\p{L}|\s/u.test(second)
    ? first.toLowerCase() + title.slice(first.length)
    : title;
}

function wordingOf(language: Language, { figures }: Catalogue): Wording {
  const units: Readonly<Record<string, string>> = {
    drops: figures.drops,
    strokes: figures.strokes,
    turns: figures.turns,
    'mm³/stroke': figures.perStroke,
    'mL/1000 strokes': figures.perThousandStrokes,
    'strokes/min': figures.strokesPerMinute,
    'cam °': figures.camDegrees,
    'bar per mm': figures.barPerMillimetre,
    'bar per in': figures.barPerInch,
    'kPa per mm': figures.kilopascalPerMillimetre,
    'bar per turn': figures.barPerTurn,
    'psi per turn': figures.psiPerTurn,
  };
  const single: Readonly<Record<string, string>> = {
    drops: figures.drop,
    strokes: figures.stroke,
    turns: figures.turn,
  };
  return {
    decimal: language === 'en' ? '.' : ',',
    to: figures.to,
    atLeast: figures.atLeast,
    atMost: figures.atMost,
    thenAngle: figures.thenAngle,
    unit: (unit, one) => (one ? single[unit] : undefined) ?? units[unit] ?? unit,
  };
}
