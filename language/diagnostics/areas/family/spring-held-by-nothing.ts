import { listed, lower } from '../../../analysis/prose.ts';
import { Relations, restsOn } from '../../../analysis/relations.ts';
import type { Part } from '../../../model/family.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/**
 * A stack that loads a needle from above and has nothing over it: a spindle in the body, its spring on it, and no screw
 * or plug that holds the spring. A stack that is built the other way rests on the body.
 */
export const springHeldByNothing: Rule = {
  code: 'spring-held-by-nothing',
  severity: 'warning',
  since: '0.2.0',
  title: 'A spring presses on something from above, and nothing holds its other end.',
  family(family, report) {
    const relations = Relations.of(family);
    for (const part of family.parts) {
      if (part.bearsOn.length === 0 || !standsInBody(part)) continue;
      const [, ...above] = stackOn(part);
      if (above.length === 0 || [part, ...above].some(isHeld)) continue;
      const top = above.at(-1)!;
      report({
        at: top.source,
        rootCause: `spring-held:${family.name}:${top.base}`,
        allow: top.allow,
        message: say`Nothing holds the ${listed(above.map((other) => lower(other.title)))} on the ${lower(part.title)}.`,
        why: say`a spring there would jump out, and the sheet could have it removed before the part that holds it.`,
        help: say`Write “holds ${top.base}” at the screw, plug or nut over it.`,
      });
    }

    function standsInBody(part: Part): boolean {
      const under = restsOn(part).map((name) => relations.part(name));
      return under.length > 0 && under.every((other) => restsOn(other).length === 0);
    }

    function stackOn(bottom: Part): Part[] {
      const stack = [bottom];
      for (const part of stack)
        for (const other of relations.onIt(part.name)) if (!stack.includes(other)) stack.push(other);
      return stack;
    }

    function isHeld(part: Part): boolean {
      return (
        relations.holders(part.name).length > 0 ||
        relations.joint(part.name) !== undefined ||
        family.adjusters.some((adjuster) => adjuster.part === part.name)
      );
    }
  },
};
