import type { Language } from '../../i18n/index.ts';
import type { Procedure } from '../../model/procedure.ts';
import { adjusters } from './adjusters.ts';
import { joints } from './joints.ts';
import { layoutOf } from './layout.ts';
import type { GroupKind, SpecGroup, SpecItem, Specs } from './model.ts';
import { others } from './others.ts';
import { remarksOf } from './remarks.ts';
import { measurements, tests } from './tests.ts';

/**
 * All figures that a procedure uses, for every part number: plain data, pure. Limits are worded as the sheet prints
 * them, since both take the same functions.
 */
export function buildSpecs(procedure: Procedure, language: Language = 'en'): Specs {
  const layout = layoutOf(procedure, language);
  const { words } = layout.setting;
  const { name, title, revision, family, shop, numbers } = procedure;
  const groups: [GroupKind, SpecItem[]][] = [
    ['joints', joints(layout)],
    ['adjusters', adjusters(layout)],
    ['tests', tests(layout)],
    ['measurements', measurements(layout)],
  ];
  // What is left over is known when all others are laid out.
  groups.push(['others', others(layout)]);
  const shown = groups
    .filter(([, items]) => items.length > 0)
    .map(([kind, items]): SpecGroup => ({ kind, title: words.specs.groups[kind], items }));
  return {
    procedure: name,
    title,
    revision,
    family: family.title,
    shop: shop.title,
    columns:
      numbers.length === 0
        ? [{ number: null, title: '' }]
        : numbers.map((number) => ({ number: number.name, title: number.title === number.name ? '' : number.title })),
    groups: shown,
    remarks: remarksOf(procedure, shown, words),
  };
}

/** How many things are missing; what is the same for several part numbers counts once. */
export function missingCount({ groups }: Specs): number {
  return groups
    .flatMap(({ items }) => items.flatMap(({ figures }) => figures))
    .reduce(
      (sum, { cells }) => sum + new Set(cells.flatMap((cell) => cell?.missing.map((one) => one.words) ?? [])).size,
      0,
    );
}
