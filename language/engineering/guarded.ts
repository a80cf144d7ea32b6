import type { Asset, DecisionRule } from '../model/shop.ts';
import type { Limit } from '../quantities/types.ts';
import { type Window, window } from '../quantities/window.ts';
import { acceptance } from './decision.ts';
import { permissibleError } from './tool-error.ts';

/**
 * What a tool of the shop may show of a limit, in its own unit and on its marks: see `acceptance`. Its error is taken
 * at the upper end, where one in percent of the reading is largest. Null: the shop does not say how far the tool may be
 * off, the limit has no end, or the tool reads another kind.
 */
export function guardedOn(
  tool: Pick<Asset, 'within' | 'accuracyClass' | 'range' | 'graduated'>,
  limit: Limit,
  rule: DecisionRule,
): { readonly window: Window; readonly shut: boolean } | null {
  const exact = window(limit);
  const end = exact.high ?? exact.low;
  const error = end === null ? null : permissibleError(tool, end);
  if (end === null || error === null) return null;
  return acceptance(exact, error, rule, tool.graduated, tool.range?.high.unit ?? end.unit);
}
