import { allSteps } from '../../../analysis/locations.ts';
import { lower } from '../../../analysis/prose.ts';
import { Relations, restsOn } from '../../../analysis/relations.ts';
import type { Part } from '../../../model/family.ts';
import { namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/**
 * A part that no step names, in a procedure that takes off everything that lies on it or holds it. A partial job leaves
 * whole stacks alone: a part counts as missed only where two thirds of the unit come off. A part that touches only the
 * body may well stay there.
 */
export const partUnused: Rule = {
  code: 'part-unused',
  severity: 'warning',
  since: '0.2.0',
  title: 'A procedure takes the whole unit apart, but no step names one of its parts.',
  procedure(procedure, report) {
    const { family } = procedure;
    const relations = Relations.of(family);
    const bases = (verbs: readonly string[] | null) =>
      new Set(
        allSteps(procedure)
          .filter((step) => verbs === null || verbs.includes(step.verb))
          .flatMap((step) => namedIn(step))
          .flatMap(({ kind, name }) => (kind === 'part' ? relations.part(name).base : [])),
      );
    const named = bases(null);
    const taken = bases(['remove', 'discard', 'renew']);
    const comesOff = (part: Part) => restsOn(part).length > 0 && !part.suppliedLoose;
    const parts = family.parts.filter(comesOff);
    if (parts.filter((part) => taken.has(part.base)).length * 3 < parts.length * 2) return;
    for (const part of parts) {
      const mates = above(part);
      if (named.has(part.base) || mates.length === 0 || isInTheWay(part)) continue;
      if (!mates.every((other) => taken.has(other.base))) continue;
      report({
        at: procedure.source,
        rootCause: `unused:${part.base}`,
        allow: part.allow,
        related: [{ message: say`${part.base} is declared here.`, source: part.source }],
        message: say`The unit is taken apart, but no step names the ${lower(part.title)}.`,
        why: say`it is neither taken off nor washed nor fitted, and nobody will miss it.`,
        help: say`Name it where it comes off and where it goes back on, or delete it from the family.`,
      });
    }

    /** What lies on a part or holds it. */
    function above(part: Part): Part[] {
      return [...relations.onIt(part.name), ...relations.holders(part.name)];
    }

    /** Left on a part that is taken off: part-still-held reports it there. */
    function isInTheWay(part: Part): boolean {
      return [...restsOn(part), ...part.holds].some((name) => taken.has(relations.part(name).base));
    }
  },
};
