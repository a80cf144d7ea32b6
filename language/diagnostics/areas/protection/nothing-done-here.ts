import { lower } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A stage at an abrasive station that abrades nothing: the unit goes into the dust for no reason. */
export const nothingDoneHere: Rule = {
  code: 'nothing-done-here',
  severity: 'error',
  since: '0.1.0',
  title: 'A stage at an abrasive station abrades nothing, or a stage has no step.',
  procedure(procedure, report) {
    for (const stage of procedure.stages) {
      const station = procedure.shop.stations.find((other) => other.name === stage.station);
      if (stage.steps.length === 0) {
        report({
          at: stage.source,
          message: say`Stage ${stage.name} has no step.`,
          why: say`the sheet would print an empty stage.`,
          help: say`Write what is done there, or delete the stage.`,
        });
        continue;
      }
      if (station?.abrasive !== true) continue;
      if (stage.steps.some((step) => step.verb === 'buff' || step.verb === 'blast' || step.verb === 'do')) continue;
      report({
        at: stage.source,
        message: say`Stage ${stage.name} is at the ${lower(station.title)}, but none of its steps buffs or blasts.`,
        why: say`the unit would go into the dust for nothing.`,
        help: say`Write what is buffed, or do the stage at another station.`,
      });
    }
  },
};
