import { say } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import type { Context } from './context.ts';

let languageNames: Intl.DisplayNames | undefined;
/** Made when a language is first named: it takes milliseconds to load its data. */
const namesOfLanguages = () =>
  (languageNames ??= new Intl.DisplayNames(['en'], { type: 'language', fallback: 'none' }));

/** A code of ISO 639 that a reader program can make use of: `es`. */
export function languageOf(context: Context, head: ast.InLanguage | ast.Shop, language: string): string | null {
  if (/^[a-z]{2,3}$/u.test(language) && namesOfLanguages().of(language) !== undefined) return language;
  context.syntax(
    'unknown-word',
    say`No language has the code ${language}, so a reader program cannot speak these words right. Write the code of ISO 639: en, es, de, pt, fr.`,
    context.source(head, 'language'),
  );
  return null;
}
