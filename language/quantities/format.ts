import { compareDifferences } from './convert.ts';
import { decimalValue } from './decimal.ts';
import type { Difference, Limit, Quantity, UnitName } from './types.ts';

/** Keeps a number and its unit on one line. */
const noBreak = '\u00A0';
const narrowNoBreak = '\u202F';

/** How a language writes numbers, limits and the units that are words. */
export interface Wording {
  readonly decimal: '.' | ',';
  readonly to: string;
  readonly atLeast: string;
  readonly atMost: string;
  readonly thenAngle: string;
  /** A unit as it is printed, if it has a word in it: `strokes`, or of one `stroke`. */
  readonly unit: (unit: UnitName, single: boolean) => string;
}

const countable: ReadonlySet<UnitName> = new Set(['drops', 'strokes', 'turns']);

export const english: Wording = {
  decimal: '.',
  to: 'to',
  atLeast: 'at least',
  atMost: 'at most',
  thenAngle: 'then',
  unit: (unit, single) => (single && countable.has(unit) ? unit.slice(0, -1) : unit),
};

export interface FormatOptions {
  /** English unless said otherwise. */
  readonly wording?: Wording;
  /** Groups the digits of integers from five digits on (25 855); on unless said otherwise. */
  readonly thousands?: boolean;
}

/** A number as it is printed: a true minus, and integers of five digits and more in groups of three (SI brochure, 5.4.4). */
export function formatNumber(number: string, options: FormatOptions = {}): string {
  const { decimal } = options.wording ?? english;
  const signed = number.replace('-', '−').replace('.', decimal);
  if (options.thousands === false) return signed;
  return signed.replace(
    /^(−?)(\d{5,})/u,
    (_, sign: string, digits: string) => sign + digits.replace(/\B(?=(\d{3})+$)/gu, narrowNoBreak),
  );
}

/**
 * `250 bar`, with a no-break blank; `90°` without one and `5 %`, `62 °C` with (SI brochure, 5.4.3).
 * One drop, stroke or turn is in the singular.
 */
export function formatQuantity(quantity: Quantity | Difference, options: FormatOptions = {}): string {
  return `${formatNumber(quantity.number, options)}${formatUnit(quantity, options.wording ?? english)}`;
}

/** The unit with the blank before it. */
function formatUnit({ number, unit }: Quantity | Difference, wording: Wording): string {
  if (unit === '°') return unit;
  return noBreak + wording.unit(unit, decimalValue(number).equals(1)).replaceAll(' ', noBreak);
}

/**
 * A limit as the trade writes it: `250 bar +8 −0`, `60 N·m ±5`, `55 to 65 N·m`, `at least 20 s`, `±4 %`,
 * `40 N·m then 90° ±5°`; the second unit in brackets. A tolerance repeats its unit only where it differs from the
 * nominal's, and for an angle, whose sign looks like part of the number.
 */
export function formatLimit(limit: Limit, options: FormatOptions = {}): string {
  const quantity = (value: Quantity) => formatQuantity(value, options);
  const wording = options.wording ?? english;
  switch (limit.form) {
    case 'nominal':
      return `${quantity(limit.nominal)}${tolerances(limit.plus, limit.minus, limit.nominal, options)}${inBrackets(limit.pair, options)}`;
    case 'range': {
      const low =
        limit.low.unit === limit.high.unit && limit.low.unit !== '°'
          ? formatNumber(limit.low.number, options)
          : quantity(limit.low);
      return `${low} ${wording.to} ${quantity(limit.high)}${inBrackets(limit.pair, options)}`;
    }
    case 'at least':
      return `${wording.atLeast} ${quantity(limit.least)}${inBrackets(limit.pair, options)}`;
    case 'at most':
      return `${wording.atMost} ${quantity(limit.most)}${inBrackets(limit.pair, options)}`;
    case 'tolerance':
      return tolerances(limit.plus, limit.minus, null, options).trim();
    case 'then':
      return `${formatLimit(limit.first, options)} ${wording.thenAngle} ${formatLimit(limit.angle, options)}`;
  }
}

function inBrackets(pair: Limit | undefined, options: FormatOptions): string {
  return pair === undefined ? '' : ` (${formatLimit(pair, options)})`;
}

function tolerances(
  plus: Difference | null,
  minus: Difference | null,
  nominal: Quantity | null,
  options: FormatOptions,
): string {
  const figure = (side: Difference): string => {
    const plain = decimalValue(side.number).equals(0) ? { ...side, number: '0' } : side;
    const repeated = nominal === null || side.unit !== nominal.unit || side.unit === '°';
    return repeated ? formatQuantity(plain, options) : formatNumber(plain.number, options);
  };
  if (plus !== null && minus !== null && plus.unit === minus.unit && compareDifferences(plus, minus) === 0)
    return ` ±${figure(plus)}`;
  const above = plus === null ? '' : ` +${figure(plus)}`;
  const below = minus === null ? '' : `${plus === null ? ' ' : noBreak}−${figure(minus)}`;
  return above + below;
}
