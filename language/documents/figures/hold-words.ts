import type { Hold } from '../../model/procedure.ts';
import { specTitle } from '../names.ts';
import type { PrintContext } from '../print-context.ts';
import { type LimitFigure, lineOf } from './limit-figure.ts';

/** `20 bar below the opening pressure read`. */
export function holdWords({ procedure, words }: PrintContext, { relation, of }: Hold, amount: LimitFigure): string {
  const text = lineOf(amount);
  if (relation === 'at') return text;
  const { facts: said, inSentence } = words;
  const name = of === null || of === 'reading' ? said.pressure : inSentence(specTitle(procedure, of));
  return said[relation]({ amount: text, name });
}
