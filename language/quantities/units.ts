export { type KindWord, kindAdmits, kindOf } from './kinds.ts';
export { numberPattern, quantityPattern } from './patterns.ts';
export { type NumberReading, type QuantityReading, readNumber, readQuantity } from './read-quantity.ts';
export type { UnitReading } from './read-unit.ts';
export { kindOfUnit, type Unit, type UnitName, unitOf, units } from './unit-table.ts';
