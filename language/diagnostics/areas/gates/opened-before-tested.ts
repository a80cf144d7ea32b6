import { isHydraulic } from '../../../analysis/hydraulic.ts';
import { place } from '../../../analysis/locations.ts';
import { either } from '../../../analysis/prose.ts';
import { stageSteps } from '../../../analysis/stages.ts';
import { isGate } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** Torn down with no reading as found, where the tester that proves the unit could have taken one. */
export const openedBeforeTested: Rule = {
  code: 'opened-before-tested',
  severity: 'hint',
  since: '0.2.0',
  title: 'A unit that could be tested is opened before it is read as found.',
  flow: ({ graph, relations }, report) => {
    const { procedure } = graph;
    const proofs = procedure.family.provenBy.map((proof) => proof.name);
    const readable = stageSteps(graph).flatMap(({ step }) =>
      step.verb === 'test' && step.test.reads === 'pressure' && proofs.includes(step.gate.test) ? [step.gate.test] : [],
    );
    let done = readable.length === 0;
    return {
      looksAround: true,
      step: on(['read', 'test', 'set', 'slacken', 'remove', 'discard'], ({ step, before, path }) => {
        if (done || path.repair !== null) return;
        if ((step.verb === 'read' && step.asFound) || (isGate(step) && isHydraulic(step, procedure))) {
          done = true;
          return;
        }
        if (step.verb !== 'slacken' && step.verb !== 'remove' && step.verb !== 'discard') return;
        const opened = step.objects.find(
          ({ name }) =>
            before.may(before.part(name).place, place.in) &&
            (relations.loaded(name) || relations.closedBy(name).length > 0),
        );
        if (opened === undefined) return;
        done = true;
        report({
          at: step,
          rootCause: 'opened-before-tested',
          message: say`The unit is opened before anybody has read it as found.`,
          why: say`afterwards nobody can say what was wrong with it, or how far its spring had settled.`,
          help: say`Write “read ${readable[0]!} as found” at the tester before this${readable.length > 1 ? say`, or ${either(readable.slice(1))}` : ''}.`,
        });
      }),
    };
  },
};
