import { specFor } from '../../model/spec-for.ts';
import { capital, titleOf } from '../../model/titles.ts';
import { rateWords } from '../figures/rates.ts';
import type { TableBlock } from '../model.ts';
import { numbersOf, type PrintContext } from '../print-context.ts';

/** Every spec with its limits, a row for each part number that has its own; each with its source. */
export function specsTable(setting: PrintContext): TableBlock {
  const { procedure, words } = setting;
  const { table } = words;
  const rows = procedure.specs.flatMap((spec) => {
    const seen = new Map<string, string[]>();
    for (const number of numbersOf(setting)) {
      const value = specFor(procedure, spec.name, number);
      const { rebuilt = null, inService = null, whenNew = null, sourceText = null } = value ?? {};
      const limit = (one: typeof rebuilt) => (one === null ? '' : words.limit(one));
      const told = [
        rebuilt === null ? '' : rateWords(words, rebuilt, spec.per, value?.rateFrom ?? null),
        limit(inService),
        limit(whenNew),
        sourceText ?? '',
      ];
      const key = JSON.stringify(told);
      seen.set(key, [...(seen.get(key) ?? []), number ?? '']);
    }
    return [...seen].map(([key, numbers], index) => [
      { text: index === 0 ? capital(titleOf(spec)) : '', strong: true },
      { text: seen.size === 1 ? '' : numbers.join(', ') },
      ...(JSON.parse(key) as string[]).map((text, at) => ({ text, strong: at === 0 })),
    ]);
  });
  return {
    kind: 'table',
    title: table.title,
    columns: [
      { head: table.spec, share: 4 },
      { head: words.units.number, share: 3 },
      { head: words.limits.rebuilt, share: 4 },
      { head: words.limits.inService, share: 3 },
      { head: words.limits.whenNew, share: 3 },
      { head: words.limits.source, share: 4 },
    ],
    rows,
  };
}
