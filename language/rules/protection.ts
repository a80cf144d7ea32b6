import { bareLappedFace } from './protection/bare-lapped-face.ts';
import { builtAtDirtyStation } from './protection/built-at-dirty-station.ts';
import { cannotSee } from './protection/cannot-see.ts';
import { checkedDirty } from './protection/checked-dirty.ts';
import { countDoesNotClose } from './protection/count-does-not-close.ts';
import { dirtyWorkInCleanRoom } from './protection/dirty-work-in-clean-room.ts';
import { dunkedPart } from './protection/dunked-part.ts';
import { faceClosedUnclean } from './protection/face-closed-unclean.ts';
import { fittedDirty } from './protection/fitted-dirty.ts';
import { fittedWet } from './protection/fitted-wet.ts';
import { guardInTheWash } from './protection/guard-in-the-wash.ts';
import { keptNowhere } from './protection/kept-nowhere.ts';
import { keptPartsAtTheWheel } from './protection/kept-parts-at-the-wheel.ts';
import { lappedFaceAbraded } from './protection/lapped-face-abraded.ts';
import { lappedFaceNotChecked } from './protection/lapped-face-not-checked.ts';
import { lappedPairFittedDry } from './protection/lapped-pair-fitted-dry.ts';
import { lappedPartsTogether } from './protection/lapped-parts-together.ts';
import { leavesWet } from './protection/leaves-wet.ts';
import { leftOutOfTheWash } from './protection/left-out-of-the-wash.ts';
import { matchedPartsSplit } from './protection/matched-parts-split.ts';
import { noSafeStop } from './protection/no-safe-stop.ts';
import { nothingDoneHere } from './protection/nothing-done-here.ts';
import { openPortInDirt } from './protection/open-port-in-dirt.ts';
import { openedBeforeOutsideCleaned } from './protection/opened-before-outside-cleaned.ts';
import { outsideCleanedWithPortsOpen } from './protection/outside-cleaned-with-ports-open.ts';
import { partsLeftLoose } from './protection/parts-left-loose.ts';
import { passageBlocked } from './protection/passage-blocked.ts';
import { portHandledTwice } from './protection/port-handled-twice.ts';
import { unitsMixedInTheBath } from './protection/units-mixed-in-the-bath.ts';
import { waterWashedNotOiled } from './protection/water-washed-not-oiled.ts';
import type { AnyRule } from './rule.ts';

/** In order of precedence: if two rules report the same cause, the earlier one wins. */
export const protection: readonly AnyRule[] = [
  bareLappedFace,
  noSafeStop,
  lappedFaceAbraded,
  lappedPartsTogether,
  keptPartsAtTheWheel,
  matchedPartsSplit,
  partsLeftLoose,
  keptNowhere,
  unitsMixedInTheBath,
  cannotSee,
  checkedDirty,
  lappedFaceNotChecked,
  fittedDirty,
  faceClosedUnclean,
  leavesWet,
  fittedWet,
  lappedPairFittedDry,
  waterWashedNotOiled,
  guardInTheWash,
  dunkedPart,
  leftOutOfTheWash,
  passageBlocked,
  countDoesNotClose,
  outsideCleanedWithPortsOpen,
  openPortInDirt,
  portHandledTwice,
  openedBeforeOutsideCleaned,
  nothingDoneHere,
  dirtyWorkInCleanRoom,
  builtAtDirtyStation,
];
