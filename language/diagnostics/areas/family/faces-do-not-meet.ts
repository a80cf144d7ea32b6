import { lower } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import type { Family, Part } from '../../../model/family.ts';
import type { Rule } from '../../rule.ts';
import { carrierOf } from './rests-on-nothing.ts';

/** A lapped face that meets none, or that meets one of a part which does not touch its own. */
export const facesDoNotMeet: Rule = {
  code: 'faces-do-not-meet',
  severity: 'warning',
  since: '0.2.0',
  title: 'A lapped face meets no other, or meets one of a part that does not touch its own.',
  family(family, report) {
    for (const face of family.faces) {
      const part = partOf(family, face.part);
      if (face.meets === null) {
        // An outer face of the unit closes against what is not of this family.
        if (face.finish !== 'lapped' || (face.guardedBy === null && restsOn(part).length === 0)) continue;
        report({
          at: face.source,
          cause: `meets:${family.name}:${part.base}.${face.name}`,
          allow: part.allow,
          message: `The ${face.name} face of the ${lower(part.title)} is lapped and meets no other.`,
          why: 'nothing says when it is covered, so it counts as bare for ever.',
          help: 'Write “meets” and the face that it closes against.',
        });
        continue;
      }
      const other = partOf(family, family.faces.find((one) => one.id === face.meets)!.part);
      // Said once for the pair; a part that rests on nothing is told by its own rule.
      if (face.id > face.meets || touch(part, other) || hangs(part) || hangs(other)) continue;
      report({
        at: face.source,
        cause: `meets:${family.name}:${part.base}.${face.name}`,
        allow: [...part.allow, ...other.allow],
        message: `${face.id} meets ${face.meets}, but the ${lower(part.title)} and the ${lower(other.title)} do not touch by what their parts say.`,
        help: 'Write “on” at the one that lies on the other, or mend the name of the face.',
      });
    }

    function hangs(part: Part): boolean {
      return restsOn(part).length === 0 && part.base !== carrierOf(family)?.base;
    }
  },
};

function partOf(family: Family, name: string): Part {
  return family.parts.find((part) => part.name === name)!;
}

function touch(a: Part, b: Part): boolean {
  const touched = (part: Part) => [...restsOn(part), ...part.holds, ...part.bearsOn];
  return a.name === b.name || touched(a).includes(b.name) || touched(b).includes(a.name);
}
