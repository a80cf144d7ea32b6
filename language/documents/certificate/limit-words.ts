import type { Words } from '../../i18n/index.ts';
import type { Unit } from '../../model/job.ts';
import { type Difference, kindOfLimit, kindOfUnit, type Limit, type Quantity } from '../../quantities/index.ts';
import { shownLimit } from '../traveler/figures.ts';

/** A limit as a reader holds a figure against it: its ends, in the unit of the figure. */
export function limitWords({ wording }: Words, limit: Limit, figure: Quantity | Difference | null): string {
  const unit = figure !== null && kindOfUnit(figure.unit) === kindOfLimit(limit) ? figure.unit : null;
  return shownLimit(limit, { unit, standing: () => null, setToNominal: false, wording }).value;
}

/** `unit 3`, `units 1 to 6`, `units 1, 3 and 4`. */
export function unitsWords(words: Words, of: readonly Unit[]): string {
  const places = of.map(({ place }) => place);
  const run = places.every((place, index) => index === 0 || Number(place) === Number(places[index - 1]) + 1);
  const { oneUnit, severalUnits } = words.certificate;
  if (places.length === 1) return oneUnit({ units: places[0]! });
  const units =
    run && places.length > 2 ? words.names.through({ from: places[0]!, to: places.at(-1)! }) : words.list(places);
  return severalUnits({ units });
}
