import { joint } from '../../../analysis/locations.ts';
import { isLock, isOpenLock, loosened, readsUnderPressure } from '../../../analysis/loose.ts';
import { partWords } from '../../../analysis/prose.ts';
import { provesThrough } from '../../../analysis/reach.ts';
import { isGate } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** A joint is slackened, and neither taken off nor torqued again when the unit is read under pressure or leaves. */
export const jointSlackenedThenLeft: Rule = {
  code: 'joint-slackened-then-left',
  severity: 'error',
  since: '0.2.0',
  unsafe: true,
  title: 'A joint is slackened, and neither taken off nor torqued again when the unit is tested or leaves.',
  flow: (flow, report) => {
    const { graph, relations } = flow;
    const words = (part: string) => partWords(graph.procedure, part);
    return {
      step: on(['test', 'read', 'set'], ({ step, before, path }) => {
        if (!readsUnderPressure(step, flow)) return;
        for (const { joint: one, since, cause } of loosened(flow, before, joint.slack)) {
          if (isLock(flow, one.part)) continue;
          const seen =
            relations.loaded(one.part) && (!isGate(step) || provesThrough(flow.graph.procedure, step.gate, one.part));
          if (!seen && relations.ports(one.part).length === 0) continue;
          report({
            at: step,
            path,
            since,
            rootCause: cause,
            message: say`The ${words(one.part)} was slackened and is not tight again when pressure comes on.`,
            why: say`it leaks or lets go, and fluid at test pressure goes through skin.`,
            help: say`Torque ${one.part} before this step, or delete the step that slackens it.`,
          });
        }
      }),
      end({ state, path, last, block }) {
        for (const { joint: one, since, cause } of loosened(flow, state, joint.slack)) {
          if (isOpenLock(flow, state, one.part)) continue;
          report({
            at: last ?? block.source,
            path,
            since,
            rootCause: cause,
            message: say`The ${words(one.part)} was slackened, and is neither off nor tight again when the unit leaves.`,
            why: say`it comes loose on the engine.`,
            help: say`${one.handTightIsFinal ? say`Run down` : say`Torque`} ${one.part} again, or delete the step that slackens it.`,
          });
        }
      },
    };
  },
};
