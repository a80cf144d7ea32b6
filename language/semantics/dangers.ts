import { type DangerFact, dangers } from '../model/danger.ts';
import type { Source } from '../model/source.ts';
import { say } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import type { Context } from './context.ts';

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
  if (other === undefined) return [...known, { danger, denied: node.denied, source }];
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
