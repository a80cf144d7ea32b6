import type { TextBlock } from './model.ts';
import type { PrintContext } from './print-context.ts';

/** The rule by which readings near a limit are judged, and where the shop has it from. */
export function acceptanceText({ procedure, words }: PrintContext): TextBlock {
  const { rule, sourceText } = procedure.shop.acceptance;
  const source = sourceText === null ? '' : ` (${words.limits.source}: ${sourceText})`;
  return { kind: 'text', text: `${words.acceptance.title}: ${words.acceptance[rule]}${source}`, strong: false };
}
