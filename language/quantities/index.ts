export {
  add,
  amount,
  asDifference,
  between,
  compare,
  compareDifferences,
  convert,
  convertDifference,
  sizeOf,
  sizesOf,
  sub,
  toleranceOf,
} from './convert.ts';
export type { Rounding } from './decimal.ts';
export { english, type FormatOptions, formatLimit, formatNumber, formatQuantity, type Wording } from './format.ts';
export { kindOfLimit, quantitiesOf, unitOfLimit } from './limit-kind.ts';
export { pairAgrees } from './pairs.ts';
export { impossibleEnd, whyNoHazard } from './possible.ts';
export { lastPlace } from './printed-digits.ts';
export { inUnit, roundTo, windowInSteps } from './round.ts';
export {
  fewDigits,
  limitText,
  type ShownLimit as Shown,
  type ShowOptions as Showing,
  shownLimit,
} from './shown-limit.ts';
export type {
  AtLeast,
  AtMost,
  Difference,
  Figure,
  Kind,
  Limit,
  NominalLimit,
  Quantity,
  RangeLimit,
  ThenAngle,
  ToleranceOnly,
} from './types.ts';
export * from './units.ts';
export { type ExactWindow, exactWindow, isEmpty, type Window, window } from './window.ts';
