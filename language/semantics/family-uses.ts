import type { Family } from '../model/family.ts';
import type { Procedure } from '../model/procedure.ts';
import type { NameUse } from '../model/source.ts';
import { readingOf } from '../model/steps.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { nearest } from '../syntax/nearest.ts';
import type { Context } from './context.ts';
import { firstNamed } from './first-named.ts';
import type { Scope } from './scope.ts';

/** Names in a family that only shops and procedures declare: the stock of a part, and the tests. */
export function familyUses(context: Context, node: ast.Family, family: Family, scope: Scope) {
  const stocks = node.items.some(isChosen) ? scope.stocks() : [];
  for (const item of node.items) {
    // Without a stock anywhere the shop is somewhere else.
    if (item.$type === 'Part' && stocks.length > 0)
      for (const fact of item.facts)
        if (fact.$type === 'PartChosen') context.find(fact.stock.name, 'stock', stocks, context.source(fact.stock));
  }
  const tests = scope.testsFor(node.name);
  // A family that no test is written for yet can name tests that are to come.
  if (tests.isEmpty) return;
  for (const item of node.items) {
    if (item.$type === 'Adjuster') {
      const { name } = item.sets;
      const use = context.source(item.sets);
      const test = firstNamed(family.provenBy, name) ?? tests.find(name);
      if (test === null)
        context.unknown(name, 'test', [...family.provenBy.map((one) => one.name), ...tests.names()], use);
      else context.link(use, test.source, name, 'test');
    } else if (item.$type === 'ProvenBy')
      for (const ref of item.tests) {
        const use = context.source(ref);
        const test = tests.find(ref.name);
        // One that is tested nowhere is a gate that is missing, unless it is a slip for one that is.
        if (test !== null) context.link(use, test.source, ref.name, 'test');
        else if (nearest(ref.name, tests.names()).length > 0) context.unknown(ref.name, 'test', tests.names(), use);
      }
  }
}

/** What is specified, tested, looked at or read in a procedure. */
export function testsOf({ specs, stages, repairs }: Procedure): NameUse[] {
  return [
    ...specs,
    ...[...stages, ...repairs].flatMap(({ steps }) =>
      steps.flatMap((step): NameUse[] => {
        if (step.verb === 'check' || step.verb === 'measure') return [...step.objects];
        const name = readingOf(step);
        return name === null ? [] : [{ name, source: step.source }];
      }),
    ),
  ].map(({ name, source: at }) => ({ name, source: at }));
}

function isChosen(item: ast.FamilyItem): boolean {
  return item.$type === 'Part' && item.facts.some((fact) => fact.$type === 'PartChosen');
}
