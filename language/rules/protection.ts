import { bareLappedFace } from './protection/bare-lapped-face.ts';
import { fittedDirty } from './protection/fitted-dirty.ts';
import { fittedWet } from './protection/fitted-wet.ts';
import { keptPartsAtTheWheel } from './protection/kept-parts-at-the-wheel.ts';
import { lappedFaceNotChecked } from './protection/lapped-face-not-checked.ts';
import { lappedPairFittedDry } from './protection/lapped-pair-fitted-dry.ts';
import { nothingDoneHere } from './protection/nothing-done-here.ts';
import { openPortInDirt } from './protection/open-port-in-dirt.ts';
import { partsLeftLoose } from './protection/parts-left-loose.ts';
import { passageBlocked } from './protection/passage-blocked.ts';
import type { Rule } from './rule.ts';

/** In the order of causes: where two rules speak of one cause, the earlier one is heard. */
export const protection: readonly Rule[] = [
  bareLappedFace,
  fittedDirty,
  fittedWet,
  keptPartsAtTheWheel,
  lappedFaceNotChecked,
  lappedPairFittedDry,
  nothingDoneHere,
  openPortInDirt,
  partsLeftLoose,
  passageBlocked,
];
