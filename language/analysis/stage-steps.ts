import type { Stage, Step } from '../model/procedure.ts';
import type { Program } from './control-flow-graph.ts';

/** One step of a stage, and its point. */
export interface StageStep {
  readonly step: Step;
  readonly stage: Stage;
  readonly at: number;
}

/** The first way through the stages: the steps of the part numbers that a program is for, in order, no repair. */
export function stageSteps({ procedure, points }: Program): StageStep[] {
  return points.flatMap((point, at) => {
    if (point.kind !== 'step') return [];
    const stage = procedure.stages.find((other) => other === point.block);
    return stage === undefined ? [] : [{ step: point.step, stage, at }];
  });
}
