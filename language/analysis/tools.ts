import type Fraction from 'fraction.js';
import { changesSetting, settingThroughAdapter } from '../engineering/adapter.ts';
import { permissibleError } from '../engineering/tool-error.ts';
import type { Fix } from '../model/diagnostic.ts';
import type { Procedure, Step, ToolUse } from '../model/procedure.ts';
import type { Asset, Shop } from '../model/shop.ts';
import type { Source } from '../model/source.ts';
import { readingOf } from '../model/steps.ts';
import { decimalsOf, decimalValue, exactText, tenTo, written } from '../quantities/decimal.ts';
import {
  asDifference,
  between,
  compare,
  convert,
  convertDifference,
  exactWindow,
  formatLimit,
  kindOfLimit,
  kindOfUnit,
  unitOf,
  window,
} from '../quantities/index.ts';
import type { Difference, Kind, Limit, Quantity, UnitName } from '../quantities/types.ts';
import { type Said, say } from '../say/say.ts';
import type { JudgedLimit } from './limits.ts';
import { type ToolWork, toolWork } from './tool-work.ts';

type AssetUse = Extract<ToolUse, { form: 'asset' }>;
type KindUse = Extract<ToolUse, { form: 'kind' }>;

/** Steps whose tool is in the hand: the reading of a test may be taken on the station's gauge. */
export function byHand(step: Step): boolean {
  return step.verb !== 'test' && step.verb !== 'read' && step.verb !== 'set';
}

export function assetOf(shop: Shop, use: AssetUse): Asset | undefined {
  return shop.assets.find(({ name }) => name === use.name);
}

/** Whether a tool sets or measures such a thing at all. A tool that the shop does not describe gets the benefit of the doubt. */
export function suits(asset: Asset, kind: Kind | null): boolean {
  const own = kindOfTool(asset);
  return own === null || kind === null ? asset.kind !== 'wrench' : own === kind;
}

/** Null if the shop does not say, or says two kinds, which is another rule's finding. */
function kindOfTool({ kind, range, graduated, within }: Asset): Kind | null {
  if (kind === 'wrench') return 'torque';
  const kinds = new Set([range?.high, graduated, within].flatMap((one) => (one == null ? [] : kindOfUnit(one.unit))));
  kinds.delete('ratio');
  const [only] = kinds;
  if (only !== undefined) return kinds.size === 1 ? only : null;
  return kind === 'gauge' ? 'pressure' : null;
}

/** Whether a tool is of the kind that a step requires (`with wrench 16..80 N·m`): their ranges overlap. */
export function isAsked(asset: Asset, { kind, range }: KindUse): boolean {
  if (asset.kind !== kind) return false;
  if (range === null || asset.range === null) return true;
  return compare(asset.range.high, range.low) === 1 && compare(asset.range.low, range.high) === -1;
}

/** What must lie on a tool's scale: of a torque what the wrench is set to, of a reading both ends of its limit. */
function onScale(work: ToolWork, limit: Limit, asset: Asset): Quantity[] {
  const { low, high, nominal } = window(limit);
  if (work.does !== 'set') return low === null && high === null ? present(nominal) : present(low, high);
  const torque = aimOf(limit);
  return torque === null ? [] : [settingOn(work.step, asset, torque)];
}

/** The target: the nominal, or the middle of a range. */
export function aimOf(limit: Limit): Quantity | null {
  const { low, high, nominal } = window(limit);
  const top = low === null || high === null ? null : convert(high, low.unit);
  if (nominal !== null || low === null || top === null) return nominal ?? low ?? high;
  return { number: exactText(decimalValue(low.number).add(top).div(2)), unit: low.unit };
}

/** The setting of the wrench for a torque, if it turns the nut through an adapter. */
export function settingOn(step: Step, asset: Asset, torque: Quantity): Quantity {
  const use = step.tools.find((tool): tool is AssetUse => tool.form === 'asset' && tool.name === asset.name);
  if (use === undefined || use.adapter === null || asset.length === null || !changesSetting(use.adapter)) return torque;
  return settingThroughAdapter(torque, asset.length, use.adapter) ?? torque;
}

function present(...quantities: readonly (Quantity | null)[]): Quantity[] {
  return quantities.filter((one) => one !== null);
}

/** The whole limit is on the tool's scale. A difference is read anywhere on it. */
export function reaches(work: ToolWork, { limit }: JudgedLimit, asset: Asset): boolean {
  const { range } = asset;
  if (work.does === 'difference' || range === null) return true;
  return onScale(work, limit, asset).every((one) => compare(one, range.low) !== -1 && compare(one, range.high) !== 1);
}

