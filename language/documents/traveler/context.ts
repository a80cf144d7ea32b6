import { type Called, cautionsByStep, type UsualCautions, usualCautions } from '../../analysis/cautions/index.ts';
import type { Procedure, Step } from '../../model/index.ts';
import { deriveFigures, type StepFigures } from '../figures/step-figures.ts';
import { buildPrintContext, type PrintContext, type SheetOptions } from '../print-context.ts';
import { type Arrangement, arrange } from './arrangement.ts';
import { Recorded } from './recorded.ts';

/** All that the blocks of a sheet are made from, worked out once. */
export interface SheetContext extends PrintContext {
  readonly figures: ReadonlyMap<Step, StepFigures>;
  readonly cautions: UsualCautions;
  /** What the safety page says that holds at a step. */
  readonly called: (step: Step) => readonly Called[];
  readonly arrangement: Arrangement;
  readonly recorded: Recorded;
}

export function buildSheetContext(procedure: Procedure, options: SheetOptions): SheetContext {
  const setting = buildPrintContext(procedure, options);
  const cautions = usualCautions(procedure);
  return {
    ...setting,
    figures: deriveFigures(setting, cautions),
    cautions,
    called: cautionsByStep(procedure),
    arrangement: arrange(setting),
    recorded: new Recorded(setting.units),
  };
}
