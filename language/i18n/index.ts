export type { Span } from './message.ts';
export { inLanguage, translated } from './told.ts';
export { type Language, languageOf, languages, type OwnWords, type Words, wordsIn } from './words.ts';
