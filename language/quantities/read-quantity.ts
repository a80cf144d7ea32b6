import { joined, type Said, say } from '../say/say.ts';
import { quantityNumberPart } from './patterns.ts';
import { readUnit } from './read-unit.ts';
import type { Quantity } from './types.ts';

/** A number as digits; or what is wrong with it, with the corrected text and the number meant where that is sure. */
export type NumberReading = { number: string } | { problem: Said; fix?: string; number?: string };

/** A quantity; or what is wrong with it, and first in which part of it, with the corrected text and the quantity meant where that is sure. */
export type QuantityReading =
  | { quantity: Quantity }
  | { problem: Said; of: 'number' | 'unit'; fix?: string; quantity?: Quantity };

/** More digits than any instrument shows; more are a slip of the keyboard. */
const mostDigits = 15;
/** Beyond this no unit of the table makes sense at a bench. */
const largest = 1e12;

/**
 * Judges a number matched by `numberPattern`. A comma is refused: `0,20` can only be 0.20, but `3,750` is 3750 in one
 * country and 3.75 in the next, so both are offered and neither is taken; the same with `3 750` and `3'750`. Exponents are refused with the number
 * written out. Absurd numbers (over 15 digits, over 1e12) are refused without one.
 */
export function readNumber(text: string): NumberReading {
  if (/\d['’ ]\d/u.test(text)) {
    const together = text.replace(/(?<=\d)['’ ](?=\d)/gu, '');
    return {
      problem: say`"${text}" can be read as ${together}, or as ${joined(text.split(/['’ ]/u), say` and `)}: thousands have no separator and no space. Write ${together}, or put what belongs between the two.`,
    };
  }
  const typed = text.replace(/[\u00A0\u202F ]/gu, '').replace('−', '-');
  const match = /^(-?)(\d[\d.,]*)(?:e([+-]?\d+))?$/iu.exec(typed);
  if (match === null) return { problem: say`"${text}" is no number: write digits with a point, such as 0.25.` };
  const [, sign, digits, exponent] = match as unknown as [string, string, string, string | undefined];
  const readings = readingsOf(digits);
  if (readings.length === 0) {
    return { problem: say`"${text}" is no number: write digits with one point, such as 0.25, and no commas.` };
  }
  if (readings.length > 1) {
    return {
      problem: say`"${text}" can be read as ${joined(readings, say` or as `)}: write the one that is meant, without a comma.`,
    };
  }
  const plain = exponent === undefined ? readings[0]! : writtenOut(readings[0]!, exponent);
  if (plain === null || Number(plain) > largest) {
    return {
      problem: say`"${text}" is larger than anything measured at a bench (1 000 000 000 000): check the digits or take a larger unit.`,
    };
  }
  if (plain.replace(/\D/gu, '').replace(/^0+(?=\d)/u, '').length > mostDigits || plain.length > 2 * mostDigits) {
    return { problem: say`"${text}" has more than ${mostDigits} digits: write only those that the tool can show.` };
  }
  const number = `${sign}${plain}`;
  if (exponent !== undefined) return { problem: say`Write the number out: ${number}.`, fix: number, number };
  if (digits !== plain)
    return {
      problem: say`The decimal separator is a point, and thousands have no separator: write ${number}.`,
      fix: number,
      number,
    };
  return { number };
}

/** What the digits, points and commas can mean, most likely first. Points alone mean one thing: the decimal mark. */
function readingsOf(digits: string): string[] {
  if (/^\d+(\.\d+)?$/u.test(digits)) return [digits];
  if (/^\d+,\d+$/u.test(digits)) {
    const decimal = digits.replace(',', '.');
    // Only one to three digits that do not start with 0, then just three, can be thousands.
    if (!/^[1-9]\d{0,2},\d{3}$/u.test(digits)) return [decimal];
    return [digits.replace(',', ''), decimal.replace(/\.?0+$/u, '')];
  }
  if (/^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/u.test(digits)) return [digits.replaceAll(',', '')];
  if (/^[1-9]\d{0,2}(\.\d{3})+(,\d+)?$/u.test(digits)) return [digits.replaceAll('.', '').replace(',', '.')];
  return [];
}

/** A number with its exponent worked into the digits. Null: too large to write out. */
function writtenOut(digits: string, exponent: string): string | null {
  const [whole, fraction = ''] = digits.split('.') as [string, string?];
  const shift = Number(exponent);
  if (/^[0.]*$/u.test(digits)) return '0';
  if (shift > 30) return null;
  if (shift < -30) return `0.${'0'.repeat(30)}1`;
  const padded = '0'.repeat(Math.max(0, -shift)) + whole + fraction + '0'.repeat(Math.max(0, shift));
  const point = Math.max(0, -shift) + whole.length + shift;
  const integer = padded.slice(0, point).replace(/^0+(?=\d)/u, '');
  const rest = padded.slice(point).replace(/0+$/u, '');
  return rest === '' ? integer : `${integer || '0'}.${rest}`;
}

/**
 * Judges a token matched by `quantityPattern`: its number (see `readNumber`) and its unit (see `readUnit`).
 * The quantity meant is given with a problem wherever it is sure, so that later steps go on; the fix is the whole token.
 */
export function readQuantity(text: string): QuantityReading {
  const match = tokenParts(text);
  if (match === null)
    return { problem: say`"${text}" is no quantity: write a number and a unit, such as 250 bar.`, of: 'number' };
  const number = readNumber(match.number);
  const unit = readUnit(match.unit);
  const digits = 'number' in number ? number.number : undefined;
  const name = 'unit' in unit ? unit.unit : 'near' in unit ? unit.near : undefined;
  const quantity = digits === undefined || name === undefined ? undefined : { number: digits, unit: name };
  const problems = [
    ...('problem' in number ? [number.problem] : []),
    ...('near' in unit ? [unit.why] : []),
    ...('refused' in unit ? [unit.refused] : []),
  ];
  if (problems.length === 0 && quantity !== undefined) return { quantity };
  const problem = joined(problems);
  const of = 'problem' in number ? 'number' : 'unit';
  if (quantity === undefined) return { problem, of };
  // An accepted spelling stays as typed: a fix touches only what is wrong.
  const unitText = 'unit' in unit ? match.unit : quantity.unit;
  const blank = quantity.unit === '°' && match.blank === '' ? '' : ' ';
  return { problem, of, fix: `${quantity.number}${blank}${unitText}`, quantity };
}

const parts = new RegExp(String.raw`^(-?${quantityNumberPart})([ \u00A0\u202F]*)(\S.*)$`, 'u');

function tokenParts(text: string): { number: string; blank: string; unit: string } | null {
  const match = parts.exec(text.trim());
  return match === null ? null : { number: match[1]!, blank: match[2]!, unit: match[3]! };
}
