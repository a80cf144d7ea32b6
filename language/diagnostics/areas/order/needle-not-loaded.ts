import { listed, lower } from '../../../analysis/prose.ts';
import { Relations, restsOn } from '../../../analysis/relations.ts';
import type { Statement } from '../../../model/diagnostic.ts';
import type { Family, Part } from '../../../model/family.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/**
 * A stack on a chosen shim presses on nothing: no part of it presses on, holds or is held by anything. A part that rightly
 * presses on nothing, as a washer or a filter, has no shim under it.
 */
export const needleNotLoaded: Rule = {
  code: 'needle-not-loaded',
  severity: 'error',
  since: '0.2.0',
  title: 'A stack on a chosen shim presses on nothing: what its spring loads is not declared.',
  family(family, report) {
    const relations = Relations.of(family);
    for (const shim of family.parts) {
      if (shim.chosenFrom === null) continue;
      const stack = stackOn(shim, relations);
      const loaded = stack.filter((part) => part.chosenFrom === null);
      const top = loaded.at(-1) ?? shim;
      if (loaded.length > 0 ? stack.some((part) => reaches(part, stack)) : !hangsInTheAir(shim)) continue;
      report({
        at: top.source,
        allow: stack.flatMap((part) => part.allow),
        ...(loaded.length > 0 ? loadsNothing(family, shim, loaded) : setsNothing(shim)),
      });
    }

    /** It passes the load on, or rests against something beside the stack. A shim on top is a stop and carries no load. */
    function reaches(part: Part, stack: readonly Part[]): boolean {
      const [shim] = stack;
      if (part.bearsOn.length > 0 && (part === shim || part.chosenFrom === null)) return true;
      if (part.holds.length > 0 || relations.holders(part.name).length > 0) return true;
      if (relations.joint(part.name) !== undefined) return true;
      if (family.adjusters.some((adjuster) => adjuster.part === part.name)) return true;
      const below = supportsOf(shim!, relations);
      return (
        part !== shim && restsOn(part).some((under) => !below.has(under) && !stack.some(({ name }) => name === under))
      );
    }

    /** A shim with nothing on it, on a part that itself presses on something: it serves as a stop. */
    function hangsInTheAir(shim: Part): boolean {
      return (
        !reaches(shim, [shim]) &&
        restsOn(shim).some((under) => relations.part(under).bearsOn.length > 0 && relations.holders(under).length === 0)
      );
    }
  },
};

/** A part and everything that rests on it, from the bottom up. */
function stackOn(bottom: Part, relations: Relations): Part[] {
  const stack = [bottom];
  for (const part of stack) {
    for (const other of relations.onIt(part.name)) if (!stack.includes(other)) stack.push(other);
  }
  return stack;
}

/** Everything that a part rests on, down to the body. */
function supportsOf(part: Part, relations: Relations): Set<string> {
  const below = new Set(restsOn(part));
  for (const name of below) for (const under of restsOn(relations.part(name))) below.add(under);
  return below;
}

function loadsNothing(family: Family, shim: Part, stack: readonly Part[]): Statement {
  const [bear, them] = stack.length > 1 ? [say`bear`, say`them`] : [say`bears`, say`it`];
  // What a spring most likely loads: a part that is matched to the one that it lies in.
  const needle = family.parts.find((part) => part.in.some((outer) => part.matchedTo.includes(outer)));
  return {
    message: say`The ${listed(stack.map((part) => lower(part.title)))} on the ${lower(shim.title)} ${bear} on nothing, and nothing holds ${them}.`,
    why: say`the spring would load nothing, and a unit closed without ${them} would go unnoticed.`,
    help: say`At part ${stack.at(-1)!.base}, write what it presses on${needle === undefined ? '' : say`, such as “bears on ${needle.base}”`}.`,
  };
}

function setsNothing(shim: Part): Statement {
  return {
    message: say`The ${lower(shim.title)} bears on nothing, and nothing holds it.`,
    why: say`it would set nothing, and a unit closed without it would go unnoticed.`,
    help: say`At part ${shim.base}, write “bears on” and the part that it comes up against.`,
  };
}
