import type { Port } from '../model/family.ts';
import type { Replay } from './flow-analysis.ts';
import { port } from './locations.ts';
import { portExposed } from './port-exposed.ts';
import type { State } from './state.ts';

export interface OpenPorts {
  readonly names: readonly string[];
  readonly since: number;
  /** One forgotten cap is reported once, wherever dirt can go in because of it. */
  readonly cause: string;
}

/** Ports that may be open and that nothing covers; null if there is none. */
export function openPorts(
  { program, layout }: Replay,
  state: State,
  counts: (port: Port) => boolean = () => true,
): OpenPorts | null {
  const names = program.procedure.family.ports
    .filter((one) => counts(one) && portExposed(state, one) && state.may(layout.ports.get(one.name)!, port.open))
    .map((one) => one.name);
  if (names.length === 0) return null;
  const since = Math.max(...names.map((name) => state.since[layout.ports.get(name)!]!));
  return { names, since, cause: `open:${since}` };
}

/** While the unit drains on the tester its other ports are open on purpose. */
export function isDraining({ layout }: Replay, state: State): boolean {
  return [...layout.ports.values()].some((cell) => state.may(cell, port.connected));
}
