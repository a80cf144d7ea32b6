import type { Face, Port } from '../model/family.ts';
import type { Procedure } from '../model/procedure.ts';
import type { FlowAnalysis } from './flow-analysis.ts';
import { guard, place, port } from './locations.ts';
import type { AbstractState } from './state.ts';

/** What is needed of a flow analysis: what is kept at each step has it too. */
export type Laid = Pick<FlowAnalysis, 'layout'> & { readonly graph: { readonly procedure: Pick<Procedure, 'family'> } };

/** A face that may be bare, since which step, and the cause by which it is reported once. */
export interface BareFace {
  readonly face: Face;
  readonly since: number;
  readonly cause: string;
}

/**
 * Lapped and ground faces of parts in place that neither their guard nor the face that they meet covers. Faces of parts
 * that are off are safe in their tray, or reported as loose.
 */
export function bareFaces({ graph, layout }: Laid, state: AbstractState): BareFace[] {
  const { faces } = graph.procedure.family;
  return faces.flatMap((face) => {
    if (face.finish === null || !state.may(state.part(face.part).place, place.in | place.trial)) return [];
    // A body that was put into its own tray, as a barrel that is lapped all over, is safe there.
    if (!state.may(state.part(face.part).where, 1)) return [];
    const cell = layout.faces.get(face.id)!.guard;
    if (!state.may(cell, guard.off)) return [];
    const other = faces.find((one) => one.id === face.meets);
    if (other !== undefined && state.mustBeIn(other.part)) return [];
    const since = Math.max(state.since(cell), other === undefined ? -1 : state.since(state.part(other.part).place));
    return [{ face, since, cause: `bare:${face.id}:${since}` }];
  });
}

export interface OpenPorts {
  readonly names: readonly string[];
  readonly since: number;
  /** One forgotten cap is reported once, wherever dirt can go in because of it. */
  readonly cause: string;
}

/** Ports that may be open and that nothing covers; null where there is none. */
export function openPorts(
  { graph, layout }: FlowAnalysis,
  state: AbstractState,
  counts: (port: Port) => boolean = () => true,
): OpenPorts | null {
  const names = graph.procedure.family.ports
    .filter((one) => counts(one) && portExposed(state, one) && state.may(layout.ports.get(one.name)!, port.open))
    .map((one) => one.name);
  if (names.length === 0) return null;
  const since = Math.max(...names.map((name) => state.since(layout.ports.get(name)!)));
  return { names, since, cause: `open:${since}` };
}

/** While the unit drains on the tester its other ports are open on purpose. */
export function isDraining({ layout }: FlowAnalysis, state: AbstractState): boolean {
  return [...layout.ports.values()].some((cell) => state.may(cell, port.connected));
}

/** A port counts only while its part is in place and no part that covers it is. */
export function portExposed(state: AbstractState, port: Port): boolean {
  if (!state.may(state.part(port.part).place, place.in | place.trial)) return false;
  return port.under === null || !state.mustBeIn(port.under);
}
