import type { Language } from '../i18n/index.ts';
import type { Job, Procedure } from '../model/index.ts';
import { titleOf } from '../model/titles.ts';

/** What an author wrote in another language than that of the fixed words: a reader program speaks each as it should. */
export interface OwnLanguage {
  /** ISO 639. */
  readonly language: string;
  /** The texts as they were written, the longest first. */
  readonly phrases: readonly string[];
}

/** Where the model has sentences and titles of an author's. */
const prose: ReadonlySet<string> = new Set([
  'title',
  'text',
  'note',
  'lead',
  'wear',
  'accept',
  'reject',
  'conditions',
  'because',
  'located',
  'locatedBy',
  'marks',
  'holder',
  'heldIn',
  'sourceText',
  'baseTitle',
  'onHold',
]);

/** The author's own words; null where they are in the language of the sheet, or it is not said which they are in. */
export function ownLanguage(procedure: Procedure, job: Job | null, fixed: Language): OwnLanguage | null {
  const { language } = procedure;
  if (language === null || language === fixed) return null;
  const phrases = new Set<string>();
  const seen = new Set<object>();
  const walk = (value: unknown, isProse: boolean): void => {
    if (typeof value === 'string') {
      if (isProse && /\p{L}{2}/u.test(value)) phrases.add(value.trim());
      return;
    }
    if (typeof value !== 'object' || value === null || seen.has(value)) return;
    seen.add(value);
    // A title that is its name prints with blanks.
    if (isNamed(value)) phrases.add(titleOf(value));
    for (const [key, inside] of Object.entries(value)) walk(inside, Array.isArray(value) ? isProse : prose.has(key));
  };
  walk([procedure, job], false);
  return { language, phrases: [...phrases].sort((a, b) => b.length - a.length || (a < b ? -1 : 1)) };
}

function isNamed(value: object): value is { readonly name: string; readonly title: string } {
  return 'name' in value && 'title' in value && typeof value.name === 'string' && typeof value.title === 'string';
}

/** A pattern that finds these phrases, the first letter of either size. */
export function phrasePattern(
  { phrases }: OwnLanguage,
  {
    edge,
    written = (text) => text,
  }: {
    /** What the notation of patterns has for the beginning of a word. */
    readonly edge: string;
    /** How a text is written where they are looked for. */
    readonly written?: (text: string) => string;
  },
): string {
  const one = (phrase: string) => {
    const [first = '', ...rest] = [...phrase];
    const begins = [...new Set([first.toLowerCase(), first.toUpperCase()])].map((letter) => literal(written(letter)));
    return `(?:${begins.join('|')})${literal(written(rest.join('')))}`;
  };
  return `${edge}(?:${phrases.map(one).join('|')})`;
}

const literal = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&');
