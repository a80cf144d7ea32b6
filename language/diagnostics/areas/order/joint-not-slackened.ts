import { joint, place } from '../../../analysis/locations.ts';
import { partWords } from '../../../analysis/prose.ts';
import type { Source } from '../../../model/source.ts';
import { say } from '../../../say/say.ts';
import { stepBefore } from '../../edits.ts';
import { on, type Rule } from '../../rule.ts';

/** The part of a tight joint is taken off without slackening it. A guard is only run down, and not slackened. */
export const jointNotSlackened: Rule<{ part: string; source: Source }> = {
  code: 'joint-not-slackened',
  severity: 'error',
  since: '0.1.0',
  title: 'The part of a tight joint is taken off before the joint is slackened.',
  flow: ({ graph, layout, relations }, report) => ({
    step: on(['remove', 'discard'], ({ step, before, path }) => {
      for (const object of step.objects) {
        const cell = layout.joints.get(object.name);
        if (
          cell === undefined ||
          relations.joint(object.name)?.handTightIsFinal === true ||
          // An adjuster turns in its own thread: its lock is slackened instead.
          layout.adjusters.has(object.name) ||
          !before.may(cell, joint.found | joint.torqued | joint.locked) ||
          !before.may(before.part(object.name).place, place.in)
        )
          continue;
        report({
          at: step,
          source: object.source,
          path,
          since: before.since(cell),
          rootCause: `tight:${object.name}:${before.since(cell)}`,
          message: say`The ${partWords(graph.procedure, object.name)} is still tight when it is taken off.`,
          why: say`breaking a joint loose takes its own step, with the unit held and the tool for it named.`,
          help: say`Write “slacken ${object.name}” first, while the unit is held.`,
          data: step.call === null ? { part: object.name, source: step.source } : undefined,
        });
      }
    }),
  }),
  fix({ part, source }) {
    return { title: say`Slacken ${part} first`, safe: true, edits: [stepBefore(source, `slacken ${part}`)] };
  },
};
