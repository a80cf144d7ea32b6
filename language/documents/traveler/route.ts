import { capital, titleOf } from '../../model/titles.ts';
import type { RouteBlock } from '../model.ts';
import { stationTitle } from '../names.ts';
import { type PrintContext, shownSteps } from '../print-context.ts';

/** Where the unit goes, stage by stage. Null: there is one stage at most. */
export function buildRoute(setting: PrintContext): RouteBlock | null {
  const { procedure, words } = setting;
  const stops: { station: string; stages: { number: string; title: string }[] }[] = [];
  for (const [index, stage] of procedure.stages.entries()) {
    if (shownSteps(setting, stage).length === 0 && stage.steps.length > 0) continue;
    const station = stage.station === null ? '' : stationTitle(procedure, stage.station);
    const here = { number: String(index + 1), title: capital(titleOf(stage)) };
    const last = stops.at(-1);
    if (last !== undefined && last.station === station) last.stages.push(here);
    else stops.push({ station, stages: [here] });
  }
  return procedure.stages.length < 2 ? null : { kind: 'route', title: words.route, stops };
}
