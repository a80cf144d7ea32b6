import type { Procedure } from '../model/procedure.ts';
import type { Asset } from '../model/shop.ts';
import { readingOf } from '../model/steps.ts';
import { decimalsOf, tenTo, written } from '../quantities/decimal.ts';
import { kindOfLimit, kindOfUnit, unitOf, window } from '../quantities/index.ts';
import type { Difference, Kind, Limit, Quantity, UnitName } from '../quantities/types.ts';
import { toolsFor } from './tool-choice.ts';
import { type ToolWork, toolWork } from './tool-work.ts';

const known = new WeakMap<Procedure, readonly ToolWork[]>();

/** The tool that a test is read on, as the procedure and the shop say it. Null: none is known, or its words name it. */
export function gaugeOfReading(procedure: Procedure, test: string, limit: Limit): Asset | null {
  const kind = kindOfLimit(limit);
  const all = known.get(procedure) ?? toolWork(procedure);
  known.set(procedure, all);
  for (const work of all) {
    const { step } = work;
    if (work.does !== 'read' || work.kind !== kind || readingOf(step) !== test) continue;
    const [tool] = toolsFor(procedure, work, { limit, number: null, acceptance: 'simple' });
    if (tool !== undefined) return tool;
  }
  return null;
}

/** The unit on a tool. Null: nobody says. */
export function unitOnTool(tool: Asset | null, kind: Kind): UnitName | null {
  const unit = tool?.range?.high.unit ?? tool?.graduated?.unit ?? null;
  return unit !== null && kindOfUnit(unit) === kind ? unit : null;
}

/** As fine as a limit wants to be read where nobody says how fine the tool's marks are: an eighth of its window. */
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
