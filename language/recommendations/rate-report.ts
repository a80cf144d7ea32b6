import { partsWords } from '../analysis/prose.ts';
import { quantityOf } from '../engineering/measured.ts';
import type { Job } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import { formatNumber, formatQuantity, unitOf } from '../quantities/index.ts';
import { english, type Filling, joined, type Said, say, type Tell } from '../say/say.ts';
import { type FittedRate, fittedRates, type Slip } from './fitted-rate.ts';

/** Significant digits of a fitted rate, and of its error: more would look like knowledge. */
const digits = { rate: 3, error: 2 };
/** So many standard errors from the given rate are no chance. */
const far = 3;

/** What the shop's own readings say of the rates of a procedure. */
export function rateLines(procedure: Procedure, jobs: readonly Job[], tell: Tell = english): string[] {
  return rateSaid(procedure, jobs).map(tell);
}

function rateSaid(procedure: Procedure, jobs: readonly Job[]): Filling[] {
  const rates = fittedRates(procedure, jobs);
  if (rates.length === 0)
    return [say`${procedure.name} chooses no part from a stock of the shop: there is no rate to fit.`];
  return rates.flatMap((rate) => linesOf(procedure, rate));
}

function linesOf(procedure: Procedure, { choice, numbers, given, unit, fit, slips, jobs }: FittedRate): Filling[] {
  const part = partsWords(
    procedure,
    choice.parts.map(({ name }) => name),
  );
  const head = say`${choice.test} by ${part}${numbers === null ? '' : `, ${numbers.join(', ')}`}`;
  const left = slips.map((slip) => slipWords(choice.test, slip));
  if (fit === null)
    return [
      say`${head}: too few readings. The fit needs units that were read with at least two shims each, and one extra reading in all.`,
      ...left,
    ];
  const figure = (value: number, to: number) => quantityOf(value * unitOf(unit).factor.valueOf(), unit, to);
  const [rate, error, scatter] = [
    figure(fit.slope, digits.rate),
    figure(fit.error, digits.error),
    figure(fit.residual, digits.error),
  ];
  if (rate === null || error === null || scatter === null)
    return [say`${head}: the readings give no usable rate. Check them and the shims.`, ...left];
  const per = unit === 'bar' ? 'bar per mm' : `${unit} per 1 mm`;
  const units =
    fit.units === 1 ? say`${fit.points} readings of 1 unit` : say`${fit.points} readings of ${fit.units} units`;
  const from = jobs.length === 1 ? say`${units}, job ${jobs.join(', ')}` : say`${units}, jobs ${jobs.join(', ')}`;
  const lines = [
    say`${head}: ${formatNumber(rate.number)} ${per}, standard error ${formatNumber(error.number)} ${per}; a reading scatters by ${formatQuantity(scatter)}, its marks and digits included`,
    say`  from ${from}`,
    ...left,
  ];
  if (fit.slope <= 0)
    return [...lines, say`  A thicker shim brought no more: something else was changed between these readings.`];
  if (fit.error >= fit.slope)
    return [
      ...lines,
      say`  The error is as large as the rate, so there is no rate to write down. Look for a reading or a shim that is written down wrong, or add readings.`,
    ];
  const spec = choice.step.rate;
  return [
    ...lines,
    ...(given === null ? [] : [joined(['', againstGiven(given, fit.slope, fit.error, per)], '  ')]),
    joined(
      [
        `  spec ${spec ?? 'shim-rate'}  rate  ${rate.number} ${per.replace(/ per .*/u, '')} per ${unit === 'bar' ? 'mm' : '1 mm'} ±${error.number}  source "`,
        say`Fitted from ${from}`,
        '"',
      ],
      '',
    ),
  ];
}

function slipWords(test: string, { job, unit, what, value, meant }: Slip): Said {
  const said = what === 'shim' ? say`a shim of ${formatQuantity(value)}` : joined([test, formatQuantity(value)]);
  return say`  Left out: unit ${unit.place} of job ${job}, ${said}, is off by a power of ten beside the others. Is it ${formatQuantity(meant)}? Put it right in the job.`;
}

function againstGiven(given: number, slope: number, error: number, per: string): Said {
  const shown = `${formatNumber(String(Number(given.toPrecision(digits.rate))))} ${per}`;
  const off = Math.abs(given - slope) / error;
  if (!Number.isFinite(off)) return say`The procedure reckons with ${shown}.`;
  if (off < 0.05) return say`The procedure reckons with ${shown}: the same.`;
  const errors = say`${off.toFixed(1)} standard errors from it`;
  return off <= far
    ? say`The procedure reckons with ${shown}: ${errors}, which may be chance.`
    : say`The procedure reckons with ${shown}: ${errors}. Look for what was read wrong, or write the fitted one:`;
}
