import type { Asset, AssetKind } from '../model/shop.ts';
import { decimalsOf, decimalValue } from '../quantities/decimal.ts';
import { formatLimit, formatQuantity, roundTo } from '../quantities/index.ts';
import type { Kind, Quantity } from '../quantities/types.ts';
import { type Filling, type Said, say } from '../say/say.ts';
import type { JudgedLimit } from './limits.ts';
import type { ToolWork } from './tool-work.ts';

const called: { readonly [kind in Kind]?: Said } = {
  torque: say`torque wrench`,
  pressure: say`gauge`,
  force: say`force gauge`,
  resistance: say`resistance meter`,
};

/** What the trade calls a tool for such work. */
export function toolCalled(kind: Kind | null): Said {
  return (kind === null ? undefined : called[kind]) ?? say`measuring tool`;
}

/** The word that declares one in a shop. */
export function declaredAs(kind: Kind | null): AssetKind {
  return kind === 'torque' ? 'wrench' : kind === 'pressure' ? 'gauge' : 'tool';
}

/** `TW-80 (16 to 80 N·m)` */
export function toolWords({ name, range }: Asset): Filling {
  return range === null ? name : say`${name} (${formatLimit(range)})`;
}

/** `set`, `read` */
export function doWords({ does }: ToolWork): Said {
  return does === 'set' ? say`set` : say`read`;
}

/** `sets`, `reads` */
export function doesWords({ does }: ToolWork): Said {
  return does === 'set' ? say`sets` : say`reads`;
}

/** `250 bar +8 −0 of A-220` */
export function limitWords({ limit, number }: JudgedLimit): Filling {
  return number === null ? formatLimit(limit) : say`${formatLimit(limit)} of ${number}`;
}

/** A calculated quantity, to three figures: enough to see. */
export function workedOut(quantity: Quantity): string {
  const size = Math.abs(decimalValue(quantity.number).valueOf());
  const places = size === 0 ? 0 : Math.max(0, 2 - Math.floor(Math.log10(size)));
  return formatQuantity(roundTo(quantity, quantity.unit, Math.min(places, decimalsOf(quantity.number)), 'nearest')!);
}

/** What to do: use the better tool, or else the given advice. */
export function takeOr(better: Asset | null, otherwise: Said): Said {
  return better === null ? otherwise : say`Use ${toolWords(better)}.`;
}
