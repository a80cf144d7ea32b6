import { listed } from '../../../analysis/prose.ts';
import { limitWords, takeOr, toolCalled, toolWords } from '../../../analysis/tool-words.ts';
import { conditionWork } from '../../../analysis/tool-work.ts';
import { atHand, isAt, namedTools, reaches } from '../../../analysis/tools.ts';
import { formatLimit } from '../../../quantities/index.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A condition of a step (its speed, pressure, temperature, ceiling) is beyond every tool that could show it. */
export const beyondTheTool: Rule = {
  code: 'beyond-the-tool',
  severity: 'error',
  since: '0.2.0',
  title: 'A step is done at a figure beyond the scale of its tool.',
  eachStep(step, setting, report) {
    for (const { words, ...work } of conditionWork(setting, step)) {
      const named = namedTools(setting, work).filter((asset) => isAt(work.station, asset));
      const tools = named.length > 0 ? named : atHand(setting, work);
      // With no tool for it at all, the test bench itself shows it.
      if (tools.length === 0) continue;
      const short = work.limits.find((judged) => !tools.some((asset) => reaches(work, judged, asset)));
      if (short === undefined) continue;
      const better = atHand(setting, work).find((asset) => asset.range !== null && reaches(work, short, asset)) ?? null;
      report({
        at: work.step,
        rootCause: `beyond:${tools.map(({ name }) => name)}:${formatLimit(short.limit)}`,
        message: say`${words} ${limitWords(short)}, which is off the scale of ${listed(tools.map(toolWords))}.`,
        why: say`nobody can see what it really is, and a tool that is driven past its scale breaks, or reads wrong on the next job.`,
        help: takeOr(better, say`Use a ${toolCalled(work.kind)} that reaches it, or check the figure.`),
      });
    }
  },
};
