import { allSteps } from '../../../analysis/locations.ts';
import { compare, formatLimit, formatQuantity, kindOfLimit, window } from '../../../quantities/index.ts';
import type { Rule } from '../../rule.ts';

/** A bath as hot as the flash point of what is in it, or with no upper end. */
export const bathOverFlashPoint: Rule = {
  code: 'bath-over-flash-point',
  severity: 'error',
  since: '0.2.0',
  references: ['29 CFR 1910.106(a)(19)(iii)'],
  unsafe: true,
  title: 'A bath is as hot as the flash point of what is in it.',
  procedure(procedure, report) {
    for (const step of allSteps(procedure)) {
      if (step.verb !== 'wash' && step.verb !== 'soak') continue;
      const { bath } = step;
      const fluid = procedure.shop.fluids.find(({ name }) => name === step.fluid);
      if (bath === null || fluid === undefined || fluid.flammable === null || kindOfLimit(bath) !== 'temperature')
        continue;
      const { flammable } = fluid;
      const { low, high, nominal } = window(bath);
      const ends = [high, nominal, low].filter((end) => end !== null);
      const over = ends.find((end) => compare(end, flammable) !== -1);
      if (over === undefined && (high ?? nominal) !== null) continue;
      const flash = `${fluid.name} gives off vapor that a spark lights from ${formatQuantity(flammable)} up`;
      report({
        at: step,
        cause: `flash-point:${step.verb}:${fluid.name}:${formatLimit(bath)}`,
        message:
          over === undefined
            ? `This bath is ${formatLimit(bath)} with no upper end, and ${flash}. Write the highest it may get, well below that: within 30 °F (16.7 °C) of its flash point a liquid is handled as a more flammable one (29 CFR 1910.106(a)(19)).`
            : `This bath is at ${formatQuantity(over)}, and ${flash}: it can burn over the whole tank. Keep it well below; within 30 °F (16.7 °C) of its flash point a liquid is handled as a more flammable one (29 CFR 1910.106(a)(19)). Or take a fluid with a higher flash point.`,
      });
    }
  },
};
