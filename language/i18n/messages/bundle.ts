/**
 * The texts of a language by their English template, as `say` has it: `{0}` is what the first hole holds. A text may leave
 * out a hole that only English needs (`is`, `them`), and may choose by the English in one: `{en0, select, are {…} other {…}}`.
 */
export type Bundle = Readonly<Record<string, string>>;

/** Words that have an article, without it: chosen by the English of a hole. */
export function withoutArticle(words: Bundle, article: RegExp, hole: number): string {
  const choices = Object.entries(words).flatMap(([english, text]) =>
    article.test(text) ? [`${english.replace(/\W+/gu, '_')} {${text.replace(article, '')}}`] : [],
  );
  return `{en${hole}, select, ${choices.join(' ')} other {{${hole}}}}`;
}
