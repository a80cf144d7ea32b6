import { variantParts } from '../../../analysis/assembly.ts';
import { place } from '../../../analysis/locations.ts';
import { partsWords, partWords } from '../../../analysis/prose.ts';
import type { Part } from '../../../model/family.ts';
import { type Said, say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** Missing at the end, or when a joint that closes over it is run down. */
export const partLeftOut: Rule = {
  code: 'part-left-out',
  severity: 'error',
  since: '0.1.0',
  unsafe: true,
  title: 'A part is missing when a joint closes over its place, or at the end.',
  flow: (flow, report) => {
    const { graph, relations } = flow;
    const { procedure } = graph;
    const mine = variantParts(flow);
    const out = place.off | place.gone | place.sub | place.guard;
    return {
      step: on(['run-down'], ({ step, before, path }) => {
        for (const object of step.objects) {
          const missing = [...relations.closure(object.name)].filter(
            (part) => mine(part) && before.may(before.part(part).place, out) && !relations.part(part).suppliedLoose,
          );
          if (missing.length === 0) continue;
          report({
            at: step,
            source: object.source,
            path,
            rootCause: `missing:${missing[0]}:${before.since(before.part(missing[0]!).place)}`,
            since: before.since(before.part(missing[0]!).place),
            message: say`The ${partsWords(procedure, missing)} ${missing.length > 1 ? say`are` : say`is`} not in place when the ${partWords(procedure, object.name)} closes over ${missing.length > 1 ? say`them` : say`it`}.`,
            why: say`the unit would be built without ${missing.length > 1 ? say`them` : say`it`}.`,
            help: say`Fit ${missing.length > 1 ? say`them` : say`it`} before this step.`,
          });
        }
      }),
      end({ state, path, last, block }) {
        const missing = procedure.family.parts.filter(
          (part) => !part.suppliedLoose && mine(part.name) && state.may(state.part(part.name).place, out | place.trial),
        );
        const since = (part: Part) => state.since(state.part(part.name).place);
        // Parts that came off at one step and are in the same state are one mistake.
        for (const [, parts] of groupBy(missing, (part) => `${since(part)} ${standsAs(part)}`)) {
          const [first] = parts as [Part, ...Part[]];
          const several = parts.length > 1;
          report({
            at: last ?? block.source,
            path,
            allow: parts.flatMap((part) => part.allow),
            rootCause: `missing:${first.name}:${since(first)}`,
            since: since(first),
            message: say`At the end the ${partsWords(
              procedure,
              parts.map(({ name }) => name),
            )} ${several ? say`are` : say`is`} ${standsAs(first)}.`,
            why: say`the unit would leave without ${several ? say`them` : say`it`}.`,
            help: say`${several ? say`Fit them, or write “supplied loose” at these parts` : say`Fit it, or write “supplied loose” at the part`} in the family.`,
          });
        }

        function standsAs({ name }: Part): Said {
          const cell = state.part(name).place;
          if (state.may(cell, place.trial)) return say`in place for trial only`;
          return state.may(cell, place.guard) ? say`on as a guard only` : say`not in place`;
        }
      },
    };
  },
};

function groupBy<T>(items: readonly T[], key: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(key(item), [...(groups.get(key(item)) ?? []), item]);
  return groups;
}
