import type { Allow } from '../model/source.ts';
import { titleOf } from '../model/titles.ts';
import type { TableBlock } from './model.ts';
import type { PrintContext } from './print-context.ts';
import { allSteps } from './print-context.ts';

/** Every concession with its reason, wherever it is written: the last table of the sheet. */
export function concessionsTable(setting: PrintContext): TableBlock | null {
  const { procedure, words } = setting;
  const { places } = words;
  const at = (where: string, allow: readonly Allow[]) => allow.map(({ rule, because }) => ({ where, rule, because }));
  const all = [
    ...at(places.procedure, procedure.allow),
    ...at(places.shop, procedure.shop.allow),
    ...at(places.family, procedure.family.allow),
    ...procedure.family.parts.flatMap((part) => at(`${places.part} ${titleOf(part)}`, part.allow)),
    ...procedure.specs.flatMap((spec) => at(`${places.spec} ${titleOf(spec)}`, spec.allow)),
    ...setting.numbers.flatMap((number) => at(`${places.number} ${number.name}`, number.allow)),
    ...procedure.stages.flatMap((stage, index) => at(`${places.stage} ${index + 1}`, stage.allow)),
    ...procedure.repairs.flatMap((repair, index) => at(`${places.repair} R${index + 1}`, repair.allow)),
    ...allSteps(setting).flatMap((step) => at(`${places.step} ${step.number}`, step.allow)),
  ];
  if (all.length === 0) return null;
  const { concessions, where, rule, reason } = words.sections;
  return {
    kind: 'table',
    title: concessions,
    columns: [
      { head: where, share: 3 },
      { head: rule, share: 3 },
      { head: reason, share: 6 },
    ],
    rows: all.map((one) => [{ text: one.where, strong: true }, { text: one.rule }, { text: one.because }]),
  };
}
