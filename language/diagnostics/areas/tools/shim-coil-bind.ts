import Fraction from 'fraction.js';
import { listed, partWords } from '../../../analysis/prose.ts';
import { drawersOf, firstToBind, inUnits } from '../../../analysis/shims.ts';
import { thickest } from '../../../engineering/shim-stock.ts';
import type { Source } from '../../../model/source.ts';
import { amount, compare, formatQuantity } from '../../../quantities/index.ts';
import type { Quantity } from '../../../quantities/types.ts';
import { say } from '../../../say/say.ts';
import { behind } from '../../edits.ts';
import type { Rule } from '../../rule.ts';

/** The drawer has shims so thick that the coils of the spring bind, and the step does not exclude them. */
export const shimCoilBind: Rule<Bound> = {
  code: 'shim-coil-bind',
  severity: 'error',
  since: '0.2.0',
  title: 'A shim may be chosen that is so thick that the coils of the spring bind.',
  procedure(procedure, report) {
    for (const { step, parts, stocks } of drawersOf(procedure)) {
      const { neverAbove } = step;
      // Shims that are chosen together are stacked, and the spring takes their sum.
      const most = stocks.reduce<Fraction | null>((sum, stock) => {
        const own = thickest(stock);
        return sum === null || own === null ? null : sum.add(own);
      }, new Fraction(0));
      for (const shim of parts) {
        const spring = firstToBind(procedure.family, shim);
        if (spring === null || most === null || most.compare(amount(spring.bindsOver)) <= 0) continue;
        if (neverAbove !== null && compare(neverAbove, spring.bindsOver) !== 1) continue;
        const bound = formatQuantity(spring.bindsOver);
        const names = [...new Set(stocks.map(({ name }) => name))];
        const several = stocks.length > 1 || stocks.some(({ stacks }) => stacks);
        const goes =
          neverAbove === null
            ? say`${names.length === 1 ? say`stock` : say`stocks`} ${listed(names)} ${names.length === 1 ? say`goes` : say`go`} up to ${formatQuantity(inUnits(most, stocks[0]!.sizes[0]!.unit))}${several ? say`, two stacked` : ''}`
            : say`the step allows ${formatQuantity(neverAbove)}`;
        report({
          at: step,
          rootCause: `coil-bind:${shim.base}`,
          message: say`The coils of the ${partWords(procedure, spring.name)} bind above ${bound} of ${partWords(procedure, shim.name)}, but ${goes}.`,
          why: say`when the spring is solid, the needle cannot lift, and the spring breaks.`,
          help: say`Write “never above ${bound}” in this step.`,
          data: neverAbove === null && step.call === null ? { source: step.source, most: spring.bindsOver } : undefined,
        });
      }
    }
  },
  fix({ source, most }) {
    return {
      title: say`Choose none above ${formatQuantity(most)}`,
      safe: true,
      edits: [behind(source, ` never above ${most.number} ${most.unit}`)],
    };
  },
};

interface Bound {
  readonly source: Source;
  readonly most: Quantity;
}
