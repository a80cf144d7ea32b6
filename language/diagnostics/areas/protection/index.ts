import type { AnyRule } from '../../rule.ts';
import { bareLappedFace } from './bare-lapped-face.ts';
import { builtAtDirtyStation } from './built-at-dirty-station.ts';
import { cannotSee } from './cannot-see.ts';
import { checkedDirty } from './checked-dirty.ts';
import { countDoesNotClose } from './count-does-not-close.ts';
import { dirtyWorkInCleanRoom } from './dirty-work-in-clean-room.ts';
import { dunkedPart } from './dunked-part.ts';
import { faceClosedUnclean } from './face-closed-unclean.ts';
import { fittedDirty } from './fitted-dirty.ts';
import { fittedWet } from './fitted-wet.ts';
import { guardInTheWash } from './guard-in-the-wash.ts';
import { keptNowhere } from './kept-nowhere.ts';
import { keptPartsAtTheWheel } from './kept-parts-at-the-wheel.ts';
import { lappedFaceAbraded } from './lapped-face-abraded.ts';
import { lappedFaceNotChecked } from './lapped-face-not-checked.ts';
import { lappedPairFittedDry } from './lapped-pair-fitted-dry.ts';
import { lappedPartsTogether } from './lapped-parts-together.ts';
import { leavesWet } from './leaves-wet.ts';
import { leftOutOfTheWash } from './left-out-of-the-wash.ts';
import { matchedPartsSplit } from './matched-parts-split.ts';
import { noSafeStop } from './no-safe-stop.ts';
import { nothingDoneHere } from './nothing-done-here.ts';
import { openPortInDirt } from './open-port-in-dirt.ts';
import { openedBeforeOutsideCleaned } from './opened-before-outside-cleaned.ts';
import { outsideCleanedWithPortsOpen } from './outside-cleaned-with-ports-open.ts';
import { partsLeftLoose } from './parts-left-loose.ts';
import { passageBlocked } from './passage-blocked.ts';
import { portHandledTwice } from './port-handled-twice.ts';
import { softPartBlasted } from './soft-part-blasted.ts';
import { spoiltByTheBath } from './spoilt-by-the-bath.ts';
import { unitsMixedInTheBath } from './units-mixed-in-the-bath.ts';
import { waterWashedNotOiled } from './water-washed-not-oiled.ts';
import { wrongFilm } from './wrong-film.ts';

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
  passageBlocked,
  countDoesNotClose,
  outsideCleanedWithPortsOpen,
  openPortInDirt,
  portHandledTwice,
  openedBeforeOutsideCleaned,
  nothingDoneHere,
  dirtyWorkInCleanRoom,
  builtAtDirtyStation,
  leftOutOfTheWash,
  spoiltByTheBath,
  softPartBlasted,
  wrongFilm,
];
