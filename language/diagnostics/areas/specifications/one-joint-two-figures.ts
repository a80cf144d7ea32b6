import { limitsOfUse } from '../../../analysis/limits.ts';
import { partWords } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Block, LimitUse, Procedure, StepOf } from '../../../model/procedure.ts';
import { formatLimit } from '../../../quantities/index.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

type Torque = StepOf<'torque'> & { readonly limit: LimitUse };

/** A joint is tightened to one figure in the build and to another in a repair. */
export const oneJointTwoFigures: Rule = {
  code: 'one-joint-two-figures',
  severity: 'error',
  since: '0.2.0',
  title: 'A joint is tightened to one figure at one place and to another elsewhere.',
  procedure(procedure, report) {
    const { family } = procedure;
    const first = new Map<string, Torque[]>();
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      for (const [joint, step] of lastTorques(block)) {
        const known = first.get(joint) ?? [];
        const other = known.find(
          (one) => sharesNumbers(one, step) && figures(procedure, one) !== figures(procedure, step),
        );
        first.set(joint, [...known, step]);
        if (other === undefined) continue;
        const base = family.parts.find(({ name }) => name === joint)?.base ?? joint;
        report({
          at: step,
          source: step.limit.source,
          rootCause: `two-figures:${base}:${writtenAt(step)}`,
          message: say`The ${partWords(procedure, joint)} is tightened to ${shown(procedure, step)} here, and to ${shown(procedure, other)} at ${other.number}.`,
          why: say`after one of the two the same joint is loose, or overstretched.`,
          help: say`Write one spec at both. Where the joint is pulled up in steps, write them in one stage.`,
          related: [{ message: say`The other figure is here.`, source: other.limit.source }],
        });
      }
    }
  },
};

/** The torque that counts: of each joint the last one in its block, for the same part numbers. */
function lastTorques(block: Block): (readonly [string, Torque])[] {
  const last = new Map<string, readonly [string, Torque]>();
  for (const step of block.steps)
    if (step.verb === 'torque' && step.limit !== null && step.stretch === null)
      for (const { name } of step.objects) last.set(`${name} ${step.only?.join() ?? ''}`, [name, step as Torque]);
  return [...last.values()];
}

function sharesNumbers(a: Torque, b: Torque): boolean {
  return a.only === null || b.only === null || a.only.some((number) => b.only!.includes(number));
}

/** All figures that it may have, for each part number: equal texts are one figure. */
function figures(procedure: Procedure, { limit }: Torque): string {
  return limitsOfUse(procedure, limit)
    .map((one) => formatLimit(one.limit))
    .join('; ');
}

function shown(procedure: Procedure, { limit }: Torque): string {
  return limit.form === 'spec' ? limit.spec : formatLimit(limitsOfUse(procedure, limit)[0]!.limit);
}
