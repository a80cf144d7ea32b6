import type { Port } from '../model/family.ts';
import { place } from './locations.ts';
import type { State } from './state.ts';

/** A port counts only while its part is in place and no part that covers it is. */
export function portExposed(state: State, port: Port): boolean {
  if (!state.may(state.part(port.part).place, place.in | place.trial)) return false;
  return port.under === null || !state.mustBeIn(port.under);
}
