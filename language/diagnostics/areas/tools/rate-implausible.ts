import type Fraction from 'fraction.js';
import { specLimits } from '../../../analysis/limits.ts';
import { inUnits, shimChoices } from '../../../analysis/shims.ts';
import { workedOut } from '../../../analysis/tool-words.ts';
import { shimRate } from '../../../engineering/shim-stock.ts';
import type { Procedure } from '../../../model/procedure.ts';
import { amount, compare, kindOfUnit, window } from '../../../quantities/index.ts';
import type { Quantity } from '../../../quantities/types.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/**
 * Published shop rates of small nozzles range from 69 to 196 bar per mm. Half the lowest and twice the highest are let
 * through: makers' springs differ by that much, while the mistakes that this rule is for (a decimal place, thousandths
 * of an inch for hundredths of a millimeter, bar for psi) are tenfold and more.
 */
const least: Quantity = { number: '35', unit: 'bar per mm' };
const most: Quantity = { number: '400', unit: 'bar per mm' };

/** An opening pressure from here up belongs to a nozzle; a relief valve set by shims has its own rates. */
const nozzle: Quantity = { number: '80', unit: 'bar' };

/** The rate of a nozzle's shim is far from that of any nozzle. */
export const rateImplausible: Rule = {
  code: 'rate-implausible',
  severity: 'warning',
  since: '0.2.0',
  title: 'The shim rate of a nozzle is far from that of any nozzle.',
  procedure(procedure, report) {
    const rates = nozzleRates(procedure);
    for (const { limit, spec, source } of specLimits(procedure)) {
      if (spec === null || !rates.has(spec.name)) continue;
      const { nominal, low, high } = window(limit);
      // A rate that is written as a band is far off if one of its ends is.
      const rate = (nominal === null ? [low, high] : [nominal])
        .flatMap((figure) => (figure === null ? [] : (rateOf(figure, spec.per) ?? [])))
        .find((one) => one.compare(amount(least)) < 0 || one.compare(amount(most)) > 0);
      if (rate === undefined) continue;
      report({
        at: source,
        allow: spec.allow,
        message: say`This rate is ${workedOut(inUnits(rate, 'bar per mm'))}, but shims of small nozzles change the pressure by 69 to 196 bar per mm.`,
        why: say`a shim worked out from it is far off, and the unit is opened again and again.`,
        help: say`Check the decimal point and the units (about 3 bar per 0.001 in is common), or fit the rate to your own readings.`,
      });
    }
  },
};

function rateOf(figure: Quantity, per: Quantity | null): Fraction | null {
  return per === null || kindOfUnit(figure.unit) === 'pressure' ? shimRate(figure, per) : null;
}

/** Specs used to choose a shim for the opening pressure of a nozzle. */
function nozzleRates(procedure: Procedure): Set<string> {
  return new Set(
    shimChoices(procedure).flatMap(({ step: { rate }, cases }) => {
      const high = cases.some(({ target, limit }) => {
        const aim = target ?? (limit === null ? null : (window(limit).nominal ?? window(limit).low));
        return aim !== null && compare(aim, nozzle) === 1;
      });
      return high && rate !== null ? [rate] : [];
    }),
  );
}
