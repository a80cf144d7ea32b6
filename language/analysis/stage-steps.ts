import type { Stage, Step } from '../model/procedure.ts';
import type { Program } from './control-flow-graph.ts';

/** One step of a stage, and its point in the control-flow graph. */
export interface StageStep {
  readonly step: Step;
  readonly stage: Stage;
  readonly at: number;
}

/** The first path through the stages: the steps for the part numbers of a program, in order, without repairs. */
export function stageSteps({ procedure, points }: Program): StageStep[] {
  return points.flatMap((point, at) => {
    if (point.kind !== 'step') return [];
    const stage = procedure.stages.find((other) => other === point.block);
    return stage === undefined ? [] : [{ step: point.step, stage, at }];
  });
}
