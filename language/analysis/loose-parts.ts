import type { Part } from '../model/family.ts';
import { bareFaces } from './bare-faces.ts';
import type { Replay } from './flow-analysis.ts';
import { kept, place } from './locations.ts';
import type { State } from './state.ts';

export interface LooseParts {
  readonly parts: readonly Part[];
  readonly since: number;
  readonly cause: string;
}

/**
 * Parts that may be off and put down nowhere; null if there is none. The guard of a bare face is reported with the face:
 * once put on, it is not loose.
 */
export function looseParts(replay: Replay, state: State): LooseParts | null {
  const guards = bareFaces(replay, state).map(({ face }) => face.guardedBy);
  const parts = replay.program.procedure.family.parts.filter(({ name }) => {
    const cells = state.part(name);
    return !guards.includes(name) && state.may(cells.kept, kept.loose) && state.may(cells.place, place.off | place.sub);
  });
  const [first] = parts;
  if (first === undefined) return null;
  const since = state.since[state.part(first.name).place]!;
  return { parts, since, cause: `loose:${since}` };
}
