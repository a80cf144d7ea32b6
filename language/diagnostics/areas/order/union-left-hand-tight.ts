import { isLock, loose, loosened, readsUnderPressure } from '../../../analysis/loose.ts';
import { listed, partWords } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingTorque, type StepFix } from '../../step-fixes.ts';

/**
 * A union or connector, which is a joint whose part carries a port, is only hand-tight when pressure comes on. It may
 * close over nothing, so that no test proves through it.
 */
export const unionLeftHandTight: Rule<StepFix> = {
  code: 'union-left-hand-tight',
  severity: 'error',
  since: '0.2.0',
  unsafe: true,
  title: 'A union or connector is only hand-tight when pressure comes on.',
  flow: (flow, report) => ({
    step: on(['test', 'read', 'set'], ({ step, before, path }) => {
      if (!readsUnderPressure(step, flow)) return;
      const { graph, relations } = flow;
      for (const { joint, since, cause } of loosened(flow, before, loose)) {
        const ports = relations.ports(joint.part).map((port) => port.name);
        if (ports.length === 0 || joint.handTightIsFinal || isLock(flow, joint.part)) continue;
        report({
          at: step,
          path,
          since,
          rootCause: cause,
          message: say`The ${partWords(graph.procedure, joint.part)} carries port ${listed(ports)}, but is only hand-tight when pressure comes on.`,
          why: say`it leaks at its thread, and the leak is blamed on the unit.`,
          help: say`Torque ${joint.part} before this step.`,
          data: missingTorque(flow, since, joint.part),
        });
      }
    }),
  }),
  fix: fixStep,
};
