import { allSteps, flag, place } from '../../../analysis/locations.ts';
import { openPorts } from '../../../analysis/openings.ts';
import { partWords } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/** A unit with lapped or matched parts that came in is opened while its outside may still be dirty. */
export const openedBeforeOutsideCleaned: Rule<StepFix> = {
  code: 'opened-before-outside-cleaned',
  severity: 'error',
  since: '0.2.0',
  title: 'A unit with lapped parts is opened before its outside is cleaned.',
  flow: (flow, report) => {
    const { graph, layout, relations } = flow;
    const { procedure } = graph;
    const isFine = procedure.family.parts.some((part) => relations.isFine(part.name));
    const takenIn = allSteps(procedure).some((step) => step.verb === 'receive');
    if (!isFine || !takenIn) return {};
    const opens = (name: string) => {
      const joint = relations.joint(name);
      if (joint === undefined) return false;
      const isBody = procedure.family.parts.some((part) => part.name === joint.to && restsOn(part).length === 0);
      return isBody || relations.loaded(name);
    };
    return {
      looksAround: true,
      step: on(['slacken', 'remove', 'discard'], ({ step, before, path }) => {
        if (!before.may(layout.unit.outside, flag.no)) return;
        const object = step.objects.find(({ name }) => opens(name) && before.may(before.part(name).place, place.in));
        if (object === undefined) return;
        const open = openPorts(flow, before);
        report({
          at: step,
          source: object.source,
          path,
          rootCause: 'outside',
          message: say`The ${partWords(procedure, object.name)} is opened while the outside is still as dirty as it came in.`,
          why: say`the dirt on the thread falls onto the lapped faces.`,
          help: say`Cap the ports and write “clean outside” before this step.`,
          data: missingBefore(step, open === null ? 'clean outside' : `cap ${open.names.join(', ')}   clean outside`),
        });
      }),
    };
  },
  fix: fixStep,
};
