import type { DrawnAs } from '../../../model/drawn-as.ts';
import { needle, nozzle } from './nozzle.ts';
import { capNut, nut, retainingNut } from './nuts.ts';
import type { Shape } from './pen.ts';
import { circlip, coil, diaphragm, disc, oRing, plate, ring, seat, shim, sleeve, washer } from './rings.ts';
import { barrel, block, filter, piston, rod, shaft, valve } from './rods.ts';
import { ball, bearing } from './round.ts';
import { plug, screw, settingScrew, union } from './screws.ts';
import { bellows, spring } from './spring.ts';
import { shaftAndWheel, vane, wheel } from './wheel.ts';

/** Those that can be named, and those that only follow from what a family says. */
export type ShapeName = DrawnAs | 'setting-screw' | 'block';

export const shapes: Readonly<Record<ShapeName, Shape>> = {
  ball,
  barrel,
  bearing,
  bellows,
  block,
  'cap-nut': capNut,
  circlip,
  coil,
  diaphragm,
  disc,
  filter,
  needle,
  nozzle,
  nut,
  'o-ring': oRing,
  plate,
  plug,
  piston,
  'retaining-nut': retainingNut,
  ring,
  rod,
  screw,
  seat,
  'setting-screw': settingScrew,
  shaft,
  'shaft-and-wheel': shaftAndWheel,
  shim,
  sleeve,
  spring,
  union,
  valve,
  vane,
  washer,
  wheel,
};
