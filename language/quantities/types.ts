import type { UnitName } from './unit-table.ts';

export type { UnitName };

/** What a unit measures. Units of one kind convert into each other, units of two kinds never do. */
export type Kind =
  | 'pressure'
  | 'vacuum'
  | 'torque'
  | 'length'
  | 'force'
  | 'mass'
  | 'stiffness'
  | 'time'
  | 'temperature'
  | 'volume'
  | 'volume per strokes'
  | 'flow'
  | 'speed'
  | 'stroke rate'
  | 'frequency'
  | 'vibration'
  | 'acceleration'
  | 'angle'
  | 'cam angle'
  | 'drops'
  | 'strokes'
  | 'turns'
  | 'setting rate'
  | 'screw rate'
  | 'viscosity'
  | 'unbalance'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'ratio';

/**
 * A number with its unit, as it is read: its place says whether a value or a difference is meant. The
 * digits stay as written, since they say how exactly the author meant it.
 */
export interface Figure {
  /** Digits as the author wrote them: '.' as decimal mark, no blanks, '-' as sign, no exponent. */
  readonly number: string;
  /** Canonical spelling, such as 'N·m'. */
  readonly unit: UnitName;
}

/**
 * A value on its scale: 20 °C is 68 °F. `relative` is never there; it only keeps the two kinds of figure apart for the
 * compiler, so that none is converted as the other (`asDifference` is the one way across).
 */
export interface Quantity extends Figure {
  readonly relative?: false;
}

/** What lies between two values: a tolerance, a spread, a tool's error, its marks, an uncertainty. 20 °C are 36 °F. */
export interface Difference extends Figure {
  readonly relative?: true;
}

/** A limit as the trade writes it. */
export type Limit = NominalLimit | RangeLimit | AtLeast | AtMost | ToleranceOnly | ThenAngle;

/** `250 bar +8 -0`. A tolerance is a magnitude in the nominal's unit or in '%'; both null: none written. */
export interface NominalLimit {
  readonly form: 'nominal';
  readonly nominal: Quantity;
  readonly plus: Difference | null;
  readonly minus: Difference | null;
  /** The second unit in parentheses. */
  readonly pair?: Limit;
}

/** `55..65 N·m` */
export interface RangeLimit {
  readonly form: 'range';
  readonly low: Quantity;
  readonly high: Quantity;
  readonly pair?: Limit;
}

/** `at least 20 s` */
export interface AtLeast {
  readonly form: 'at least';
  readonly least: Quantity;
  readonly pair?: Limit;
}

/** `at most 2 bar` */
export interface AtMost {
  readonly form: 'at most';
  readonly most: Quantity;
  readonly pair?: Limit;
}

/** `±4 %`: a tolerance on a value that is elsewhere. Both are magnitudes. */
export interface ToleranceOnly {
  readonly form: 'tolerance';
  readonly plus: Difference;
  readonly minus: Difference;
}

/** `40 N·m then 90° ±5` */
export interface ThenAngle {
  readonly form: 'then';
  readonly first: NominalLimit;
  readonly angle: NominalLimit;
}
