import { nearUnits, refusedUnits } from './near-units.ts';
import { judgedByCase, sameSigns, spellings } from './read-unit.ts';

/** Digits in groups of three, with marks between that are refused later: `1'000`, and before a unit `1 000`. */
const apart = String.raw`\d{1,3}(?:['’]\d{3})+(?!\d)(?:[.,]\d+)?`;
const spaced = String.raw`\d{1,3}(?: \d{3})+(?![\d])(?:[.,]\d+)?`;

/**
 * The number of a token: digits with any mix of points and commas between digits (judged later by `readNumber`),
 * or in groups of three by no-break blanks as they are printed, and an exponent. A point needs a digit after it,
 * so `16..80` is 16 and 80. No sign: a sign is a token of its own.
 */
const numberPart: string = String.raw`(?:${apart}|\d{1,3}(?:[\u00A0\u202F]\d{3})+(?!\d)(?:\.\d+)?|\d+(?:[.,]\d+)*(?:[eE][+\-−]?\d+)?)`;

/** Keeps the number whole: without it the matcher would give back digits until the rest fits. */
const numberEnds = String.raw`(?![\p{L}\p{N}_]|[.,]\d)`;

/** Keeps the unit whole: `45 N·mm` is no 45 N, `8 s-bend` is no 8 s. */
const unitEnds = String.raw`(?![\p{L}\p{N}_⁄²³]|[·⋅•∙‧*^]|[/.\-][\p{L}])`;

/** `+8 -0 in service`, `3 in cross pattern` and `1..6 in order`: there `in` is the word. */
const wordIn = String.raw`(?!(?<=[\d \u00A0\u202F]in)[ \u00A0\u202F]+(?:service|cross|order)(?![\p{L}\p{N}]))`;

function characterPattern(character: string, anyCase: boolean): string {
  const same = sameSigns[character];
  if (character === ' ') return `[${same}]+`;
  if (anyCase && /[a-z]/iu.test(character)) {
    return `[${character.toLowerCase()}${character.toUpperCase()}${same === undefined ? '' : same}]`;
  }
  if (same !== undefined) return `[${same}]`;
  return character.replace(/[$()*+./?[\\\]^{|}]/u, String.raw`\$&`);
}

function spellingPattern(spelling: string, anyCase: boolean): string {
  return Array.from(spelling, (character) => characterPattern(character, anyCase)).join('');
}

const alternatives = [
  ...[...spellings.keys(), ...nearUnits.map((row) => row.written)].map((spelling) => ({
    spelling,
    anyCase: judgedByCase(spelling),
  })),
  ...refusedUnits.map((row) => ({ spelling: row.written, anyCase: false })),
]
  .sort((a, b) => b.spelling.length - a.spelling.length || (a.spelling < b.spelling ? -1 : 1))
  .map(({ spelling, anyCase }) => spellingPattern(spelling, anyCase));

/** The number of a quantity: a unit after it shows that separated digits are one number. */
export const quantityNumberPart: string = `(?:${spaced}|${numberPart})`;

/**
 * Source of the pattern of a bare number, for a sticky expression with the `u` flag; not followed by a letter. Before the
 * other end of a range, in a row of figures and in parentheses, separated digits are one number too.
 */
export const numberPattern: string = `(?:${spaced}(?=\\.\\.|\\)| (?:times|letters|digits)|, ?\\d| ?\\})|${numberPart}${numberEnds})`;

/**
 * Source of the pattern of one quantity (number, blanks or none, unit), for a sticky expression with the `u` flag.
 * Units are the accepted spellings, the near misses and the refused ones, the longest first, so that what is judged
 * later is one token and `45 ft-lb` never becomes 45 and a name.
 */
export const quantityPattern: string = `${quantityNumberPart}[ \\u00A0\\u202F]*(?:${[...new Set(alternatives)].join('|')})${unitEnds}${wordIn}`;
