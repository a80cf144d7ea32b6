import { partWords, stationWords } from '../../../analysis/prose.ts';
import { closesUp, namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** Parts are fitted or run down for good at a dirty station. Guards and trial fits are temporary. */
export const builtAtDirtyStation: Rule = {
  code: 'built-at-dirty-station',
  severity: 'error',
  since: '0.2.0',
  title: 'Parts are fitted for good at a dirty station.',
  flow: ({ graph, layout }, report) => {
    const { procedure } = graph;
    return {
      step: on(['fit', 'run-down'], ({ step, block, before, path }) => {
        if (!closesUp(step)) return;
        const [station] = layout.wordsOf(layout.unit.station, before.get(layout.unit.station));
        const at = procedure.shop.stations.find((one) => one.name === station);
        // A nut that never came off traps no dirt.
        const object = namedIn(step).find(({ name }) => !before.mustBeIn(name));
        if (at === undefined || !at.dirty || object === undefined) return;
        report({
          at: step,
          source: object.source,
          path,
          rootCause: `built-dirty:${block.name}`,
          message: say`The ${partWords(procedure, object.name)} is fitted at ${stationWords(procedure, at.name)}, which is dirty.`,
          why: say`the dirt on the bench is built in with it.`,
          help: say`Build at a clean station. For a guard write “guard”; for a trial fit add “for trial”.`,
        });
      }),
    };
  },
};