/** Tools that suit the work and are available where it is done. */
export function atHand({ shop }: Pick<Procedure, 'shop'>, work: ToolWork): Asset[] {
  return shop.assets.filter((asset) => suits(asset, work.kind) && isAt(work.station, asset));
}

/** A loose tool goes anywhere; a fixed one stays at its station. */
export function isAt(station: string | null, asset: Asset): boolean {
  return asset.at === null || station === null || asset.at === station;
}

/** Tools that suit the work and that its step names, or whose kind it names. */
export function namedTools({ shop }: Pick<Procedure, 'shop'>, { step, kind }: ToolWork): Asset[] {
  return step.tools
    .flatMap((use) => {
      if (use.form === 'asset') return assetOf(shop, use) ?? [];
      return use.form === 'kind' ? shop.assets.filter((asset) => isAsked(asset, use)) : [];
    })
    .filter((asset) => suits(asset, kind));
}

/**
 * The tools that a limit is set or read with: those that the step names, or else the station's gauge, or else the loose
 * ones. Only those that reach it. None if the step names a tool in quotes: nothing is known about that one.
 */
function toolsFor(procedure: Pick<Procedure, 'shop'>, work: ToolWork, judged: JudgedLimit): Asset[] {
  const named = namedTools(procedure, work);
  const reaching = (tools: readonly Asset[]) => tools.filter((asset) => reaches(work, judged, asset));
  if (named.length > 0) return reaching(named.filter((asset) => isAt(work.station, asset)));
  const { step } = work;
  if (byHand(step) ? step.tools.length > 0 : step.tools.some((use) => use.form === 'words')) return [];
  const all = reaching(atHand(procedure, work));
  const fixed = all.filter((asset) => asset.at !== null);
  return fixed.length > 0 ? fixed : all;
}

/** A rule's verdict on one tool at one limit: whether it will do. */
export type Passes = (asset: Asset, work: ToolWork, judged: JudgedLimit) => boolean;

/** A limit for which none of its tools will do: the first of them is named. */
export interface Unfit {
  readonly work: ToolWork;
  readonly judged: JudgedLimit;
  readonly asset: Asset;
  /** Another tool of the shop that would do. */
  readonly better: Asset | null;
  /** Where the step names the tool; null if it does not. */
  readonly use: AssetUse | null;
}

export function unfitTools(procedure: Pick<Procedure, 'shop'>, all: readonly ToolWork[], passes: Passes): Unfit[] {
  return all.flatMap((work) => {
    for (const judged of work.limits) {
      const tools = toolsFor(procedure, work, judged);
      const [asset] = tools;
      if (asset === undefined || tools.some((one) => passes(one, work, judged))) continue;
      return [{ work, judged, asset, better: betterTool(procedure, work, passes), use: useOf(work.step, asset) }];
    }
    return [];
  });
}

/** An available tool that reaches every limit of the work and will do for it. */
export function betterTool(
  procedure: Pick<Procedure, 'shop'>,
  work: ToolWork,
  passes: Passes = () => true,
): Asset | null {
  const fits = (asset: Asset) =>
    work.limits.every((judged) => reaches(work, judged, asset) && passes(asset, work, judged));
  return atHand(procedure, work).find((asset) => asset.range !== null && fits(asset)) ?? null;
}

function useOf(step: Step, asset: Asset): AssetUse | null {
  return step.tools.find((use): use is AssetUse => use.form === 'asset' && use.name === asset.name) ?? null;
}

/** One cause for one tool and one limit, however many steps set or read it with that tool. */
export function toolCause(what: string, { work, asset, judged }: Unfit): string {
  return `${what}:${asset.name}:${work.does}:${formatLimit(judged.limit)}`;
}

/** What a fix needs to replace the named tool with another. */
export interface Exchange {
  readonly source: Source;
  readonly name: string;
}

/** Null if the tool is not named in the step's own text, or is used with an adapter of its own. */
export function exchange(step: Step, use: AssetUse | null, better: Asset | null): Exchange | undefined {
  return use === null || better === null || use.adapter !== null || step.call !== null
    ? undefined
    : { source: use.source, name: better.name };
}

/** The fix of a rule on tools: another one of the shop. */
export function exchanged({ source, name }: Exchange): Fix<Said> {
  return { title: say`Take ${name}`, safe: false, edits: [{ source, text: name }] };
}

/** Play, run-out, drag: with an upper end only, what is let through begins at nothing. */
const fromNothing: ReadonlySet<Kind> = new Set<Kind>(['length', 'force', 'torque', 'resistance']);

export interface Width {
  readonly width: Difference;
  /** An end on either side; else from nothing up. */
  readonly twoEnds: boolean;
}

