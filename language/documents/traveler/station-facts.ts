import type { Repair } from '../../model/procedure.ts';
import type { Fact } from '../model.ts';
import { stationTitle } from '../names.ts';
import type { SheetContext } from './context.ts';
import { dangerFigures } from './danger-facts.ts';

/** Where repairs are done and what is worn there, if they say so; else it is where the unit came from. */
export function stationFacts({ words, procedure }: SheetContext, repairs: readonly Repair[]): Fact[] {
  const own = [...new Set(repairs.flatMap(({ station }) => station ?? []))];
  const stations = procedure.shop.stations.filter(({ name }) => own.includes(name));
  const wear = stations.flatMap((station) => station.wear ?? []);
  return [
    ...(own.length === 0
      ? []
      : [{ label: words.place.station, text: own.map((one) => stationTitle(procedure, one)).join(' / ') }]),
    ...(wear.length === 0 ? [] : [{ label: words.place.wear, text: [...new Set(wear)].join(' / ') }]),
    ...stations.flatMap((station) => dangerFigures(words, station)),
  ];
}
