import { base, quantityOf } from '../calculations/measured.ts';
import type { Job } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import { convert, formatQuantity, unitOf } from '../quantities/index.ts';
import type { Quantity, UnitName } from '../quantities/types.ts';
import { partsWords } from '../rules/words.ts';
import { type FittedRate, fittedRates } from './fitted-rate.ts';

/** Significant digits of a fitted rate, and of its error: more would look like knowledge. */
const digits = { rate: 3, error: 2 };
/** So many standard errors from the given rate are no chance. */
const far = 3;

/** What the shop's own readings say of the rates of a procedure. */
export function rateLines(procedure: Procedure, jobs: readonly Job[]): string[] {
  const rates = fittedRates(procedure, jobs);
  if (rates.length === 0)
    return [`${procedure.name} chooses no part from a stock of the shop: there is no rate to fit.`];
  return rates.flatMap((rate) => linesOf(procedure, rate));
}

function linesOf(procedure: Procedure, { choice, numbers, given, fit, jobs }: FittedRate): string[] {
  const part = partsWords(
    procedure,
    choice.parts.map(({ name }) => name),
  );
  const head = `${choice.test} by ${part}${numbers === null ? '' : `, ${numbers.join(', ')}`}`;
  if (fit === null)
    return [
      `${head}: too few readings. It wants units that were read with two shims or more, and one reading to spare in all.`,
    ];
  const inUnit = (value: number, unit: UnitName, to: number) =>
    quantityOf(value * unitOf(unit).factor.valueOf(), unit, to)!;
  const [rate, error] = [inUnit(fit.slope, 'bar per mm', digits.rate), inUnit(fit.error, 'bar per mm', digits.error)];
  const from = `${fit.points} readings of ${fit.units} ${fit.units === 1 ? 'unit' : 'units'}, ${jobs.length === 1 ? 'job' : 'jobs'} ${jobs.join(', ')}`;
  const lines = [
    `${head}: ${formatQuantity(rate)}, standard error ${formatQuantity(error)}; a reading scatters by ${formatQuantity(inUnit(fit.residual, 'bar', digits.error))}`,
    `  from ${from}`,
  ];
  if (fit.slope <= 0)
    return [...lines, '  A thicker shim brought no more pressure: something else was changed between these readings.'];
  const spec = choice.step.choose!.rate;
  return [
    ...lines,
    ...(given === null ? [] : [`  ${againstGiven(given, fit.slope, fit.error)}`]),
    `  spec ${spec ?? 'shim-rate'}  rate  ${rate.number} ${rate.unit} ±${error.number}  source "Fitted from ${from}"`,
  ];
}

function againstGiven(given: Quantity, slope: number, error: number): string {
  const shown = formatQuantity(quantityOf(base(given), 'bar per mm', digits.rate)!);
  const off = Math.abs(convert(given, 'bar per mm')!.valueOf() - slope) / error;
  if (!Number.isFinite(off)) return `The procedure reckons with ${shown}.`;
  const errors = `${off.toFixed(1)} standard errors from it`;
  return off <= far
    ? `The procedure reckons with ${shown}: ${errors}, which may be chance.`
    : `The procedure reckons with ${shown}: ${errors}. Look for what was read wrong, or write the fitted one:`;
}
