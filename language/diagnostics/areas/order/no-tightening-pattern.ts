import { lower } from '../../../analysis/prose.ts';
import { manyFasteners, restsOn } from '../../../analysis/relations.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Part } from '../../../model/family.ts';
import type { Procedure, Step } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import { say } from '../../../say/say.ts';
import { behind } from '../../edits.ts';
import type { Rule } from '../../rule.ts';

/** Four or more fasteners on one face are torqued in one step, and no order is given. */
export const noTighteningPattern: Rule<{ source: Source }> = {
  code: 'no-tightening-pattern',
  severity: 'warning',
  since: '0.2.0',
  title: 'Four or more fasteners on one face are torqued, and no order is given.',
  procedure(procedure, report) {
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      for (const step of block.steps) {
        if (step.verb !== 'torque' || step.pattern || step.wordsAfter.includes('in')) continue;
        for (const [pressed, count] of fastenersByPart(procedure, step)) {
          if (count < manyFasteners) continue;
          const { title } = procedure.family.parts.find((part) => part.name === pressed)!;
          report({
            at: step,
            rootCause: `pattern:${writtenAt(step)}:${pressed}`,
            message: say`${count} fasteners hold the ${lower(title)} down, but nothing says in which order they are torqued.`,
            why: say`tightened on one side first, it tilts, warps and leaks on the other side.`,
            help: say`Write “in cross pattern”, or the order in words: in "…".`,
            data: step.call === null ? { source: step.objects.at(-1)!.source } : undefined,
          });
        }
      }
    }
  },
  fix({ source }) {
    return { title: say`Torque in cross pattern`, safe: false, edits: [behind(source, ' in cross pattern')] };
  },
};

/** How many of the fasteners of a step hold each part down. A valve holder holds down a valve of its own. */
function fastenersByPart(procedure: Procedure, step: Step): Map<string, number> {
  const { family } = procedure;
  const counts = new Map<string, number>();
  for (const object of step.objects) {
    const joint = family.joints.find((one) => one.part === object.name);
    const part = family.parts.find((other) => other.name === object.name);
    if (joint === undefined || part === undefined) continue;
    for (const pressed of pressedBy(part, joint.to)) counts.set(pressed, (counts.get(pressed) ?? 0) + part.quantity);
  }
  return counts;
}

/** What a fastener holds down: what it holds, or else what it goes on or through besides the part it is joined to. */
function pressedBy(part: Part, to: string): readonly string[] {
  return part.holds.length > 0 ? part.holds : restsOn(part).filter((under) => under !== to);
}
