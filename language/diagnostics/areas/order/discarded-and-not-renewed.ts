import { variantParts } from '../../../analysis/assembly.ts';
import { place } from '../../../analysis/locations.ts';
import { partsWords } from '../../../analysis/prose.ts';
import type { AbstractState } from '../../../analysis/state.ts';
import type { Statement } from '../../../model/diagnostic.ts';
import type { Part } from '../../../model/family.ts';
import { closesUp, namedIn } from '../../../model/steps.ts';
import { type Said, say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** A part that is not in the kit was discarded, and the unit is built up over its place, or leaves, without a new one. */
export const discardedAndNotRenewed: Rule = {
  code: 'discarded-and-not-renewed',
  severity: 'error',
  since: '0.2.0',
  title: 'A part is discarded, and the unit is closed or leaves without a new one.',
  flow: (flow, report) => {
    const { graph, relations } = flow;
    const { procedure } = graph;
    const mine = variantParts(flow);
    const isLost = (part: Part, state: AbstractState) =>
      !part.renewed && !part.suppliedLoose && mine(part.name) && state.may(state.part(part.name).place, place.gone);
    const of = (parts: readonly Part[], state: AbstractState) => {
      const since = state.since(state.part(parts[0]!.name).place);
      const words = partsWords(
        procedure,
        parts.map((part) => part.name),
      );
      const [were, them] = parts.length > 1 ? [say`were`, say`them`] : [say`was`, say`it`];
      const names = [...new Set(parts.map((part) => part.base))].join(', ');
      return {
        since,
        // The same cause as a part that is left out; this report says more.
        rootCause: `missing:${parts[0]!.name}:${since}`,
        said: (when: Said): Statement => ({
          message: say`The ${words} ${were} discarded, and there is no new one ${when}.`,
          why: say`${parts.length > 1 ? say`they do` : say`it does`} not come in the kit, and the unit would be built without ${them}.`,
          help: say`Write “renew ${names}” and fit ${them} first. If the old ${parts.length > 1 ? say`ones are` : say`one is`} good, write remove instead of discard.`,
        }),
      };
    };
    return {
      step: on(['fit', 'run-down', 'torque', 'lock'], ({ step, before, path }) => {
        const closes = step.verb !== 'fit';
        if (!closes && !closesUp(step)) return;
        const together = namedIn(step).map((object) => object.name);
        for (const object of namedIn(step)) {
          const part = relations.part(object.name);
          if (before.mustBeIn(object.name) && !closes) continue;
          const needed = [
            ...new Set([...part.on, ...part.through, ...part.holds, ...(closes ? relations.closure(object.name) : [])]),
          ];
          const lost = needed
            .filter((name) => !together.includes(name))
            .map((name) => relations.part(name))
            .filter((other) => isLost(other, before));
          if (lost.length === 0) continue;
          const { said, ...rest } = of(lost, before);
          report({
            at: step,
            source: object.source,
            path,
            ...rest,
            ...said(
              say`when the ${partsWords(procedure, [object.name])} goes over ${lost.length > 1 ? say`them` : say`it`}`,
            ),
          });
        }
      }),
      end({ state, path, last, block }) {
        for (const part of procedure.family.parts) {
          if (!isLost(part, state)) continue;
          const { said, ...rest } = of([part], state);
          report({ at: last ?? block.source, path, allow: part.allow, ...rest, ...said(say`at the end`) });
        }
      },
    };
  },
};
