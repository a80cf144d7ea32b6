export type { Span } from './message.ts';
export { type Language, languages, type OwnWords, type Words, wordsIn } from './words.ts';
