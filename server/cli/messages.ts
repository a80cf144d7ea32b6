/** The language in which the command says what it says. */
import { inLanguage, type Reader, readerOf, translated } from '../../language/i18n/translate.ts';
import { type Language, languageOf } from '../../language/i18n/words.ts';
import type { Diagnostic } from '../../language/model/diagnostic.ts';
import { type Filling, say } from '../../language/say/say.ts';

let chosen: Language | null = null;

/** What the workspace says; null: it does not, or none is open. */
let ofWorkspace: Language | null = null;

/** As an option of the command says. */
export function chooseLanguage(language: Language | null): void {
  chosen = language;
}

/** The workspace that the command is in has a language of its own. */
export function workspaceLanguage(language: Language | null): void {
  ofWorkspace = language;
}

/** As chosen; else as the workspace says; else that of the machine, as POSIX has it; else English. */
export function messageLanguage(): Language {
  const { LC_ALL, LC_MESSAGES, LANG } = process.env;
  const ofMachine = [LC_ALL, LC_MESSAGES, LANG].find((value) => value !== undefined && value !== '');
  return chosen ?? ofWorkspace ?? languageOf(ofMachine ?? '') ?? 'en';
}

/** Who reads what the command says. */
export function messageReader(): Reader {
  return readerOf(messageLanguage());
}

/** What was said, in the language of the command. */
export function words(said: Filling): string {
  return inLanguage(said, messageLanguage());
}

/** Says something in the language of the command: worded\`Wrote ${file}.\` is `words` of what `say` says. */
export function worded(strings: TemplateStringsArray, ...fillings: readonly Filling[]): string {
  return words(say(strings, ...fillings));
}

/** What is wrong by a finding, in the language of the command. */
export function findingText(diagnostic: Diagnostic): string {
  return translated(diagnostic, messageLanguage()).message;
}
