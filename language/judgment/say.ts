import type { Words } from '../i18n/index.ts';
import type { Unit } from '../model/job.ts';

/** Says in a language what is missing or wrong, why it matters, and what to write. */
export type Say = (words: Words) => string;

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
