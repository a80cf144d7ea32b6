/** A finding as a list of problems shows it. */
import { areaOf } from '../diagnostics/index.ts';
import { inLanguage } from '../i18n/translate.ts';
import type { Language } from '../i18n/words.ts';
import { type Diagnostic, shortMessage } from '../model/diagnostic.ts';
import { say } from '../say/say.ts';

export { type Reader, readerOf, translated } from '../i18n/translate.ts';
export { type Language, languageOf } from '../i18n/words.ts';

/** What is wrong and what to do, with the number of the step. @param diagnostic in that language */
export function problemText(diagnostic: Diagnostic, language: Language): string {
  const message = shortMessage(diagnostic);
  return diagnostic.step === undefined ? message : inLanguage(say`Step ${diagnostic.step}: ${message}`, language);
}

/** Findings of what is written and does nothing: the editor shows it faded. */
const unnecessary = new Set([
  'allow-without-effect',
  'spec-unused',
  'part-unused',
  'step-unreachable',
  'nothing-done-here',
  'repair-changes-nothing',
]);

/** What is written there does nothing. */
export function isUnnecessary({ rule }: Diagnostic): boolean {
  return unnecessary.has(rule);
}

/** The page of a rule, from the folder of all pages; null for what is no rule. */
export function rulePage(rule: string): string | null {
  const area = areaOf(rule);
  return area === null ? null : `${area}/${rule}.md`;
}
