import type { Kind, Quantity } from '../quantities/types.ts';
import type { Danger } from '../syntax/verbs/dangers.ts';
import type { Source } from './source.ts';

export { type Danger, dangers } from '../syntax/verbs/dangers.ts';

/** `live`, `hot 120 °C`; or `not live`: its words suggest it, and it is not. */
export interface DangerFact {
  readonly danger: Danger;
  readonly denied: boolean;
  /** `hot 120 °C`; null: how much is not said. */
  readonly figure: Quantity | null;
  readonly source: Source;
}

/** What the figure of a danger is; a danger that is not here has none. */
export const dangerKinds: Readonly<Partial<Record<Danger, Kind>>> = {
  live: 'voltage',
  rotating: 'speed',
  hot: 'temperature',
  cold: 'temperature',
  heavy: 'mass',
  'stored pressure': 'pressure',
};

/** What declares dangers: a part, a station, a step. */
export interface Dangerous {
  readonly dangers: readonly DangerFact[];
}

/** What something says of a danger; undefined: nothing. */
export function saidOf({ dangers }: Dangerous, danger: Danger): DangerFact | undefined {
  return dangers.find((fact) => fact.danger === danger);
}

/** It is declared, and not denied. */
export function isDeclared(of: Dangerous, danger: Danger): boolean {
  return saidOf(of, danger)?.denied === false;
}
