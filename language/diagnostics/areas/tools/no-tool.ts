import { listed, stationWords } from '../../../analysis/prose.ts';
import { declaredAs, doesWords, limitWords, toolCalled, toolWords } from '../../../analysis/tool-words.ts';
import { workAt } from '../../../analysis/tool-work.ts';
import { atHand, reaches } from '../../../analysis/tools.ts';
import { own } from '../../../model/steps.ts';
import { formatLimit } from '../../../quantities/index.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** Something is set or read, its step names no tool, and the shop has none available that can do it. */
export const noTool: Rule = {
  code: 'no-tool',
  severity: 'error',
  since: '0.2.0',
  title: 'Something is set or read, but neither the step nor the shop has a tool for it.',
  eachStep(step, setting, report) {
    for (const work of workAt(setting, step)) {
      const { station, kind, limits } = work;
      // Words in quotes may name the tool; in a test the words after `with` are its conditions.
      if (step.tools.length > 0 || (own(step, 'conditions') ?? []).length > 0) continue;
      const tools = atHand(setting, work);
      const short = limits.find((judged) => !tools.some((asset) => reaches(work, judged, asset)));
      if (tools.length > 0 && short === undefined) continue;
      const tool = toolCalled(kind);
      const where =
        station === null ? say`the shop` : say`the shop, fixed at ${stationWords(setting, station)} or loose`;
      const none = tools.length === 0;
      report({
        at: step,
        rootCause: `no-tool:${station}:${kind}:${none ? '' : formatLimit(short!.limit)}`,
        message: none
          ? say`No ${tool} is named, and there is none in ${where}.`
          : say`No ${tool} is named, and none in ${where}${station === null ? '' : say`,`} ${doesWords(work)} ${limitWords(short!)}.`,
        why: none
          ? say`the bench hand would have to guess.`
          : say`${listed(tools.map(toolWords))} ${tools.length === 1 ? say`does` : say`do`} not reach it.`,
        help: say`Add one to the shop with “${declaredAs(kind)}”, or name it in the step: “with "…"”.`,
      });
    }
  },
};
