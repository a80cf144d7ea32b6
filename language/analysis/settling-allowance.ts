import type { Part } from '../model/family.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import { specFor } from '../model/spec-for.ts';
import type { Difference } from '../quantities/types.ts';
import { restsOn } from './relations.ts';
import { limitOfReading } from './shim-choices.ts';

/**
 * How much of a reading a new spring loses, by the spec of the target or else of the reading. Null if nothing, or if
 * nothing is stated.
 */
export function settlingOf(
  procedure: Procedure,
  { test, targetSpec }: { readonly test: string; readonly targetSpec: string | null },
  number: string | null,
): Difference | null {
  const use = limitOfReading(procedure, test);
  const specs = [targetSpec, use?.form === 'spec' ? use.spec : null];
  const [settling] = specs.flatMap((name) => (name === null ? [] : (specFor(procedure, name, number)?.settling ?? [])));
  return settling === undefined || Number(settling.number) === 0 ? null : settling;
}

/**
 * The springs that the chosen shims load: of the parts on a shim or under it, those that bind above some thickness, or
 * that a spec calls new; if the family and the specs do not say, any of them.
 */
export function springsOf({ family, specs }: Procedure, { objects }: Step): Part[] {
  const shims = family.parts.filter((part) => objects.some(({ kind, name }) => kind === 'part' && name === part.name));
  const beside = family.parts.filter(
    (part) =>
      !shims.includes(part) &&
      (restsOn(part).some((under) => shims.some(({ name }) => name === under)) ||
        // The part that a shim is in is no spring.
        shims.some(({ on }) => on.includes(part.name))),
  );
  const known = beside.filter(
    ({ name, bindsOver }) => bindsOver !== null || specs.some(({ whenNewPart }) => whenNewPart === name),
  );
  return known.length > 0 ? known : beside;
}
