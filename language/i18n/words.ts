import {
  type Difference,
  formatLimit,
  formatNumber,
  formatQuantity,
  type Limit,
  type Quantity,
  type Wording,
} from '../quantities/index.ts';
import { listFormat } from '../say/list-format.ts';
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
  /** What a face is called by its name: `top face`. */
  readonly face: (name: string) => string;
  /** A thread, with the decimal sign of the language where it is metric: `M20x1,5` (DIN 202, from memory). */
  readonly thread: (thread: string) => string;
}

/** What a shop calls kinds of part that the sheet itself mentions: `suplemento` instead of `laina`. No braces, no `<`. */
export type OwnWords = { readonly [kind in keyof typeof en.kinds]?: string };

const made = new Map<string, Words>();

/** The words of a language, with a shop's own for kinds of part; the same object at each call. */
export function wordsIn(language: Language, own: OwnWords = {}): Words {
  const key = JSON.stringify([language, own]);
  const known = made.get(key);
  if (known !== undefined) return known;
  const catalogue = catalogues[language];
  const words = wordsOf(language, named({ ...catalogue, kinds: { ...catalogue.kinds, ...own } }));
  made.set(key, words);
  return words;
}

/** Puts `suplemento` for `[shim]`, and `Suplemento` for `[Shim]`. */
function named<T extends { readonly kinds: Readonly<Record<string, string | undefined>> }>(messages: T): T {
  const { kinds } = messages;
  const put = (message: string) =>
    message.replace(/\[(\p{L}+)\]/gu, (all, kind: string) => {
      const word = kinds[kind.toLowerCase()];
      return word === undefined ? all : kind === kind.toLowerCase() ? word : word[0]!.toUpperCase() + word.slice(1);
    });
  const walk = (value: unknown): unknown =>
    typeof value === 'string'
      ? put(value)
      : Object.fromEntries(Object.entries(value as object).map(([key, inside]) => [key, walk(inside)]));
  return walk(messages) as T;
}

function wordsOf(language: Language, catalogue: Catalogue): Words {
  const messages = new Messages(language);
  const { steps, pieces, ...others } = catalogue;
  const wording = wordingOf(language, catalogue);
  // British English has no comma before the last “and”, as the sheet never had.
  const conjunction = () => listFormat(language === 'en' ? 'en-GB' : language, 'conjunction');
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
        : conjunction().format(words),
    inSentence: language === 'de' ? (title) => title : lowered,
    face: (name) =>
      new Map(Object.entries(said.names.faces)).get(name) ?? said.names.otherFace({ face: name.replaceAll('-', ' ') }),
    thread: (thread) =>
      thread.replaceAll(/\bM\d+(?:\.\d+)?\s?[x×]\s?\d+(?:\.\d+)?/gu, (metric) =>
        metric.replaceAll('.', wording.decimal),
      ),
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
