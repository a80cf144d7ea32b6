import { place } from '../../../analysis/locations.ts';
import { partsWords, stationWords } from '../../../analysis/prose.ts';
import type { StepObject } from '../../../model/procedure.ts';
import { namedIn, own } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/**
 * A part was sent or kept somewhere, no step names it there or brings it back, and it is fitted at another station. A
 * tray kept where the unit never goes is a store: a part is fetched from there when it is needed.
 */
export const partLeftBehind: Rule<StepFix> = {
  code: 'part-left-behind',
  severity: 'warning',
  since: '0.2.0',
  title: 'A part is fitted at one station while it is at another, and no step brings it over.',
  flow: ({ graph, layout, relations }, report) => {
    const { procedure, nodes } = graph;
    /** Whether the step that put a part where it is left it where the unit passes. */
    const wasLeft = (since: number) => {
      const point = nodes[since];
      if (point?.kind !== 'step') return false;
      const station = own(point.step, 'station') ?? null;
      return point.step.verb === 'send' || procedure.stages.some((stage) => stage.station === station);
    };
    return {
      looksAround: true,
      step: on(['fit', 'run-down'], ({ step, before, path }) => {
        const [here] = layout.wordsOf(layout.unit.station, before.get(layout.unit.station) & ~1);
        if (here === undefined) return;
        /** Parts that are elsewhere, by the step that put them there: one cause, one finding. */
        const bySince = new Map<number, { objects: StepObject[]; there: string }>();
        for (const object of namedIn(step)) {
          const cells = before.part(object.name);
          const [there] = layout.wordsOf(cells.where, before.get(cells.where) & ~(layout.stationBit(here) | 1));
          const since = before.since(cells.where);
          if (there === undefined || !before.may(cells.place, place.off | place.sub) || !wasLeft(since)) continue;
          const known = bySince.get(since);
          if (known === undefined) bySince.set(since, { objects: [object], there });
          else known.objects.push(object);
        }
        for (const [since, { objects, there }] of bySince) {
          const names = objects.map((object) => object.name);
          const [are, they, them] =
            names.length > 1 ? [say`are`, say`they are`, say`them`] : [say`is`, say`it is`, say`it`];
          const bases = [...new Set(names.map((name) => relations.part(name).base))].join(', ');
          report({
            at: step,
            source: objects[0]!.source,
            path,
            since,
            rootCause: `behind:${since}`,
            message: say`The ${partsWords(procedure, names)} ${are} at ${stationWords(procedure, there)} when ${they} fitted at ${stationWords(procedure, here)}, and no step brings ${them} over.`,
            why: say`the bench hand reaches into an empty tray.`,
            help: say`Write “send ${bases} to ${here}” after the work on ${them} is done.`,
            data: missingBefore(step, `send ${bases} to ${here}`),
          });
        }
      }),
    };
  },
  fix: fixStep,
};
