import type Fraction from 'fraction.js';
import { decimalValue, exactText } from '../quantities/decimal.ts';
import { amount, kindOfUnit } from '../quantities/index.ts';
import type { Quantity } from '../quantities/types.ts';

/**
 * What to set on a torque wrench that turns the nut through an adapter beyond its square drive (a crowfoot):
 * `setting = torque · L / (L + E · cos α)`, with L from the grip's mark to the square drive, E from there to the nut,
 * and α between them: at 0° the adapter lengthens the wrench, at 90° it changes nothing (TM 9-254, general maintenance
 * of torque wrenches). In the torque's unit. Null: lengths are no lengths, or the nut would lie at the grip.
 */
export function settingThroughAdapter(
  torque: Quantity,
  wrench: Quantity,
  adapter: { readonly length: Quantity; readonly angle: Quantity | null },
): Quantity | null {
  if (kindOfUnit(wrench.unit) !== 'length' || kindOfUnit(adapter.length.unit) !== 'length') return null;
  const straight = amount(wrench);
  const whole = straight.add(amount(adapter.length).mul(cosine(adapter.angle)));
  if (straight.compare(0) <= 0 || whole.compare(0) <= 0) return null;
  return { number: exactText(decimalValue(torque.number).mul(straight).div(whole)), unit: torque.unit };
}

/** Whether an adapter changes what the wrench must be set to. At 90° it does not, whatever its length. */
export function changesSetting({ length, angle }: { readonly length: Quantity; readonly angle: Quantity | null }) {
  return amount(length).mul(cosine(angle)).compare(0) !== 0;
}

/** Digits kept of a cosine: far below anything measured, and 60° and 90° come out exactly. */
const cosineDigits = 12;

/** Cosine of an angle in degrees; with no angle said the adapter is in line. */
function cosine(angle: Quantity | null): Fraction {
  const degrees = angle === null ? 0 : amount(angle).valueOf();
  return decimalValue(Math.cos((degrees * Math.PI) / 180).toFixed(cosineDigits));
}
