import { falseAccept, shareOf } from '../../engineering/decision.ts';
import type { Procedure } from '../../model/procedure.ts';
import type { DecisionRule } from '../../model/shop.ts';
import { specWords, sheetWords as words } from './labels.ts';
import type { SpecGroup } from './model.ts';

/** How the ratio is reckoned, if there is one; and each decision rule that a limit is judged by, with what it risks. */
export function remarksOf({ shop, specs, numbers }: Procedure, groups: readonly SpecGroup[]): string[] {
  const cells = groups.flatMap(({ items }) => items.flatMap(({ figures }) => figures.flatMap((one) => one.cells)));
  if (!cells.some((cell) => cell?.ratio != null)) return [];
  const own = [...specs, ...numbers.flatMap(({ values }) => values)].flatMap(({ acceptance }) => acceptance ?? []);
  const rules: DecisionRule[] = [...new Set([shop.acceptance.rule, ...own])];
  return [specWords.ratioNote, ...rules.map(judged)];
}

function judged(rule: DecisionRule): string {
  const percent = falseAccept(shareOf(rule)) * 100;
  return specWords.judged(words.acceptance[rule], percent.toFixed(percent < 10 ? 1 : 0));
}
