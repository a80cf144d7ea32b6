import { isHydraulic } from '../../../analysis/hydraulic.ts';
import { either, stationWords } from '../../../analysis/prose.ts';
import { type StageStep, stageSteps } from '../../../analysis/stages.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** The shop has a master for a station, and the readings there are not bracketed by readings of it. */
export const testerNotChecked: Rule = {
  code: 'tester-not-checked',
  severity: 'error',
  since: '0.2.0',
  title: 'Readings are judged, but the tester’s master is not read before and after them.',
  flow({ graph }, report) {
    const { procedure } = graph;
    for (const run of runs(stageSteps(graph))) {
      const { station } = run[0]!.stage;
      const masters = procedure.shop.masters.filter((master) => master.station === station).map(({ name }) => name);
      const judged = run.filter(({ step }) => ['test', 'set'].includes(step.verb) && isHydraulic(step, procedure));
      const [first, last] = [judged[0], judged.at(-1)];
      if (masters.length === 0 || first === undefined || last === undefined) continue;
      const read = run.filter(({ step }) => step.verb === 'read' && masters.includes(step.reading ?? ''));
      const before = read.some(({ at }) => at < first.at);
      const after = read.some(({ at }) => at > last.at);
      if (before && after) continue;
      const when = before
        ? say`after the last`
        : after
          ? say`before the first`
          : say`before the first and after the last`;
      report({
        at: before ? last.step : first.step,
        message: say`${either(masters)} is not read ${when} test at ${stationWords(procedure, station)}.`,
        why: say`a tester that has drifted passes bad units and fails good ones, and nobody can say since when.`,
        help: say`Write “read ${masters[0]!}” ${before ? say`after` : after ? say`before` : say`before and after`} the tests.`,
      });
    }
    return {};
  },
};

/** Consecutive steps at one station, across stages, with nothing done elsewhere in between. */
function runs(steps: readonly StageStep[]): StageStep[][] {
  const all: StageStep[][] = [];
  for (const step of steps) {
    const run = all.at(-1);
    if (run !== undefined && run[0]!.stage.station === step.stage.station) run.push(step);
    else all.push([step]);
  }
  return all;
}
