/** The language in which the command says what it says. */
import { type Language, languageOf } from '../../language/i18n/index.ts';

let chosen: Language | null = null;

/** As the command was told. */
export function chooseLanguage(language: Language | undefined): void {
  chosen = language ?? null;
}

/** As chosen; else as the workspace says; else that of the machine, as programs are told it (POSIX); else English. */
export function messageLanguage(ofWorkspace: Language | null = null): Language {
  const { LC_ALL, LC_MESSAGES, LANG } = process.env;
  const ofMachine = [LC_ALL, LC_MESSAGES, LANG].find((value) => value !== undefined && value !== '');
  return chosen ?? ofWorkspace ?? languageOf(ofMachine ?? '') ?? 'en';
}
