import { thickest } from '../../calculations/shim-stock.ts';
import type { Part } from '../../model/family.ts';
import type { Procedure } from '../../model/procedure.ts';
import type { Source } from '../../model/source.ts';
import { amount, compare, formatQuantity } from '../../quantities/index.ts';
import type { Quantity } from '../../quantities/types.ts';
import { restsOn } from '../../replay/relations.ts';
import { behind } from '../edits.ts';
import type { Rule } from '../rule.ts';
import { inUnits, shimChoices } from '../shim-choices.ts';
import { partWords } from '../words.ts';

/** The drawer has shims on which the coils of the spring lie solid, and the step does not stop short of them. */
export const shimCoilBind: Rule = {
  code: 'shim-coil-bind',
  severity: 'error',
  title: 'A shim may be chosen on which the coils of the spring bind.',
  procedure(procedure, report) {
    for (const { step, parts, stocks } of shimChoices(procedure)) {
      const { neverAbove } = step.choose!;
      for (const [index, shim] of parts.entries()) {
        const stock = stocks[index]!;
        const most = thickest(stock);
        const spring = firstToBind(procedure, shim);
        if (spring === null || most === null || most.compare(amount(spring.bindsOver)) <= 0) continue;
        if (neverAbove !== null && compare(neverAbove, spring.bindsOver) !== 1) continue;
        const bound = formatQuantity(spring.bindsOver);
        const goes =
          neverAbove === null
            ? `stock ${stock.name} goes up to ${formatQuantity(inUnits(most, stock.sizes[0]!.unit))}${stock.stacks ? ', two on each other' : ''}`
            : `the step allows ${formatQuantity(neverAbove)}`;
        report({
          at: step,
          cause: `coil-bind:${shim.base}`,
          message: `The coils of the ${partWords(procedure, spring.name)} bind over ${bound} of ${partWords(procedure, shim.name)}, and ${goes}: on a solid spring the needle cannot lift, and the spring breaks. Write “never above ${bound}” in this step.`,
          data:
            neverAbove === null && step.call === null
              ? ({ source: step.source, most: spring.bindsOver } satisfies Bound)
              : undefined,
        });
      }
    }
  },
  fix(data) {
    const { source, most } = data as Bound;
    return {
      title: `Choose none above ${formatQuantity(most)}`,
      safe: true,
      edits: [behind(source, ` never above ${most.number} ${most.unit}`)],
    };
  },
};

interface Bound {
  readonly source: Source;
  readonly most: Quantity;
}

/** Of the springs that a shim loads the one that goes solid first. */
function firstToBind({ family }: Procedure, shim: Part): (Part & { readonly bindsOver: Quantity }) | null {
  const above = new Set([shim.name]);
  for (let known = 0; known < above.size; ) {
    known = above.size;
    for (const part of family.parts) if (restsOn(part).some((under) => above.has(under))) above.add(part.name);
  }
  // A shim may also lie on top of its spring.
  for (const under of shim.on) above.add(under);
  const springs = family.parts.flatMap((part) =>
    part.bindsOver !== null && above.has(part.name) ? [{ ...part, bindsOver: part.bindsOver }] : [],
  );
  return springs.sort((a, b) => compare(a.bindsOver, b.bindsOver) ?? 0)[0] ?? null;
}