/** The width of what a limit lets through. Null: it is open on a side. */
export function widthOf(limit: Limit): Width | null {
  const { low, high } = window(limit);
  if (high === null) return null;
  if (low === null)
    return fromNothing.has(kindOfUnit(high.unit)) ? { width: asDifference(high), twoEnds: false } : null;
  const width = between(high, low);
  return width === null || width.number.startsWith('-') ? null : { width, twoEnds: true };
}

/** What a tool is good for at a limit that it reads, and how often that goes into half of its width. */
export interface Fit extends Width {
  readonly error: Difference;
  /** Half the width over the error; null: the tool has none. */
  readonly ratio: Fraction | null;
}

/** Null: the limit has no width, or the shop does not say what the tool is good for. */
export function buildFit(asset: Asset, limit: Limit): Fit | null {
  const room = widthOf(limit);
  const error = room === null ? null : permissibleError(asset, window(limit).high!);
  const width = room === null || error === null ? null : exactWidth(limit, error.unit);
  if (room === null || error === null || width === null) return null;
  const size = decimalValue(error.number);
  return { ...room, error, ratio: size.equals(0) ? null : width.div(2).div(size) };
}

/** The width of a limit in a unit, with nothing cut: at an equal bound the last digit would decide. Null: it has none. */
export function exactWidth(limit: Limit, unit: UnitName): Fraction | null {
  const room = widthOf(limit);
  const exact = room === null ? null : exactWindow(limit, unit);
  if (room === null || exact === null) return null;
  return exact.low === null ? convertDifference(room.width, unit) : exact.high!.sub(exact.low);
}

/**
 * Whether a wrench's error fits inside the limits of a torque, set where it fits best: for an error in percent there
 * is a setting s with low ≤ s·(1 − e) and s·(1 + e) ≤ high. A limit that is open on a side has one always.
 */
export function settingFits(asset: Asset, limit: Limit): boolean {
  const unit = window(limit).high?.unit;
  const exact = unit === undefined ? null : exactWindow(limit, unit);
  if (asset.within === null || unit === undefined || exact === null) return true;
  const { low: from, high: to } = exact;
  if (from === null || to === null) return true;
  if (asset.within.unit === '%') {
    const error = decimalValue(asset.within.number).div(100);
    return from.mul(error.add(1)).compare(to.mul(error.neg().add(1))) <= 0;
  }
  const error = convertDifference(asset.within, unit);
  return error === null || to.sub(from).compare(error.mul(2)) >= 0;
}

/** The least that can be distinguished: half a mark of a scale, a whole digit of a display. Null: the shop says no marks. */
export function readable({ graduated, digital }: Asset): Fraction | null {
  return graduated === null ? null : decimalValue(graduated.number).div(digital ? 1 : 2);
}

/** The tool that a test is read on, as the procedure and the shop say it. Null: none is known, or its words name it. */
export function findGauge(procedure: Procedure, test: string, limit: Limit): Asset | null {
  const kind = kindOfLimit(limit);
  for (const work of toolWork(procedure)) {
    const { step } = work;
    if (work.does !== 'read' || work.kind !== kind || readingOf(step) !== test) continue;
    const [tool] = toolsFor(procedure, work, { limit, number: null, acceptance: 'simple' });
    if (tool !== undefined) return tool;
  }
  return null;
}

/** The unit on a tool. Null: the shop does not say. */
export function unitOnTool(tool: Asset | null, kind: Kind): UnitName | null {
  const unit = tool?.range?.high.unit ?? tool?.graduated?.unit ?? null;
  return unit !== null && kindOfUnit(unit) === kind ? unit : null;
}

/** How finely a limit has to be read where the shop does not say how fine the tool's marks are: an eighth of its window. */
const parts = 8;

/** From one mark to the next that a reading is taken to, in a unit: of the tool, else as few digits as serve the limit. */
export function markOn(tool: Asset | null, limit: Limit, unit: UnitName): Difference {
  const own = tool?.graduated ?? null;
  if (own !== null && own.unit === unit && !own.number.startsWith('-') && Number(own.number) > 0) return own;
  const { low, high, nominal } = window(limit);
  const size = (quantity: Quantity) =>
    (Number(quantity.number) * unitOf(quantity.unit).factor.valueOf()) / unitOf(unit).factor.valueOf();
  const width = low !== null && high !== null ? size(high) - size(low) : 0;
  const figure = nominal ?? low ?? high;
  const finest = width > 0 ? width / parts : figure === null ? 1 : 10 ** -decimalsOf(figure.number);
  const power = Math.max(-9, Math.min(9, Math.floor(Math.log10(finest))));
  return { number: written(tenTo(power), Math.max(0, -power)), unit };
}
