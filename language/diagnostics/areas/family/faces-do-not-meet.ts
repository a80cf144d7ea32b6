import { lower } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import type { Family, Part } from '../../../model/family.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { declared, fixStep, type StepFix } from '../../step-fixes.ts';
import { carrierOf } from './rests-on-nothing.ts';

/** A lapped face that meets no other, or one of a part that does not touch its own. */
export const facesDoNotMeet: Rule<StepFix> = {
  code: 'faces-do-not-meet',
  severity: 'warning',
  since: '0.2.0',
  title: 'A lapped face meets no other face, or a face of a part that does not touch its own.',
  family(family, report) {
    for (const face of family.faces) {
      const part = partOf(family, face.part);
      if (face.meets === null) {
        // An outer face of the unit closes against something outside this family.
        if (face.finish !== 'lapped' || (face.guardedBy === null && restsOn(part).length === 0)) continue;
        report({
          at: face.source,
          rootCause: `meets:${family.name}:${part.base}.${face.name}`,
          allow: part.allow,
          message: say`The ${face.name} face of the ${lower(part.title)} is lapped but meets no other face.`,
          why: say`nothing says when it is covered, so it always counts as bare.`,
          help: say`Write “meets” and the face that it closes against.`,
          data: declared(face.source, `meets ${blank}`),
        });
        continue;
      }
      const other = partOf(family, family.faces.find((one) => one.id === face.meets)!.part);
      // Reported once for the pair; a part that rests on nothing is reported by its own rule.
      if (face.id > face.meets || touch(part, other) || hangs(part) || hangs(other)) continue;
      report({
        at: face.source,
        rootCause: `meets:${family.name}:${part.base}.${face.name}`,
        allow: [...part.allow, ...other.allow],
        message: say`${face.id} meets ${face.meets}, but neither the ${lower(part.title)} nor the ${lower(other.title)} is declared to touch the other.`,
        why: say`a face cannot be covered by a part that does not touch it, so it could stay bare unnoticed.`,
        help: say`Write “on” at the part that lies on the other, or correct the name of the face.`,
      });
    }

    function hangs(part: Part): boolean {
      return restsOn(part).length === 0 && part.base !== carrierOf(family)?.base;
    }
  },
  fix: fixStep,
};

function partOf(family: Family, name: string): Part {
  return family.parts.find((part) => part.name === name)!;
}

function touch(a: Part, b: Part): boolean {
  const touched = (part: Part) => [...restsOn(part), ...part.holds, ...part.bearsOn];
  return a.name === b.name || touched(a).includes(b.name) || touched(b).includes(a.name);
}
