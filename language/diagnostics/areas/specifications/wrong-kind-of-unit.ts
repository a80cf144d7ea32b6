import { limitsOfUse, specLimits, stepLimits } from '../../../analysis/limits.ts';
import { allSteps } from '../../../analysis/locations.ts';
import { capital, either } from '../../../analysis/prose.ts';
import { limitOfReading } from '../../../analysis/readings.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Procedure } from '../../../model/procedure.ts';
import { limitUses, own } from '../../../model/steps.ts';
import type { Verb } from '../../../model/verbs.ts';
import { formatQuantity, kindAdmits, kindOfLimit, kindOfUnit, quantitiesOf } from '../../../quantities/index.ts';
import type { Figure, Kind } from '../../../quantities/types.ts';
import { type Filling, say, term } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** The unit that the amount after a verb is counted in. */
const countKinds: Partial<Record<Verb, readonly Kind[]>> = {
  prime: ['strokes', 'turns', 'time'],
  wash: ['time'],
  soak: ['time'],
  rinse: ['time'],
  wait: ['time'],
};

/** A unit of the wrong kind for its quantity: a torque in bar. */
export const wrongKindOfUnit: Rule = {
  code: 'wrong-kind-of-unit',
  severity: 'error',
  since: '0.1.0',
  title: 'A number has a unit of the wrong kind.',
  shop(shop, report) {
    for (const asset of shop.assets) {
      if (asset.kind === 'wrench' && asset.range !== null && kindOfUnit(asset.range.high.unit) !== 'torque') {
        report({
          at: asset.source,
          message: say`Wrench ${asset.name} has a range in ${asset.range.high.unit}.`,
          why: say`a torque wrench sets a torque.`,
          help: say`Write it in N·m or lbf·ft.`,
        });
      }
      const kinds = asset.range === null ? [] : [kindOfUnit(asset.range.high.unit)];
      for (const other of [asset.within, asset.graduated]) {
        if (other === null || other.unit === '%' || kinds.length === 0 || kinds.includes(kindOfUnit(other.unit)))
          continue;
        report({
          at: asset.source,
          message: say`${asset.name} ranges in ${asset.range!.high.unit}, but ${formatQuantity(other)} is a ${term(kindOfUnit(other.unit))}.`,
          why: say`nobody can work out what the tool can show, or how accurately.`,
          help: say`Write both in units of one kind.`,
        });
      }
    }
  },
  procedure(procedure, report) {
    for (const { limit, words, source, step, spec, kinds } of [...specLimits(procedure), ...stepLimits(procedure)]) {
      const quantities = [
        ...quantitiesOf(limit),
        ...(limit.form === 'then' ? [] : 'pair' in limit && limit.pair !== undefined ? quantitiesOf(limit.pair) : []),
      ];
      if (spec !== null && spec.per !== null) {
        const wrong = wrongRate(procedure, spec.name, kindOfUnit(quantities[0]!.unit), kindOfUnit(spec.per.unit));
        if (wrong !== null) {
          report({
            at: source,
            allow: spec.allow,
            message: say`Spec ${spec.name} is a rate of ${formatQuantity(quantities[0]!)} per ${formatQuantity(spec.per)}${wrong}.`,
            why: say`no shim and no turn can be worked out from it.`,
            help: say`Correct the unit: a rate is what is read, per length of shim or per turn, such as 3 bar per 0.001 in.`,
          });
        }
        continue;
      }
      const wrong = quantities.find((quantity) =>
        kinds === null ? !sameKind(quantity, quantities[0]!) : !kinds.some((kind) => kindAdmits(kind, quantity.unit)),
      );
      if (wrong === undefined) {
        if (limit.form === 'then' && kindOfUnit(limit.angle.nominal.unit) !== 'angle') {
          report({
            at: step ?? source,
            source,
            allow: spec?.allow,
            message: say`“then” has to be followed by an angle, not by ${formatQuantity(limit.angle.nominal)}.`,
            why: say`after the torque the joint is turned further by an angle.`,
            help: say`Write it in °.`,
          });
        }
        continue;
      }
      const wanted = kinds ?? [kindOfUnit(quantities[0]!.unit)];
      report({
        at: step ?? source,
        source,
        allow: spec?.allow,
        message: say`${capital(words)} says ${formatQuantity(wrong)}, which is a ${term(kindOfUnit(wrong.unit))}, not a ${either(wanted.map(term))}.`,
        why: say`no tool for the work can set or show it.`,
        help: say`Correct the unit.`,
      });
    }
    for (const step of allSteps(procedure)) {
      const wants = countKinds[step.verb];
      const count = own(step, 'count');
      const counted = count == null ? [] : quantitiesOf(count);
      const [first] = counted.filter(({ unit }) => !wants?.some((kind) => kindAdmits(kind, unit)));
      if (wants === undefined || first === undefined) continue;
      report({
        at: step,
        rootCause: `count:${writtenAt(step)}`,
        message: say`${capital(step.verb)} says ${formatQuantity(first)}, which is a ${term(kindOfUnit(first.unit))}.`,
        why: say`the bench hand needs ${step.verb === 'prime' ? say`strokes or a time` : say`a time`}.`,
        help: say`Correct the unit.`,
      });
    }
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      for (const step of block.steps) {
        for (const use of limitUses(step)) {
          if (use.form !== 'spec') continue;
          const wanted: Kind | null =
            step.verb === 'torque' || step.verb === 'lock' ? 'torque' : (own(step, 'test')?.reads ?? null);
          if (wanted === null) continue;
          for (const { limit, spec } of limitsOfUse(procedure, use)) {
            const [first] = quantitiesOf(limit);
            if (kindAdmits(wanted, first!.unit) || (spec!.kind !== null && !kindAdmits(spec!.kind, first!.unit)))
              continue;
            report({
              at: step,
              source: use.source,
              rootCause: `kind:${step.number}`,
              message: say`This step needs a ${term(wanted)}, but spec ${spec!.name} is ${formatQuantity(first!)}, which is a ${term(kindOfUnit(first!.unit))}.`,
              why: say`no tool for the work can set or show it.`,
              help: say`Name the spec that is meant, or correct its unit.`,
            });
          }
        }
      }
    }
  },
};

/** Why a rate is of no use, as the end of a sentence: it is per nothing that is fitted or turned, or of what is not read. */
function wrongRate(procedure: Procedure, name: string, kind: Kind, per: Kind): Filling | null {
  if (per !== 'length' && per !== 'turns' && per !== 'angle') return '';
  for (const step of allSteps(procedure)) {
    if (step.verb !== 'choose' || step.rate !== name || step.choose === null) continue;
    const use = limitOfReading(procedure, step.choose.test);
    const read = use === null ? [] : limitsOfUse(procedure, use).map(({ limit }) => kindOfLimit(limit));
    if (read.length > 0 && !read.includes(kind)) return say`, and ${step.choose.test} is a ${term(read[0]!)}`;
  }
  return null;
}

function sameKind(a: Figure, b: Figure): boolean {
  return kindOfUnit(a.unit) === kindOfUnit(b.unit);
}
