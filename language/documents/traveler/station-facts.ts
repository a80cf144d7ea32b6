import type { Repair } from '../../model/procedure.ts';
import type { Fact } from '../model.ts';
import { stationTitle } from '../names.ts';
import type { SheetContext } from './context.ts';

/** Where repairs are done and what is worn there, if they say so; else it is where the unit came from. */
export function stationFacts({ words, procedure }: SheetContext, repairs: readonly Repair[]): Fact[] {
  const own = [...new Set(repairs.flatMap(({ station }) => station ?? []))];
  const wear = procedure.shop.stations
    .filter(({ name }) => own.includes(name))
    .flatMap((station) => station.wear ?? []);
  return [
    ...(own.length === 0
      ? []
      : [{ label: words.place.station, text: own.map((one) => stationTitle(procedure, one)).join(' / ') }]),
    ...(wear.length === 0 ? [] : [{ label: words.place.wear, text: [...new Set(wear)].join(' / ') }]),
  ];
}
