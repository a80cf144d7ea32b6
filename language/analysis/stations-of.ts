import type { Procedure, Repair, Stage } from '../model/procedure.ts';
import { failEntries } from '../model/steps.ts';

/**
 * Where each stage and repair may be done. A stage that names no station stays where the one before it was; a repair
 * that names none is done wherever a unit is sent to it from.
 */
export function stationsOf(procedure: Procedure): ReadonlyMap<Stage | Repair, ReadonlySet<string | null>> {
  const stations = new Map<Stage | Repair, Set<string | null>>();
  let last: string | null = null;
  for (const stage of procedure.stages) {
    last = stage.station ?? last;
    stations.set(stage, new Set([last]));
  }
  const repairs = new Map(procedure.repairs.map((repair) => [repair.name, repair]));
  for (const repair of procedure.repairs)
    stations.set(repair, new Set(repair.station === null ? [] : [repair.station]));
  const sendFrom = (block: Stage | Repair) => {
    for (const entry of block.steps.flatMap((step) => failEntries(step))) {
      const repair = repairs.get(entry.repair);
      if (repair === undefined || repair.station !== null) continue;
      const there = stations.get(repair)!;
      const known = there.size;
      for (const station of stations.get(block)!) there.add(station);
      // A repair may send on to another.
      if (there.size > known) sendFrom(repair);
    }
  };
  for (const block of [...stations.keys()]) sendFrom(block);
  return stations;
}
