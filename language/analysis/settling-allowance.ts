import type { Part } from '../model/family.ts';
import type { Choice, Procedure, Step } from '../model/procedure.ts';
import { specFor } from '../model/spec-for.ts';
import type { Difference } from '../quantities/types.ts';
import { restsOn } from './relations.ts';
import { limitOfReading } from './shim-choices.ts';

/**
 * What a new spring loses of a reading, by the spec that is aimed at or else by that of the reading. Null: nothing, or
 * nobody says.
 */
export function settlingOf(procedure: Procedure, { test, target }: Choice, number: string | null): Difference | null {
  const use = limitOfReading(procedure, test);
  const specs = [target, use].map((one) => (one?.form === 'spec' ? one.spec : null));
  const [settling] = specs.flatMap((name) => (name === null ? [] : (specFor(procedure, name, number)?.settling ?? [])));
  return settling === undefined || Number(settling.number) === 0 ? null : settling;
}

/**
 * The springs that the chosen shims load: of what lies on a shim or under it those that bind over some shim, or that a
 * spec calls new; where the family and the specs do not tell, any of them.
 */
export function springsOf({ family, specs }: Procedure, { objects }: Step): Part[] {
  const shims = family.parts.filter((part) => objects.some(({ kind, name }) => kind === 'part' && name === part.name));
  const beside = family.parts.filter(
    (part) =>
      !shims.includes(part) &&
      (restsOn(part).some((under) => shims.some(({ name }) => name === under)) ||
        // What a shim is in is no spring.
        shims.some(({ on }) => on.includes(part.name))),
  );
  const known = beside.filter(
    ({ name, bindsOver }) => bindsOver !== null || specs.some(({ whenNewPart }) => whenNewPart === name),
  );
  return known.length > 0 ? known : beside;
}
