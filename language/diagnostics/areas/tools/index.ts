import type { AnyRule } from '../../rule.ts';
import { adapterNotAccounted } from './adapter-not-accounted.ts';
import { angleNotMeasured } from './angle-not-measured.ts';
import { beyondTheTool } from './beyond-the-tool.ts';
import { calibrationOutOfTime } from './calibration-out-of-time.ts';
import { graduationTooCoarse } from './graduation-too-coarse.ts';
import { guardLeavesNothing } from './guard-leaves-nothing.ts';
import { holdWithinGaugeError } from './hold-within-gauge-error.ts';
import { noTool } from './no-tool.ts';
import { passBelowTheWrench } from './pass-below-the-wrench.ts';
import { pastProofLoad } from './past-proof-load.ts';
import { rateImplausible } from './rate-implausible.ts';
import { shimCoilBind } from './shim-coil-bind.ts';
import { shimNotMeasured } from './shim-not-measured.ts';
import { shimOutOfReach } from './shim-out-of-reach.ts';
import { shimStepTooCoarse } from './shim-step-too-coarse.ts';
import { toolCannotDoIt } from './tool-cannot-do-it.ts';
import { toolNotNamed } from './tool-not-named.ts';
import { toolOutOfRange } from './tool-out-of-range.ts';
import { toolTooCoarse } from './tool-too-coarse.ts';
import { toolWiderThanWindow } from './tool-wider-than-window.ts';
import { torqueWrenchBreaksLoose } from './torque-wrench-breaks-loose.ts';

/**
 * In order of precedence: if two rules report the same cause, the earlier one wins. A tool that is too coarse for a
 * limit is one cause, whether because of its error or of its marks.
 */
export const tools: readonly AnyRule[] = [
  noTool,
  toolCannotDoIt,
  beyondTheTool,
  adapterNotAccounted,
  torqueWrenchBreaksLoose,
  toolOutOfRange,
  toolWiderThanWindow,
  guardLeavesNothing,
  toolTooCoarse,
  graduationTooCoarse,
  pastProofLoad,
  shimNotMeasured,
  shimCoilBind,
  shimOutOfReach,
  shimStepTooCoarse,
  rateImplausible,
  toolNotNamed,
  holdWithinGaugeError,
  passBelowTheWrench,
  angleNotMeasured,
  calibrationOutOfTime,
];
