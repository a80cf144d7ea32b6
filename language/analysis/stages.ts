import type { Procedure, Repair, Stage, Step, StepFacts } from '../model/procedure.ts';
import { failEntries } from '../model/steps.ts';
import { oncePer } from '../quantities/memo.ts';
import type { ControlFlowGraph } from './control-flow-graph.ts';

/** One step of a stage, and its point. */
export interface StageStep {
  readonly step: Step;
  readonly stage: Stage;
  readonly at: number;
}

/** The first way through the stages: the steps of the part numbers that a program is for, in order, no repair. */
export const stageSteps = oncePer(({ nodes }: ControlFlowGraph): readonly StageStep[] =>
  nodes.flatMap((node, at) =>
    node.kind === 'step' && !('tries' in node.block) ? [{ step: node.step, stage: node.block, at }] : [],
  ),
);

/** What a step may be judged by without a look at other steps. */
export interface StepSetting extends StepFacts {
  /** As its block says. */
  readonly station: string | null;
  /** Where it may be done. */
  readonly stations: ReadonlySet<string | null>;
}

/**
 * Where each stage and repair may be done. A stage that names no station is done where the one before it was; a repair
 * that names none is done wherever the unit comes from.
 */
const stationsOf = oncePer((procedure: Procedure): ReadonlyMap<Stage | Repair, ReadonlySet<string | null>> => {
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
});

/** The steps of a block, with what they may be judged by. */
export interface BlockSetting extends StepSetting {
  readonly steps: readonly Step[];
}

/** Blocks in order, stages first. */
export const settingsIn = oncePer((procedure: Procedure): readonly BlockSetting[] => {
  const { family, shop, specs, numbers } = procedure;
  return [...stationsOf(procedure)].map(([{ station, steps }, stations]) => ({
    ...{ family, shop, specs, numbers },
    ...{ station, stations, steps },
  }));
});
