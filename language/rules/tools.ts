import type { AnyRule } from './rule.ts';
import { adapterNotAccounted } from './tools/adapter-not-accounted.ts';
import { beyondTheTool } from './tools/beyond-the-tool.ts';
import { graduationTooCoarse } from './tools/graduation-too-coarse.ts';
import { guardLeavesNothing } from './tools/guard-leaves-nothing.ts';
import { noTool } from './tools/no-tool.ts';
import { pastProofLoad } from './tools/past-proof-load.ts';
import { rateImplausible } from './tools/rate-implausible.ts';
import { shimCoilBind } from './tools/shim-coil-bind.ts';
import { shimNotMeasured } from './tools/shim-not-measured.ts';
import { shimOutOfReach } from './tools/shim-out-of-reach.ts';
import { shimStepTooCoarse } from './tools/shim-step-too-coarse.ts';
import { toolCannotDoIt } from './tools/tool-cannot-do-it.ts';
import { toolNotNamed } from './tools/tool-not-named.ts';
import { toolOutOfRange } from './tools/tool-out-of-range.ts';
import { toolTooCoarse } from './tools/tool-too-coarse.ts';
import { toolWiderThanWindow } from './tools/tool-wider-than-window.ts';
import { torqueWrenchBreaksLoose } from './tools/torque-wrench-breaks-loose.ts';

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
];
