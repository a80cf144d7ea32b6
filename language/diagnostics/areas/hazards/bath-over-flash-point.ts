import { own } from '../../../model/steps.ts';
import { compare, formatLimit, formatQuantity, kindOfLimit, window } from '../../../quantities/index.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A liquid with a flash point below this is highly flammable, category 2 (GHS, and 29 CFR 1910.106(a)(19)(ii): 73.4 °F). */
const room = { number: '23', unit: '°C' } as const;

/** A bath as hot as the flash point of its fluid, or with no upper limit. */
export const bathOverFlashPoint: Rule = {
  code: 'bath-over-flash-point',
  severity: 'error',
  since: '0.2.0',
  references: ['29 CFR 1910.106(a)(19)(ii)', '29 CFR 1910.106(a)(19)(iii)'],
  unsafe: true,
  title: 'A bath is as hot as the flash point of its fluid.',
  eachStep(step, setting, report) {
    if (step.verb !== 'wash' && step.verb !== 'soak' && step.verb !== 'rinse') return;
    const bath = own(step, 'bath') ?? null;
    const fluid = setting.shop.fluids.find(({ name }) => name === step.fluid);
    if (fluid === undefined || fluid.flammable === null) return;
    const { flammable } = fluid;
    if (bath === null) {
      const stations = setting.shop.stations.filter(({ name }) => setting.stations.has(name));
      const hot = stations.find(({ dangers }) => dangers.some(({ danger, denied }) => danger === 'hot' && !denied));
      const cold = compare(flammable, room) === -1;
      if (!cold && hot === undefined) return;
      report({
        at: step,
        rootCause: cold ? `flash-point:${fluid.name}` : `flash-point:${step.verb}:${fluid.name}`,
        message: cold
          ? say`The flash point of ${fluid.name} is ${formatQuantity(flammable)}: it need not be heated to burn.`
          : say`This bath is at a hot station, no temperature is given, and the flash point of ${fluid.name} is ${formatQuantity(flammable)}.`,
        why: say`from its flash point up it gives off vapor that a spark lights, and the whole tank can burn.`,
        help: cold
          ? say`Use a fluid with a flash point well above room temperature, or wipe with a little of it from a safety can.`
          : say`Write how warm the bath is, as in “at 40..45 °C”, well below that.`,
      });
      return;
    }
    if (kindOfLimit(bath) !== 'temperature') return;
    const { low, high, nominal } = window(bath);
    const ends = [high, nominal, low].filter((end) => end !== null);
    const over = ends.find((end) => compare(end, flammable) !== -1);
    if (over === undefined && (high ?? nominal) !== null) return;
    const warmer = say`within 30 °F (16.7 °C) of its flash point a liquid is handled as a more flammable one (29 CFR 1910.106(a)(19))`;
    report({
      at: step,
      // A fluid that burns unheated is one mistake, whatever is done in it.
      rootCause:
        compare(flammable, room) === -1
          ? `flash-point:${fluid.name}`
          : `flash-point:${step.verb}:${fluid.name}:${formatLimit(bath)}`,
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
