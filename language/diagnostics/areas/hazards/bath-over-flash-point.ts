import { compare, formatLimit, formatQuantity, kindOfLimit, window } from '../../../quantities/index.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A bath as hot as the flash point of its fluid, or with no upper limit. */
export const bathOverFlashPoint: Rule = {
  code: 'bath-over-flash-point',
  severity: 'error',
  since: '0.2.0',
  references: ['29 CFR 1910.106(a)(19)(iii)'],
  unsafe: true,
  title: 'A bath is as hot as the flash point of its fluid.',
  eachStep(step, setting, report) {
    if (step.verb !== 'wash' && step.verb !== 'soak') return;
    const { bath } = step;
    const fluid = setting.shop.fluids.find(({ name }) => name === step.fluid);
    if (bath === null || fluid === undefined || fluid.flammable === null || kindOfLimit(bath) !== 'temperature') return;
    const { flammable } = fluid;
    const { low, high, nominal } = window(bath);
    const ends = [high, nominal, low].filter((end) => end !== null);
    const over = ends.find((end) => compare(end, flammable) !== -1);
    if (over === undefined && (high ?? nominal) !== null) return;
    const warmer = say`within 30 °F (16.7 °C) of its flash point a liquid is handled as a more flammable one (29 CFR 1910.106(a)(19))`;
    report({
      at: step,
      rootCause: `flash-point:${step.verb}:${fluid.name}:${formatLimit(bath)}`,
      message:
        over === undefined
          ? say`This bath is ${formatLimit(bath)}, with no upper limit, and the flash point of ${fluid.name} is ${formatQuantity(flammable)}.`
          : say`This bath is at ${formatQuantity(over)}, and the flash point of ${fluid.name} is ${formatQuantity(flammable)}.`,
      why: say`from its flash point up it gives off vapor that a spark lights, and the whole tank can burn.`,
      help:
        over === undefined
          ? say`Write the highest temperature that the bath may reach, well below that: ${warmer}.`
          : say`Keep the bath well below that: ${warmer}. Or use a fluid with a higher flash point.`,
    });
  },
};
