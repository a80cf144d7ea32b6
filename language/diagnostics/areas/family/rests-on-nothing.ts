import { lower } from '../../../analysis/prose.ts';
import { Relations, restsOn } from '../../../analysis/relations.ts';
import type { Family, Part } from '../../../model/family.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { declared, fixStep, type StepFix } from '../../step-fixes.ts';

/** More than one part rests on nothing. Only one should: the body, which carries the others. */
export const restsOnNothing: Rule<StepFix> = {
  code: 'rests-on-nothing',
  severity: 'error',
  since: '0.2.0',
  ofAbsence: true,
  title: 'More than one part of a family rests on nothing.',
  family(family, report) {
    const body = carrierOf(family);
    for (const part of loose(family)) {
      if (part.base === body?.base || part.suppliedLoose) continue;
      report({
        at: part.source,
        rootCause: `rests:${family.name}:${part.base}`,
        allow: part.allow,
        message: say`Nothing says what the ${lower(part.title)} rests on.`,
        why: say`a step that takes it off or fits it out of order goes unnoticed.`,
        data: declared(part.source, `on ${blank}`),
        help: say`Write “on”, “in” or “through” and the part that it rests on, such as “on ${body!.base}”.`,
      });
    }
  },
  fix: fixStep,
};

/** The part that carries the most others; if two carry the same number, the one declared first. */
export function carrierOf(family: Family): Part | null {
  const relations = Relations.of(family);
  const standing = (name: string, seen: Set<string>): Set<string> => {
    for (const other of relations.onIt(name)) if (!seen.has(other.name)) standing(other.name, seen.add(other.name));
    return seen;
  };
  const counted = loose(family).map((part) => ({ part, count: standing(part.name, new Set()).size }));
  return counted.sort((a, b) => b.count - a.count)[0]?.part ?? null;
}

function loose(family: Family): Part[] {
  return family.parts.filter((part) => restsOn(part).length === 0);
}
