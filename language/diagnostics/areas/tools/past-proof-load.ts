import { judgedLimits } from '../../../analysis/limits.ts';
import { allSteps } from '../../../analysis/locations.ts';
import { lower } from '../../../analysis/prose.ts';
import { limitWords } from '../../../analysis/tool-words.ts';
import { nutFactor } from '../../../engineering/nut-factor.ts';
import { preloadByFactor, torqueByFactor } from '../../../engineering/preload.ts';
import { proofLoad, shareOfProofLoad } from '../../../engineering/proof-load.ts';
import type { SolidBolt } from '../../../model/family.ts';
import type { LimitUse, Procedure, Step, StepOf } from '../../../model/procedure.ts';
import { decimalValue } from '../../../quantities/decimal.ts';
import { formatLimit, formatQuantity, kindOfLimit, type Rounding, roundTo, window } from '../../../quantities/index.ts';
import type { Limit, Quantity } from '../../../quantities/types.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A limit lets a solid bolt or stud be torqued past its proof load. */
export const pastProofLoad: Rule = {
  code: 'past-proof-load',
  severity: 'warning',
  since: '0.2.0',
  references: ['ISO 898-1'],
  title: 'A torque takes a solid bolt or stud past its proof load.',
  procedure(procedure, report) {
    for (const step of allSteps(procedure)) {
      if (step.verb !== 'torque' && step.verb !== 'lock') continue;
      const { limit: use } = step;
      if (use === null) continue;
      for (const { part, joint } of boltsOf(procedure, step)) {
        const oiled = joint.oiled || (step.verb === 'torque' && step.oiled);
        for (const judged of torquesOf(procedure, step, use)) {
          const most = highest(judged.limit);
          const past = most === null ? null : overload(most, joint.solid, oiled);
          if (most === null || past === null) continue;
          const spec = procedure.specs.find(({ name }) => use.form === 'spec' && name === use.spec);
          const number = procedure.numbers.find(({ name }) => name === judged.number);
          report({
            at: step,
            source: use.source,
            // One cause for the same bolt at the same figure, whichever step; dry and oiled are two causes.
            rootCause: `proof-load:${part.base}:${formatLimit(judged.limit)}:${oiled}`,
            allow: [...part.allow, ...(spec?.allow ?? []), ...(number?.allow ?? [])],
            related: [{ message: say`Its thread and class are declared here.`, source: joint.source }],
            message: say`${limitWords(judged)} may stretch the ${lower(part.title)} for good.`,
            why: say`${past.words(joint.thread!)} A stretched bolt holds less at every build.`,
            help: past.advice,
          });
        }
      }
    }
  },
};

/** The solid bolts and studs that a step torques. Where a stretch is given, it decides: the torque is left alone. */
function boltsOf({ family }: Procedure, step: StepOf<'torque' | 'lock'>) {
  if (step.verb === 'torque' && step.stretch !== null) return [];
  return step.objects.flatMap(({ name }) => {
    const part = family.parts.find((other) => other.name === name);
    const joint = family.joints.find((other) => other.part === name);
    return part === undefined || joint === undefined || joint.solid === null
      ? []
      : [{ part, joint: { ...joint, solid: joint.solid } }];
  });
}

/** With `then` the angle does the stretching, often past the proof load on purpose: all of it is left alone. */
function torquesOf(procedure: Procedure, step: Step, use: LimitUse) {
  return judgedLimits(procedure, step, use).filter(
    ({ limit }) => limit.form !== 'then' && kindOfLimit(limit) === 'torque',
  );
}

/** The highest torque that a limit allows; where it has no upper end, the least that it requires. */
function highest(limit: Limit): Quantity | null {
  const { low, high, nominal } = window(limit);
  return high ?? nominal ?? low;
}

/** What a torque does to a bolt that it takes past its proof load; null if it does not. */
function overload(most: Quantity, bolt: SolidBolt, oiled: boolean) {
  const factor = nutFactor(oiled);
  const share = shareOfProofLoad(most, bolt, factor);
  const load = proofLoad(bolt.diameter, bolt.pitch, bolt.propertyClass);
  const preload = preloadByFactor(most, bolt.diameter, factor);
  if (share === null || load === null || preload === null || share <= 1) return null;
  const bearable = torqueByFactor(load, bolt.diameter, factor, most.unit);
  if (bearable === null) return null;
  // Dry, the same figure pulls less: it may have been written for dry threads.
  const forDry = oiled && shareOfProofLoad(most, bolt, nutFactor(false))! <= 1;
  return {
    words: (thread: string) =>
      say`${formatQuantity(most)} on ${oiled ? say`an oiled` : say`a dry`} ${thread} pulls with ${about(preload)} (nut factor ${factor}), which is ${Math.ceil(share * 100)} % of its proof load (${about(load)} for class ${bolt.propertyClass}).`,
    advice: say`Look up torque, thread and class again. The proof load is reached at ${about(bearable, 'down')}, which is not a torque to aim for.${forDry ? say` If the torque is meant for dry threads, do not oil them.` : ''}`,
  };
}

/** To three figures: the nut factor is known far less precisely than that. */
function about(quantity: Quantity, rounding: Rounding = 'nearest'): string {
  const places = 2 - Math.floor(Math.log10(decimalValue(quantity.number).valueOf()));
  return formatQuantity(roundTo(quantity, quantity.unit, places, rounding)!);
}
