import type { Face } from '../model/family.ts';
import type { Replay } from './flow-analysis.ts';
import { guard, place } from './locations.ts';
import type { State } from './state.ts';

/** A face that may be bare, the step since which it is, and the cause under which it is reported once. */
export interface BareFace {
  readonly face: Face;
  readonly since: number;
  readonly cause: string;
}

/**
 * Lapped and ground faces of parts in place that neither their guard nor the face that they meet covers. Faces of parts
 * that are off are safe in their tray, or reported as loose.
 */
export function bareFaces({ program, layout }: Replay, state: State): BareFace[] {
  const { faces } = program.procedure.family;
  return faces.flatMap((face) => {
    if (face.finish === null || !state.may(state.part(face.part).place, place.in | place.trial)) return [];
    // A body that was put into its own tray, as a barrel that is lapped all over, is safe there.
    if (!state.may(state.part(face.part).where, 1)) return [];
    const cell = layout.faces.get(face.id)!.guard;
    if (!state.may(cell, guard.off)) return [];
    const other = faces.find((one) => one.id === face.meets);
    if (other !== undefined && state.mustBeIn(other.part)) return [];
    const since = Math.max(state.since[cell]!, other === undefined ? -1 : state.since[state.part(other.part).place]!);
    return [{ face, since, cause: `bare:${face.id}:${since}` }];
  });
}
