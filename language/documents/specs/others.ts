import type { PartNumber } from '../../model/procedure.ts';
import { specFor } from '../../model/spec-for.ts';
import { own } from '../../model/steps.ts';
import { capital, titleOf } from '../../model/titles.ts';
import { limitText, type Quantity } from '../../quantities/index.ts';
import type { Which } from '../figures/held.ts';
import { rateWords } from '../figures/rates.ts';
import { objectWords, specTitle } from '../names.ts';
import { lineOf, missing, wordsCell } from './cells.ts';
import { figure, type Layout, lineOfSpec, merged, stated } from './layout.ts';
import type { SpecCell, SpecItem } from './model.ts';

export function others(layout: Layout): SpecItem[] {
  const { words } = layout.setting;
  const { specs, family } = layout.procedure;
  const left = specs.filter(({ name }) => !layout.used.has(name));
  return [
    ...left.map((spec): SpecItem => {
      const steps = layout.done
        .filter(({ step }) => {
          const target = own(step, 'choose')?.target;
          const aim = target?.form === 'spec' ? target.spec : null;
          return [own(step, 'rate'), aim, own(step, 'test')?.hold?.of].includes(spec.name);
        })
        .map(({ step }) => step.number);
      return {
        title: capital(titleOf(spec)),
        facts: steps.length === 0 ? [words.specs.facts.unused] : [],
        line: lineOf(spec.source),
        figures: (['rebuilt', 'inService', 'whenNew'] as const)
          .filter(
            (which) =>
              which === 'rebuilt' ||
              layout.numbers.some(
                (number) => specFor(layout.procedure, spec.name, number?.name ?? null)?.[which] != null,
              ),
          )
          .map((which) =>
            stated(
              layout,
              which === 'rebuilt' ? words.specs.what.value : words.limits[which],
              spec.source,
              (number) => plainCell(layout, spec.name, spec.per, number, which),
              steps,
            ),
          ),
      };
    }),
    ...chosen(layout),
    ...family.parts.flatMap((part): SpecItem[] => {
      if (part.bindsOver === null) return [];
      const cell = wordsCell(words.quantity(part.bindsOver), lineOf(part.source));
      return [
        {
          title: capital(titleOf(part)),
          facts: [],
          line: lineOf(part.source),
          figures: [stated(layout, words.specs.what.binds, part.source, () => cell)],
        },
      ];
    }),
  ];
}

/** A value that nothing is measured by: as it is written, with `per` behind it. */
function plainCell(
  layout: Layout,
  name: string,
  per: Quantity | null,
  number: PartNumber | null,
  which: Which,
): SpecCell | null {
  const { words } = layout.setting;
  const value = specFor(layout.procedure, name, number?.name ?? null);
  const line = lineOfSpec(layout, name, number, which);
  const limit = value?.[which] ?? null;
  if (value === null || (limit === null && which !== 'rebuilt')) return null;
  const noSource = value.sourceText === null ? [missing('source', words.specs.missing.source)] : [];
  if (value.notRequired) return wordsCell(words.limits.notRequired, line, noSource, value.sourceText);
  if (limit === null) return wordsCell('', line, [missing('value', words.specs.missing.limit)]);
  const text = rateWords(words, limit, per, which === 'rebuilt' ? value.rateFrom : null);
  return wordsCell(text, line, noSource, value.sourceText);
}

/** What a `choose` says in figures of its own. */
function chosen(layout: Layout): SpecItem[] {
  const { words } = layout.setting;
  const byTitle = new Map<string, SpecItem>();
  for (const done of layout.done) {
    const { step } = done;
    if (step.verb !== 'choose') continue;
    const { choose, neverAbove } = step;
    const aim = choose?.target?.form === 'limit' ? { test: choose.test, limit: choose.target.limit } : null;
    if (aim === null && neverAbove === null) continue;
    const line = lineOf(step.source);
    const noSource = step.sourceText === null ? [missing('source', words.specs.missing.source)] : [];
    const cell = (value: string) => {
      const made = wordsCell(value, line, noSource, step.sourceText);
      return () => made;
    };
    const figures = [
      aim === null
        ? null
        : figure(
            layout,
            words.specs.what.aim({ reading: words.inSentence(specTitle(layout.procedure, aim.test)) }),
            done,
            cell(limitText(aim.limit, words.wording)),
          ),
      neverAbove === null ? null : figure(layout, words.specs.what.never, done, cell(words.quantity(neverAbove))),
    ].filter((figure) => figure !== null);
    const title = capital(objectWords(layout.setting, step.objects).join(', '));
    const before = byTitle.get(title);
    byTitle.set(title, {
      title,
      facts: [],
      line: before?.line ?? line,
      figures: merged([...(before?.figures ?? []), ...figures]),
    });
  }
  return [...byTitle.values()];
}
