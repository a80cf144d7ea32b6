import type { Step } from '../../model/procedure.ts';
import type { Source } from '../../model/source.ts';
import { port } from '../../replay/cells.ts';
import type { Way } from '../../replay/replay.ts';
import type { State } from '../../replay/state.ts';
import { portExposed } from '../port-exposed.ts';
import type { Rule } from '../rule.ts';
import { listed } from '../words.ts';

/** A port is open at an abrasive step, while the unit waits or is cleaned outside, or when it leaves the shop. */
export const openPortInDirt: Rule = {
  code: 'open-port-in-dirt',
  severity: 'error',
  title: 'A port is open while the unit is buffed, blasted, cleaned outside, waits or is shipped.',
  replay: ({ program, layout }, report) => {
    const tell = (at: Step | Source, state: State, way: Way, when: string, shipping: boolean) => {
      const open = program.procedure.family.ports.filter(
        (one) =>
          portExposed(state, one) &&
          !(shipping && one.openInTransit) &&
          state.may(layout.ports.get(one.name)!, port.open),
      );
      if (open.length === 0) return;
      const names = open.map((one) => one.name);
      const since = Math.max(...names.map((name) => state.since[layout.ports.get(name)!]!));
      report({
        at,
        way,
        since,
        cause: `open:${names.join()}:${since}`,
        message: `${names.length > 1 ? 'Ports' : 'Port'} ${listed(names)} ${names.length > 1 ? 'are' : 'is'} open ${when}: grit goes in and comes out in the ${shipping ? 'engine of the customer' : 'tester'}. Write “cap ${names.join(', ')}” before.`,
      });
    };
    return {
      step({ step, before, way }) {
        if (step.verb === 'buff' || step.verb === 'blast')
          tell(step, before, way, `while the unit is ${step.verb === 'buff' ? 'buffed' : 'blasted'}`, false);
        if (step.verb === 'clean-outside') tell(step, before, way, 'while the outside is cleaned', false);
        // While the unit drains on the tester its other ports are open on purpose.
        const draining = program.procedure.family.ports.some((one) =>
          before.may(layout.ports.get(one.name)!, port.connected),
        );
        if (step.verb === 'wait' && !draining) tell(step, before, way, 'while the unit waits', false);
      },
      end({ state, way, last, block }) {
        tell(last ?? block.source, state, way, 'when the unit is shipped', true);
      },
    };
  },
};
