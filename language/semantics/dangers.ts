import { type Danger, type DangerFact, dangerKinds, dangers } from '../model/danger.ts';
import type { Source } from '../model/source.ts';
import { formatQuantity, kindOfUnit, type Quantity, whyNoHazard } from '../quantities/index.ts';
import { say, term } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import type { Context } from './context.ts';
import { lowerQuantity } from './limits.ts';

/** One more fact that a part, a station or a step declares of what can hurt. What is said both ways is reported. */
export function withDanger(
  context: Context,
  known: readonly DangerFact[],
  node: ast.Danger,
  source: Source,
): DangerFact[] {
  // Words of one data rule come without the blanks between them.
  const danger = dangers.find((word) => word.replace(' ', '') === node.danger.replace(/\s+/gu, ''))!;
  const other = known.find((fact) => fact.danger === danger);
  const figure = figureOf(context, node, danger);
  if (other === undefined) return [...known, { danger, denied: node.denied, figure, source }];
  context.syntax(
    other.denied === node.denied ? 'written-twice' : 'two-ways-at-once',
    other.denied === node.denied
      ? say`${danger} is written twice here. Delete one.`
      : say`Both ${danger} and not ${danger} are written here: the sheet cannot warn of it and leave the caution out. Keep the one that is true.`,
    source,
  );
  // Said both ways, it is warned of.
  return known.map((fact) => (fact === other ? { ...fact, denied: fact.denied && node.denied } : fact));
}

/** The figure behind it (`hot 120 °C`), of the kind that the danger has; null: none, or a wrong one. */
function figureOf(context: Context, node: ast.Danger, danger: Danger): Quantity | null {
  if (node.figure === undefined) return null;
  const figure = lowerQuantity(context, node, 'figure', node.figure, node.sign);
  if (figure === null) return null;
  const kind = dangerKinds[danger];
  const at = context.source(node, 'figure');
  if (kind === undefined || node.denied) {
    context.syntax(
      'clause-without-meaning',
      say`${formatQuantity(figure)} has no meaning after ${node.denied ? say`not ${danger}` : danger}. Write it before, if it belongs to the step, or delete it.`,
      at,
    );
    return null;
  }
  if (kindOfUnit(figure.unit) === kind) {
    const why = whyNoHazard(figure);
    if (why === null) return figure;
    context.syntax(
      'impossible-figure',
      say`${formatQuantity(figure)}: ${why}. Check the number, its sign and its unit.`,
      at,
    );
    return null;
  }
  context.syntax(
    'unit-of-another-kind',
    say`What follows ${danger} is a ${term(kind)}, and ${formatQuantity(figure)} is a ${term(kindOfUnit(figure.unit))}. Write it before ${danger}, if it belongs to the step.`,
    at,
  );
  return null;
}
