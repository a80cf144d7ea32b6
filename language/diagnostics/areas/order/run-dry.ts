import { variantParts } from '../../../analysis/assembly.ts';
import type { PathContext } from '../../../analysis/flow-analysis.ts';
import { noFilm } from '../../../analysis/locations.ts';
import { partWords } from '../../../analysis/prose.ts';
import type { AbstractState } from '../../../analysis/state.ts';
import type { Step } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** A part that slides or turns is built in with no film of oil, and the unit is tested or leaves like that. */
export const runDry: Rule = {
  code: 'run-dry',
  severity: 'warning',
  since: '0.2.0',
  title: 'A part that slides or turns is built in with no oil on it.',
  flow: (flow, report) => {
    const { graph, relations } = flow;
    const { procedure } = graph;
    const mine = variantParts(flow);
    const look = (state: AbstractState, path: PathContext, here: Step | Source) => {
      for (const { name, moves, film, base, allow } of procedure.family.parts) {
        if (moves === null || film !== null || !mine(name) || !state.mayBeIn(name)) continue;
        const cells = state.part(name);
        const since = state.since(cells.place);
        // What was not taken out runs in the oil that it has run in.
        if (since < 0 || !state.may(cells.wet, noFilm)) continue;
        // What it runs in brings the oil: a part that is oiled, or a new bearing out of its box.
        const runsIn = [...relations.part(name).in, ...relations.part(name).through].map((one) => relations.part(one));
        if (runsIn.some((one) => one.renewed || !state.may(state.part(one.name).wet, noFilm))) continue;
        // A lapped pair that goes together dry is an error of its own.
        if (relations.matches(name).length > 0) continue;
        const fitted = graph.nodes[since];
        report({
          at: fitted?.kind === 'step' ? fitted.step : here,
          path,
          allow,
          since: state.since(cells.wet),
          rootCause: `run-dry:${base}`,
          message: say`The ${partWords(procedure, name)} is built in dry, and nothing puts oil on it before it moves.`,
          why: say`the first turns run metal on metal, before any oil gets there.`,
          help: say`Write “oil ${base} with” and the oil before this step, or “fitted dry” in the family if it runs dry.`,
        });
      }
    };
    return {
      looksAround: true,
      step: on(['test'], ({ step, before, path }) => look(before, path, step)),
      end: ({ state, path, last, block }) => look(state, path, last ?? block.source),
    };
  },
};
