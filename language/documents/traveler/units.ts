import type { Procedure, Step, ToolUse } from '../../model/procedure.ts';
import type { Asset } from '../../model/shop.ts';
import { specFor } from '../../model/spec-for.ts';
import { own } from '../../model/steps.ts';
import { decimalValue, exactText } from '../../quantities/decimal.ts';
import type { Difference, Kind, Limit, UnitName } from '../../quantities/index.ts';
import { compare, kindOfUnit, window } from '../../quantities/index.ts';
import { limitText, unitOfLimit } from './figures.ts';
import type { Told } from './names.ts';
import type { Setting } from './print-context.ts';

/** Where a step is done. */
export interface Where {
  readonly station: string | null;
}

/** Assets fixed at a station, in the shop's order. */
export function assetsAt(procedure: Procedure, station: string | null): Asset[] {
  return station === null ? [] : procedure.shop.assets.filter((asset) => asset.at === station);
}

/** What a tool reads: its range, its marks, and how far it may be off, as far as the shop says. */
export type Scale = Pick<Asset, 'range' | 'graduated'> &
  Partial<Pick<Asset, 'name' | 'within' | 'accuracyClass' | 'digital'>>;

/**
 * The scale that a limit is read on: of the step's own tool, else of a gauge at the station. It measures the limit's
 * kind; of several it is the first whose range holds the limit.
 */
export function scaleFor(setting: Setting, step: Step, where: Where, kind: Kind, limit: Limit | null): Scale | null {
  const own = step.tools.flatMap((tool): Scale[] => {
    if (tool.form === 'kind') return [{ range: tool.range, graduated: null }];
    const known = tool.form === 'asset' ? asset(setting.procedure, tool.name) : undefined;
    return known === undefined ? [] : [known];
  });
  for (const scales of [own, assetsAt(setting.procedure, where.station)]) {
    const fitting = scales.filter((scale) => {
      const unit = unitOfScale(scale);
      return unit !== null && kindOfUnit(unit) === kind;
    });
    const found = fitting.find((scale) => limit !== null && holds(scale, limit)) ?? fitting[0];
    if (found !== undefined) return found;
  }
  return null;
}

function unitOfScale({ range, graduated }: Scale): UnitName | null {
  return range?.high.unit ?? graduated?.unit ?? null;
}

/** All of a limit lies on the dial. */
function holds({ range }: Scale, limit: Limit): boolean {
  if (range === null) return false;
  const { low, high, nominal } = window(limit);
  return [low, high, nominal].every(
    (one) => one === null || ((compare(one, range.low) ?? -1) >= 0 && (compare(one, range.high) ?? 1) <= 0),
  );
}

/** The unit on the tool in the hand. Null where no tool measures this kind of thing. */
export function toolUnit(
  setting: Setting,
  step: Step,
  where: Where,
  kind: Kind | null,
  limit: Limit | null = null,
): UnitName | null {
  const scale = kind === null ? null : scaleFor(setting, step, where, kind, limit);
  return scale === null ? null : unitOfScale(scale);
}

/** The marks of the tool that a limit is read on. */
export function markAt(setting: Setting, step: Step, where: Where, limit: Limit): Difference | null {
  const unit = unitOfLimit(limit);
  return unit === null ? null : (scaleFor(setting, step, where, kindOfUnit(unit), limit)?.graduated ?? null);
}

/** The least that can be read there: half a mark; of a digital tool, all of its last digit. */
export function leastAt(setting: Setting, step: Step, where: Where, limit: Limit): Difference | null {
  const unit = unitOfLimit(limit);
  const scale = unit === null ? null : scaleFor(setting, step, where, kindOfUnit(unit), limit);
  const mark = scale?.graduated ?? null;
  if (mark === null || scale?.digital === true) return mark;
  return { ...mark, number: exactText(decimalValue(mark.number).div(2)) };
}

/** The unit that a reading of this step is written down in; empty where none is known. */
export function readingUnit(setting: Setting, step: Step, where: Where): string {
  const unit = unitRead(setting, step, where);
  return unit === null ? '' : setting.words.wording.unit(unit, false);
}

function unitRead(setting: Setting, step: Step, where: Where): UnitName | null {
  const limit = readingLimit(setting, step);
  const written = limit === null ? null : unitOfLimit(limit);
  const kind =
    step.verb === 'choose'
      ? 'length'
      : written === null
        ? (own(step, 'test')?.reads ?? (step.verb === 'measure' ? 'length' : null))
        : kindOfUnit(written);
  if (step.verb === 'choose') return stockUnit(setting, step) ?? toolUnit(setting, step, where, 'length');
  return toolUnit(setting, step, where, kind, limit) ?? written;
}

/** The limit that the reading of a step is held against, if any. */
function readingLimit(setting: Setting, step: Step): Limit | null {
  const difference = own(step, 'stretch') ?? own(step, 'spread') ?? null;
  if (difference !== null) return difference;
  const use = own(step, 'limit') ?? null;
  if (use !== null) return use.form === 'limit' ? use.limit : anyLimit(setting, use.spec);
  if (step.verb === 'test') return step.test.inTime;
  return step.verb === 'read' || step.verb === 'set' ? anyLimit(setting, step.reading) : null;
}

function anyLimit(setting: Setting, spec: string): Limit | null {
  const values =
    setting.numbers.length === 0
      ? [specFor(setting.procedure, spec, null)]
      : setting.numbers.map(({ name }) => specFor(setting.procedure, spec, name));
  return values.flatMap((value) => value?.rebuilt ?? value?.inService ?? [])[0] ?? null;
}

function stockUnit(setting: Setting, step: Step): UnitName | null {
  const part = setting.procedure.family.parts.find(({ name }) => step.objects.some((object) => object.name === name));
  const stock = setting.procedure.shop.stocks.find(({ name }) => name === part?.chosenFrom);
  return stock?.sizes[0]?.unit ?? null;
}

function asset(procedure: Procedure, name: string): Asset | undefined {
  return procedure.shop.assets.find((other) => other.name === name);
}

/** `TW-80, 16 to 80 N·m`; a kind of tool with its range; or the author's words. */
export function toolWords({ procedure, words }: Told, tool: ToolUse): string {
  const { tools, wording, quantity } = words;
  switch (tool.form) {
    case 'asset': {
      const range = asset(procedure, tool.name)?.range ?? null;
      const { adapter } = tool;
      const behind =
        adapter === null
          ? ''
          : ` ${adapter.angle === null ? tools.adapter({ length: quantity(adapter.length) }) : tools.adapterAt({ length: quantity(adapter.length), angle: quantity(adapter.angle) })}`;
      return `${range === null ? tool.name : `${tool.name}, ${limitText(range, wording)}`}${behind}`;
    }
    case 'kind': {
      const name = tools.called[tool.kind];
      return tool.range === null ? name : `${name}, ${limitText(tool.range, wording)}`;
    }
    case 'words':
      return tool.text;
  }
}
