import { limitWords, takeOr, toolCalled } from '../../../analysis/tool-words.ts';
import { workAt } from '../../../analysis/tool-work.ts';
import {
  buildFit,
  type Exchange,
  exchange,
  exchanged,
  type Passes,
  toolCause,
  unfitTools,
} from '../../../analysis/tools.ts';
import { guardedOn } from '../../../engineering/guarded.ts';
import { formatQuantity } from '../../../quantities/index.ts';
import { say, term } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** Limits are guarded, and no mark of the tool is far enough inside this one. */
export const guardLeavesNothing: Rule<Exchange> = {
  code: 'guard-leaves-nothing',
  severity: 'error',
  since: '0.2.0',
  references: ['ISO 14253-1'],
  title: 'With guarded acceptance, no reading of the tool passes.',
  eachStep(step, setting, report) {
    for (const unfit of unfitTools(setting, workAt(setting, step), isOpen)) {
      const { work, judged, asset, better, use } = unfit;
      const { error } = buildFit(asset, judged.limit)!;
      report({
        at: work.step,
        source: use?.source,
        rootCause: toolCause('coarse', unfit),
        message: say`${limitWords(judged)} is ${term(judged.acceptance)}, and ${asset.name} is accurate to ±${formatQuantity(error)}${asset.graduated === null ? '' : say` with marks of ${formatQuantity(asset.graduated)}`}.`,
        why: say`no reading on it can pass, and every unit would be held.`,
        help: takeOr(better, say`Use a finer ${toolCalled(work.kind)}, or write “acceptance simple” at the spec.`),
        data: exchange(work.step, use, better),
      });
    }
  },
  fix: exchanged,
};

const isOpen: Passes = (asset, work, { limit, acceptance }) =>
  work.does !== 'read' ||
  acceptance === 'simple' ||
  buildFit(asset, limit) === null ||
  guardedOn(asset, limit, acceptance)?.shut !== true;
