import { partWords } from '../../../analysis/prose.ts';
import type { Family } from '../../../model/family.ts';
import type { LimitUse, Step } from '../../../model/procedure.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A joint is tightened, or a part measured, to a spec whose title names another part of the family. */
export const figureOfAnotherPart: Rule = {
  code: 'figure-of-another-part',
  severity: 'warning',
  since: '0.2.0',
  title: 'A step uses a spec whose title names another part.',
  eachStep(step, { family, specs }, report) {
    const use = usedBy(step);
    const spec = use?.form === 'spec' ? specs.find(({ name }) => name === use.spec) : undefined;
    if (use === null || spec === undefined || spec.title === spec.name) return;
    const named = longestNamed(family, spec.title);
    const own = step.objects.filter(({ kind }) => kind === 'part').map(({ name }) => name);
    if (named.length === 0 || own.length === 0 || own.some((name) => isOf(family, name, named))) return;
    report({
      at: step,
      source: use.source,
      message: say`The ${partWords({ family }, own[0]!)} is held to ${spec.name}, “${spec.title}”, which names the ${partWords({ family }, named[0]!)}.`,
      why: say`a figure that was copied from another line is worked to as if it were right.`,
      help: say`Write the spec of this part, or a title that covers both.`,
    });
  },
};

function usedBy(step: Step): LimitUse | null {
  return step.verb === 'torque' || step.verb === 'lock' || step.verb === 'measure' ? step.limit : null;
}

/** The parts that a title names, by the longest titles in it: of a nozzle nut the nut, not the nozzle. */
function longestNamed({ parts }: Family, title: string): readonly string[] {
  const text = words(title);
  const found = parts.filter(({ baseTitle }) => ` ${text} `.includes(` ${words(baseTitle)} `));
  const longest = Math.max(0, ...found.map(({ baseTitle }) => baseTitle.length));
  return found.filter(({ baseTitle }) => baseTitle.length === longest).map(({ name }) => name);
}

/** It is one of them, or what is measured on it concerns one of them: a pair, what it locks, what it is on or in. */
function isOf({ parts, joints, adjusters }: Family, name: string, named: readonly string[]): boolean {
  const part = parts.find((one) => one.name === name);
  if (part === undefined) return true;
  const near = [
    name,
    ...[part.on, part.in, part.through, part.holds, part.bearsOn, part.matchedTo, part.balancedWith].flat(),
    ...parts.filter((one) => [one.on, one.in, one.through].flat().includes(name)).map((one) => one.name),
    ...joints.filter((one) => one.part === name).map(({ to }) => to),
    ...adjusters
      .filter((one) => one.lockedBy === name || one.part === name)
      .flatMap((one) => [one.part, one.lockedBy ?? one.part]),
  ];
  return named.some((one) => near.includes(one));
}

function words(text: string): string {
  return (text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).join(' ');
}
