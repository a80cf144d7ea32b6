import type { Asset, AssetKind } from '../model/shop.ts';
import { decimalsOf, decimalValue } from '../quantities/decimal.ts';
import { formatLimit, formatQuantity, roundTo } from '../quantities/index.ts';
import type { Kind, Quantity } from '../quantities/types.ts';
import type { JudgedLimit } from './limits.ts';
import type { ToolWork } from './tool-work.ts';

const called: { readonly [kind in Kind]?: string } = {
  torque: 'torque wrench',
  pressure: 'gauge',
  force: 'force gauge',
  resistance: 'resistance meter',
};

/** What the trade calls a tool for such work. */
export function toolCalled(kind: Kind | null): string {
  return (kind === null ? undefined : called[kind]) ?? 'measuring tool';
}

/** The word that declares one in a shop. */
export function declaredAs(kind: Kind | null): AssetKind {
  return kind === 'torque' ? 'wrench' : kind === 'pressure' ? 'gauge' : 'tool';
}

/** `TW-80 (16 to 80 N·m)` */
export function toolWords({ name, range }: Asset): string {
  return range === null ? name : `${name} (${formatLimit(range)})`;
}

/** `set`, `read` */
export function doWords({ does }: ToolWork): string {
  return does === 'set' ? 'set' : 'read';
}

/** `250 bar +8 −0 of A-220` */
export function limitWords({ limit, number }: JudgedLimit): string {
  return `${formatLimit(limit)}${number === null ? '' : ` of ${number}`}`;
}

/** A calculated quantity, to three figures: enough to see. */
export function workedOut(quantity: Quantity): string {
  const size = Math.abs(decimalValue(quantity.number).valueOf());
  const places = size === 0 ? 0 : Math.max(0, 2 - Math.floor(Math.log10(size)));
  return formatQuantity(roundTo(quantity, quantity.unit, Math.min(places, decimalsOf(quantity.number)), 'nearest')!);
}

/** What to do: use the better tool, or else the given advice. */
export function takeOr(better: Asset | null, otherwise: string): string {
  return better === null ? otherwise : `Use ${toolWords(better)}.`;
}
