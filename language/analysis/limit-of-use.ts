import type { Family, Part } from '../model/family.ts';
import { compare } from '../quantities/index.ts';
import type { Quantity } from '../quantities/types.ts';
import { restsOn } from './relations.ts';

export type Binding = Part & { readonly bindsOver: Quantity };

/** The spring that goes solid first, among those that a shim loads. */
export function firstToBind({ parts }: Family, shim: Part): Binding | null {
  const above = new Set([shim.name]);
  for (let known = 0; known < above.size; ) {
    known = above.size;
    for (const part of parts) if (restsOn(part).some((under) => above.has(under))) above.add(part.name);
  }
  // A shim may also lie on top of its spring.
  for (const under of shim.on) above.add(under);
  const springs = parts.flatMap((part) =>
    part.bindsOver !== null && above.has(part.name) ? [{ ...part, bindsOver: part.bindsOver }] : [],
  );
  return springs.sort((a, b) => compare(a.bindsOver, b.bindsOver) ?? 0)[0] ?? null;
}

/**
 * The most that the stacked shims of a choice may add up to: `never above` of the step, or the thickness above which a
 * spring binds, whichever is less. Null if neither is stated.
 */
export function thicknessLimit(family: Family, shims: readonly Part[], neverAbove: Quantity | null): Quantity | null {
  const bounds = [neverAbove, ...shims.map((shim) => firstToBind(family, shim)?.bindsOver ?? null)];
  return bounds.reduce((least, one) => (least === null || (one !== null && compare(one, least) === -1) ? one : least));
}
