import { falseAccept, shareOf } from '../../engineering/decision.ts';
import type { Words } from '../../i18n/index.ts';
import type { Procedure } from '../../model/procedure.ts';
import type { DecisionRule } from '../../model/shop.ts';
import type { SpecGroup } from './model.ts';

/** How the ratio is reckoned, if there is one; and each decision rule that a limit is judged by, with what it risks. */
export function remarksOf({ shop, specs, numbers }: Procedure, groups: readonly SpecGroup[], words: Words): string[] {
  const cells = groups.flatMap(({ items }) => items.flatMap(({ figures }) => figures.flatMap((one) => one.cells)));
  if (!cells.some((cell) => cell?.ratio != null)) return [];
  const own = [...specs, ...numbers.flatMap(({ values }) => values)].flatMap(({ acceptance }) => acceptance ?? []);
  const rules: DecisionRule[] = [...new Set([shop.acceptance.rule, ...own])];
  return [words.specs.ratioNote, ...rules.map((rule) => judged(rule, words))];
}

function judged(rule: DecisionRule, words: Words): string {
  const percent = falseAccept(shareOf(rule)) * 100;
  return words.specs.judged({
    rule: words.acceptance[rule],
    percent: words.number(percent.toFixed(percent < 10 ? 1 : 0)),
  });
}
