import type Fraction from 'fraction.js';
import { permissibleError } from '../../engineering/tool-error.ts';
import type { Words } from '../../i18n/index.ts';
import type { Asset } from '../../model/shop.ts';
import { decimalValue, powerBelow, rounded } from '../../quantities/decimal.ts';
import {
  convert,
  convertDifference,
  type Difference,
  exactWindow,
  type Limit,
  type Quantity,
  window,
} from '../../quantities/index.ts';

/** How well a tool tells what passes a limit. */
export interface Accuracy {
  /** Its permissible error at the limit, in the unit that it shows: `±1 bar`. */
  readonly error: string;
  /** `4.0:1`; null: the limit has one end only. */
  readonly ratio: string | null;
}

/**
 * Half of what a limit lets through, over the tool's permissible error: the test accuracy ratio. Null: the shop says no
 * error of the tool. `setToNominal`: of a torque, where a wrench is set to the nominal and its error is taken there;
 * else it is taken at the end that is furthest from zero, where an error in percent of the reading is largest.
 */
export function accuracyOf(tool: Asset, limit: Limit, setToNominal: boolean, words: Words): Accuracy | null {
  const at = judgedAt(limit, setToNominal);
  const error = at === null ? null : permissibleError(tool, at);
  return error === null ? null : { error: errorText(error, tool, words), ratio: ratioText(limit, error, words) };
}

function judgedAt(limit: Limit, setToNominal: boolean): Quantity | null {
  const { low, high, nominal } = window(limit);
  if (setToNominal && nominal !== null) return nominal;
  const ends = [low, high, nominal].filter((end) => end !== null);
  const size = (end: Quantity) => convert(end, ends[0]!.unit)!.abs();
  return ends.reduce<Quantity | null>(
    (most, end) => (most === null || size(end).compare(size(most)) > 0 ? end : most),
    null,
  );
}

/** Rounded down, so that it never looks better than it is. */
function ratioText(limit: Limit, error: Difference, words: Words): string | null {
  const exact = exactWindow(limit, error.unit);
  const by = decimalValue(error.number);
  if (exact === null || exact.low === null || exact.high === null || by.equals(0)) return null;
  return `${words.number(rounded(exact.high.sub(exact.low).div(2).div(by), 1, 'down'))}:1`;
}

function errorText(error: Difference, { range, graduated }: Asset, words: Words): string {
  const own = range?.high.unit ?? graduated?.unit ?? error.unit;
  const inOwn = convertDifference(error, own);
  const [value, unit] = inOwn === null ? [decimalValue(error.number), error.unit] : [inOwn, own];
  return `±${words.quantity({ number: twoFigures(value), unit })}`;
}

/** Two figures, rounded up: 2.6 for 2.5718. */
function twoFigures(value: Fraction): string {
  if (value.equals(0)) return '0';
  const text = rounded(value, 1 - powerBelow(value), 'up');
  return text.includes('.') ? text.replace(/\.?0+$/u, '') : text;
}
