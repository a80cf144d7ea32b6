import { openPorts } from '../../../analysis/openings.ts';
import { listed } from '../../../analysis/prose.ts';
import type { Source } from '../../../model/source.ts';
import { say } from '../../../say/say.ts';
import { stepBefore } from '../../edits.ts';
import { on, type Rule } from '../../rule.ts';

/** The outside is brushed down while a port is open. */
export const outsideCleanedWithPortsOpen: Rule<{ names: readonly string[]; source: Source }> = {
  code: 'outside-cleaned-with-ports-open',
  severity: 'error',
  since: '0.2.0',
  title: 'A port is open while the outside of the unit is cleaned.',
  flow: (flow, report) => ({
    step: on(['clean-outside'], ({ step, before, path }) => {
      const open = openPorts(flow, before);
      if (open === null) return;
      const { names, since, cause } = open;
      report({
        at: step,
        path,
        since,
        rootCause: cause,
        message: say`${names.length > 1 ? say`Ports` : say`Port`} ${listed(names)} ${names.length > 1 ? say`are` : say`is`} open while the outside is cleaned.`,
        why: say`the dirt that the brush takes off goes in there.`,
        help: say`Write “cap ${names.join(', ')}” before this step.`,
        data: step.call === null ? { names, source: step.source } : undefined,
      });
    }),
  }),
  fix({ names, source }) {
    return {
      title: say`Cap ${listed(names)} first`,
      safe: true,
      edits: [stepBefore(source, `cap ${names.join(', ')}`)],
    };
  },
};
