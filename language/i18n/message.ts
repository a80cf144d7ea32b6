import { IntlMessageFormat } from 'intl-messageformat';

/** A run of text; `strong` is a value that a hand needs. */
export interface Span {
  readonly text: string;
  readonly strong?: boolean;
}

/** What is put into a message: a word, a count, or runs that were made by another message. */
export type Filling = string | number | readonly Span[];

/** Names that a message needs: `{wrench}`, `{count, plural, …}`. Text inside a plural is not a name. */
type Asked<Text> = Text extends `${string}{${infer Name}}${infer Rest}`
  ?
      | (Name extends `${infer Counted},${string}` ? Counted : Name extends `${string} ${string}` ? never : Name)
      | Asked<Rest>
  : never;

/** A message that asks for nothing is a text; another is a function that is given what it asks for. */
export type Filled<T> = T extends string
  ? [Asked<T>] extends [never]
    ? string
    : (fillings: Readonly<Record<Asked<T>, string | number>>) => string
  : { readonly [Key in keyof T]: Filled<T[Key]> };

/** The same keys with any text: what another language must have. */
export type Same<T> = T extends string ? string : { readonly [Key in keyof T]: Same<T[Key]> };

/** Text runs of a message: `<b>` is strong. Two of a kind that meet become one. */
export function fill(message: IntlMessageFormat, fillings: Readonly<Record<string, Filling>>): Span[] {
  const made = message.format<Span | readonly Span[]>({
    ...fillings,
    b: (chunks: readonly unknown[]) => ({ text: chunks.join(''), strong: true }),
  } as unknown as Record<string, string>);
  const spans: Span[] = [];
  const add = (one: string | Span | readonly Span[]) => {
    if (Array.isArray(one)) return one.forEach(add);
    const span: Span = typeof one === 'string' ? { text: one } : (one as Span);
    const last = spans.at(-1);
    if (span.text === '') return;
    if (last !== undefined && (last.strong ?? false) === (span.strong ?? false))
      spans.splice(-1, 1, { ...last, text: last.text + span.text });
    else spans.push(span);
  };
  for (const one of Array.isArray(made) ? made : [made]) add(one as string | Span | readonly Span[]);
  return spans;
}

/** Makes messages of one language, each read when it is first said. */
export class Messages {
  readonly #language: string;
  readonly #read = new Map<string, IntlMessageFormat>();

  constructor(language: string) {
    this.#language = language;
  }

  /** A message ready to be filled. */
  of(text: string): IntlMessageFormat {
    const known = this.#read.get(text);
    if (known !== undefined) return known;
    const message = new IntlMessageFormat(text, this.#language);
    this.#read.set(text, message);
    return message;
  }

  /** Catalogue texts as texts and functions, key by key. */
  said<T>(catalogue: Same<T>): Filled<T> {
    if (typeof catalogue === 'string') {
      if (!catalogue.includes('{')) return catalogue as Filled<T>;
      const say = (fillings: Readonly<Record<string, string | number>>) => String(this.of(catalogue).format(fillings));
      return say as Filled<T>;
    }
    const entries = Object.entries(catalogue as Readonly<Record<string, Same<unknown>>>);
    return Object.fromEntries(entries.map(([key, value]) => [key, this.said(value)])) as Filled<T>;
  }
}

/** The words of a run of spans. */
export function spanText(spans: readonly Span[]): string {
  return spans.map(({ text }) => text).join('');
}
