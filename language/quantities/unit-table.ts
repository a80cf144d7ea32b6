import Fraction from 'fraction.js';
import type { Kind } from './types.ts';

/** One row of the closed table of units. */
export interface Unit<Name extends string = string> {
  /** Canonical spelling, the one that is printed. */
  readonly name: Name;
  readonly kind: Kind;
  /** Exact size in the kind's base unit (see `units`). */
  readonly factor: Fraction;
  /** Added before the factor applies (°C and °F); 0 elsewhere. */
  readonly offset: Fraction;
  /** Other spellings that mean just this unit; at least one of all its spellings is plain ASCII where the keyboard needs it. */
  readonly spellings: readonly string[];
}

const exactly = (numerator: bigint | number, denominator: bigint | number = 1n) =>
  new Fraction(BigInt(numerator), BigInt(denominator));

function unit<const Name extends string>(
  name: Name,
  kind: Kind,
  factor: Fraction,
  spellings: readonly string[] = [],
  offset = exactly(0),
): Unit<Name> {
  return { name, kind, factor, spellings, offset };
}

const one = exactly(1);
const milli = exactly(1, 1000);
const inch = exactly(254, 10_000);
const foot = inch.mul(12);
const poundForce = exactly(44_482_216_152_605n, 10_000_000_000_000n);
const kilogramForce = exactly(980_665, 100_000);
const gravity = exactly(980_665, 100_000);
const pound = exactly(45_359_237, 100_000_000);
const ounce = pound.div(16);
const bar = exactly(100_000);
const kilopascal = exactly(1000);
const inchOfMercury = gravity.mul(exactly(135_951, 10)).mul(inch);
const psi = poundForce.div(inch.mul(inch));
const perMinute = exactly(1, 60);
const cubicMillimetre = exactly(1, 1_000_000_000);
const millilitre = exactly(1, 1_000_000);

/**
 * The closed table of units: the one place where a unit, its size and its spellings are written.
 *
 * Factors are exact by definition (NIST SP 811, Appendix B.8): 1 in = 25.4 mm, 1 lbf = 4.448 221 615 260 5 N,
 * 1 kgf = 9.806 65 N, 1 lb (mass, avoirdupois) = 0.453 592 37 kg, 1 oz = 1 lb/16.
 * `inHg` is the conventional inch of mercury at 0 °C (density 13 595.1 kg/m³, 3386.388 640 341 Pa) and `inH2O` the
 * conventional inch of water (density 1000 kg/m³, nominally 4 °C, 249.088 91 Pa), both at 9.806 65 m/s² (NIST SP 811, B.8).
 * A vacuum is counted from the air downward, so it is a kind of its own: more of it is less pressure. `g` is standard gravity,
 * 9.806 65 m/s².
 *
 * Base units: Pa, N·m, m, N, kg, N/m, s, K, m³, m³ per stroke, m³/s, Pa/m, Pa per turn, m²/s, kg·m, V, A, Ω; speed in
 * turns per second and stroke rate in strokes per second; Hz, m/s and m/s² for what vibrates; angles in degrees, since a radian is no exact number of them;
 * counts in themselves; ratio as a plain number (1 % = 1/100).
 */
