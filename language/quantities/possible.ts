import { type Said, say, term } from '../say/say.ts';
import { compare } from './convert.ts';
import { decimalValue } from './decimal.ts';
import type { Kind, Limit, Quantity } from './types.ts';
import { kindOfUnit } from './unit-table.ts';
import { window } from './window.ts';

const absoluteZero: Quantity = { number: '-273.15', unit: '°C' };
/** A full vacuum, with room for a round figure (−15 psi, −30 inHg): the air around presses with about 1.013 bar. */
const fullVacuum: Quantity = { number: '-1.1', unit: 'bar' };
const deepest: Quantity = { number: '110', unit: 'kPa vacuum' };

/** Kinds that have figures on both sides of nothing: a scale from −1 to 5 bar, a valve that is recessed by 0.1 mm. */
const twoSided: ReadonlySet<Kind> = new Set<Kind>([
  'pressure',
  'temperature',
  'length',
  'angle',
  'cam angle',
  'voltage',
  'current',
  'ratio',
]);

/** Kinds for which zero is not a figure to work to. */
const overNothing: ReadonlySet<Kind> = new Set<Kind>([
  'torque',
  'stiffness',
  'time',
  'strokes',
  'turns',
  'stroke rate',
  'setting rate',
  'screw rate',
]);

/** Why a value cannot be, as the end of a sentence. Null: it can. */
function whyImpossible(value: Quantity): Said | null {
  const kind = kindOfUnit(value.unit);
  if (kind === 'temperature')
    return compare(value, absoluteZero) === -1 ? say`nothing is colder than −273.15 °C` : null;
  if (kind === 'pressure')
    return compare(value, fullVacuum) === -1 ? say`no pressure is lower than a full vacuum, about −1.01 bar` : null;
  if (kind === 'vacuum' && compare(value, deepest) === 1)
    return say`no vacuum is deeper than a full one, about 101 kPa`;
  return twoSided.has(kind) || decimalValue(value.number).compare(0) >= 0
    ? null
    : say`a ${term(kind)} cannot be below zero`;
}

/** Why the figure of a hazard cannot be: how much of it there is, over nothing; only a temperature lies on both sides. */
export function whyNoHazard(value: Quantity): Said | null {
  const kind = kindOfUnit(value.unit);
  if (kind === 'temperature') return whyImpossible(value);
  const side = decimalValue(value.number).compare(0);
  if (side < 0) return say`a ${term(kind)} cannot be below zero`;
  return side === 0 ? say`that is zero, which is no figure to work to` : null;
}

/** The end of a limit that cannot be, and why. Null: all of it can. */
export function impossibleEnd(limit: Limit): { readonly end: Quantity; readonly why: Said } | null {
  if (limit.form === 'then') {
    const { nominal } = limit.angle;
    if (decimalValue(nominal.number).compare(0) <= 0)
      return { end: nominal, why: say`after “then” comes how far the joint is turned on` };
    return impossibleEnd(limit.first) ?? impossibleEnd(limit.angle);
  }
  const { low, high, nominal } = window(limit);
  for (const end of [nominal, low, high]) {
    const why = end === null ? null : whyImpossible(end);
    if (end !== null && why !== null) return { end, why };
  }
  const top = high ?? nominal;
  if (top === null) return null;
  const kind = kindOfUnit(top.unit);
  const highest = decimalValue(top.number).compare(0);
  if (overNothing.has(kind) && highest <= 0) return { end: top, why: say`that is zero, which is no figure to work to` };
  // A recess is written as a figure above zero; only a band may reach to both sides.
  return kind === 'length' && highest < 0 ? { end: top, why: say`a length cannot be below zero` } : null;
}
