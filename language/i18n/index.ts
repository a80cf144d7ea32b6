export type { Span } from './message.ts';
export { type Language, languages, type Words, wordsIn } from './words.ts';