const table = [
  unit('bar', 'pressure', bar),
  unit('mbar', 'pressure', bar.mul(milli)),
  unit('kPa', 'pressure', kilopascal),
  unit('MPa', 'pressure', exactly(1_000_000)),
  unit('psi', 'pressure', psi),
  unit('kgf/cm²', 'pressure', kilogramForce.mul(10_000), ['kgf/cm2']),
  unit('inHg', 'pressure', inchOfMercury),
  unit('inH2O', 'pressure', gravity.mul(1000).mul(inch), ['inH₂O']),
  unit('kPa vacuum', 'vacuum', kilopascal, ['kPa of vacuum']),
  unit('mbar vacuum', 'vacuum', bar.mul(milli), ['mbar of vacuum']),
  unit('inHg vacuum', 'vacuum', inchOfMercury, ['inHg of vacuum']),

  unit('N·m', 'torque', one, ['Nm', 'N.m']),
  unit('cN·m', 'torque', exactly(1, 100), ['cNm', 'cN.m']),
  unit('N·cm', 'torque', exactly(1, 100), ['Ncm', 'N.cm']),
  unit('lbf·ft', 'torque', poundForce.mul(foot), ['lbf-ft', 'lbf.ft', 'lb-ft', 'lb·ft', 'lb.ft']),
  unit('lbf·in', 'torque', poundForce.mul(inch), ['lbf-in', 'lbf.in', 'lb-in', 'lb·in', 'lb.in']),
  unit('kgf·m', 'torque', kilogramForce, ['kgf-m', 'kgf.m']),
  unit('kgf·cm', 'torque', kilogramForce.div(100), ['kgf-cm', 'kgf.cm']),

  unit('mm', 'length', milli),
  unit('µm', 'length', exactly(1, 1_000_000), ['um']),
  unit('in', 'length', inch),
  unit('thou', 'length', inch.div(1000)),

  unit('N', 'force', one),
  unit('lbf', 'force', poundForce),
  unit('kgf', 'force', kilogramForce),

  unit('kg', 'mass', one),
  unit('lb', 'mass', pound),

  unit('N/mm', 'stiffness', exactly(1000)),
  unit('lbf/in', 'stiffness', poundForce.div(inch)),

  unit('µs', 'time', exactly(1, 1_000_000), ['us']),
  unit('ms', 'time', milli),
  unit('s', 'time', one),
  unit('min', 'time', exactly(60)),
  unit('h', 'time', exactly(3600)),

  unit('°C', 'temperature', one, ['degC', '℃'], exactly(27_315, 100)),
  unit('°F', 'temperature', exactly(5, 9), ['degF', '℉'], exactly(45_967, 100)),
  unit('K', 'temperature', one),

  unit('mm³', 'volume', cubicMillimetre, ['mm3']),
  unit('mL', 'volume', millilitre, ['ml']),
  unit('mm³/stroke', 'volume per strokes', cubicMillimetre, ['mm3/stroke']),
  unit('mL/1000 strokes', 'volume per strokes', millilitre.div(1000), ['ml/1000 strokes']),
  unit('mL/min', 'flow', millilitre.mul(perMinute), ['ml/min']),

  unit('rpm', 'speed', perMinute, ['r/min', 'rev/min']),
  unit('strokes/min', 'stroke rate', perMinute),

  unit('Hz', 'frequency', one),
  unit('mm/s', 'vibration', milli),
  unit('g', 'acceleration', gravity),
  unit('m/s²', 'acceleration', one, ['m/s2']),

  unit('°', 'angle', one, ['deg']),
  unit('cam °', 'cam angle', one, ['cam deg']),

  // The singular is a spelling too: a hand writes "1 drop".
  unit('drops', 'drops', one, ['drop']),
  unit('strokes', 'strokes', one, ['stroke']),
  unit('turns', 'turns', one, ['turn']),

  unit('bar per mm', 'setting rate', bar.div(milli), ['bar/mm']),
  unit('bar per in', 'setting rate', bar.div(inch), ['bar/in']),
  unit('kPa per mm', 'setting rate', kilopascal.div(milli), ['kPa/mm']),
  unit('bar per turn', 'screw rate', bar, ['bar/turn']),
  unit('psi per turn', 'screw rate', psi, ['psi/turn']),

  unit('mm²/s', 'viscosity', exactly(1, 1_000_000), ['mm2/s']),
  unit('cSt', 'viscosity', exactly(1, 1_000_000)),

  unit('g·mm', 'unbalance', exactly(1, 1_000_000), ['g.mm', 'gmm']),
  unit('oz·in', 'unbalance', ounce.mul(inch), ['oz.in', 'oz-in']),

  unit('V', 'voltage', one),
  unit('A', 'current', one),
  unit('mΩ', 'resistance', milli, ['mohm']),
  unit('Ω', 'resistance', one, ['ohm']),
  unit('kΩ', 'resistance', exactly(1000), ['kohm']),
  unit('MΩ', 'resistance', exactly(1_000_000), ['Mohm']),

  unit('%', 'ratio', exactly(1, 100)),
];

/** Canonical spelling of a unit in the closed table. */
export type UnitName = (typeof table)[number]['name'];

/** All units, in the order of the reference. */
export const units: readonly Unit<UnitName>[] = table;

const byName = new Map<string, Unit<UnitName>>(units.map((row) => [row.name, row]));

/** The row of a unit. Every `UnitName` has one. */
export function unitOf(name: UnitName): Unit<UnitName> {
  return byName.get(name)!;
}

/** What a unit measures. */
export function kindOfUnit(name: UnitName): Kind {
  return unitOf(name).kind;
}
