import { place } from '../../../analysis/locations.ts';
import { partsWords, partWords } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** An adjuster or its lock nut is turned while the cap nut over it is on. */
export const cannotReachTheLock: Rule = {
  code: 'cannot-reach-the-lock',
  severity: 'error',
  since: '0.2.0',
  title: 'An adjuster or its lock is turned while the cap nut over it is on.',
  flow: ({ graph, relations }, report) => {
    const { family } = graph.procedure;
    /** Nuts and caps on the screw or on its lock: on, they cover both. */
    const coversOf = (part: string) => {
      const adjuster = family.adjusters.find((one) => one.part === part || one.lockedBy === part);
      if (adjuster === undefined) return [];
      const pair = [adjuster.part, adjuster.lockedBy];
      return family.joints.flatMap(({ part: cover }) =>
        !pair.includes(cover) && restsOn(relations.part(cover)).some((under) => pair.includes(under)) ? cover : [],
      );
    };
    return {
      step: on(['lock', 'set', 'back-off', 'slacken', 'torque'], ({ step, before, path }) => {
        for (const object of step.objects) {
          const covers = coversOf(object.name).filter(
            (cover) => before.may(before.part(cover).place, place.in) && !graph.absent.has(cover),
          );
          const [first] = covers;
          if (first === undefined || step.objects.some(({ name }) => covers.includes(name))) continue;
          const since = before.since(before.part(first).place);
          report({
            at: step,
            source: step.verb === 'set' ? undefined : object.source,
            path,
            since,
            rootCause: `covered:${first}:${since}`,
            message: say`The ${partWords(graph.procedure, object.name)} cannot be turned while the ${partsWords(graph.procedure, covers)} ${covers.length > 1 ? say`are` : say`is`} on.`,
            why: say`nothing reaches it there, and the setting leaves unlocked, or is locked by the cap alone.`,
            help: say`Take the ${partsWords(graph.procedure, covers)} off before this step, and put ${covers.length > 1 ? say`them` : say`it`} on when the lock is tight.`,
          });
        }
      }),
    };
  },
};
