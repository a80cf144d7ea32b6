/** The language in which the command says what it says. */
import { inLanguage } from '../../language/i18n/translate.ts';
import { type Language, languageOf } from '../../language/i18n/words.ts';
import type { Said } from '../../language/say/say.ts';

let chosen: Language | null = null;

/** What the workspace says; null: it does not, or none is open. */
let ofWorkspace: Language | null = null;

/** As an option of the command says. */
export function chooseLanguage(language: Language | undefined): void {
  chosen = language ?? null;
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

/** What the command says, in its language. */
export function words(said: Said): string {
  return inLanguage(said, messageLanguage());
}
