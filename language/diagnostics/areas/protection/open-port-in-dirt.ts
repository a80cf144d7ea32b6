import type { FlowAnalysis, PathContext } from '../../../analysis/flow-analysis.ts';
import { allSteps } from '../../../analysis/locations.ts';
import { isDraining, openPorts } from '../../../analysis/openings.ts';
import { listed } from '../../../analysis/prose.ts';
import type { AbstractState } from '../../../analysis/state.ts';
import type { Step } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import { type Said, say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/** A port is open at an abrasive step, while the unit waits, or when it leaves the shop. */
export const openPortInDirt: Rule<StepFix> = {
  code: 'open-port-in-dirt',
  severity: 'error',
  since: '0.1.0',
  title: 'A port is open while the unit is buffed, blasted, waits or is shipped.',
  flow: (flow, report) => {
    const tell = (at: Step | Source, state: AbstractState, path: PathContext, when: Said, shipping: boolean) => {
      const open = openPorts(flow, state, (one) => !(shipping && one.openInTransit));
      if (open === null) return;
      const { names, since, cause } = open;
      report({
        at,
        path,
        since,
        rootCause: cause,
        message: say`${names.length > 1 ? say`Ports` : say`Port`} ${listed(names)} ${names.length > 1 ? say`are` : say`is`} open ${when}.`,
        why: say`grit goes in, and comes out in the ${shipping ? say`customer's engine` : say`tester`}.`,
        help: say`Write “cap ${names.join(', ')}” before this.`,
        data:
          'verb' in at && !shipping && !isCappedLater(flow, at, names)
            ? missingBefore(at, `cap ${names.join(', ')}`)
            : undefined,
      });
    };
    return {
      step: on(['buff', 'blast', 'wait'], ({ step, before, path }) => {
        if (step.verb === 'wait' && isDraining(flow, before)) return;
        const when = {
          wait: say`while the unit waits`,
          buff: say`while the unit is buffed`,
          blast: say`while the unit is blasted`,
        }[step.verb];
        tell(step, before, path, when, false);
      }),
      end({ state, path, last, block }) {
        tell(last ?? block.source, state, path, say`when the unit is shipped`, true);
      },
    };
  },
  fix: fixStep,
};

/** A later step would cap what is capped already then. */
function isCappedLater({ graph }: FlowAnalysis, at: Step, names: readonly string[]): boolean {
  const steps = allSteps(graph.procedure);
  return steps
    .slice(steps.indexOf(at))
    .some(({ verb, objects }) => verb === 'cap' && objects.some(({ name }) => names.includes(name)));
}
