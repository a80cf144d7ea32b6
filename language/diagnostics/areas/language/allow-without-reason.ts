import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';

/** What is left where a reason was asked for and none was written. */
const placeholders = new Set(['', 'reason', 'a reason', 'the reason', 'because', 'why', 'todo', 'tbd', 'n a', 'none']);

/** A concession says why the shop knows better. The words that stand in for a reason say nothing. */
export const allowWithoutReason: Rule = {
  code: 'allow-without-reason',
  severity: 'error',
  since: '0.2.0',
  unsafe: true,
  title: 'A concession gives no reason.',
  concession({ rule, because, source }, report) {
    if (!isPlaceholder(because)) return;
    report({
      at: source,
      message: `This concession silences ${rule} and does not say why.`,
      why: 'it prints on the sheet, and whoever reads it cannot judge it.',
      help: 'Write the reason in the quotes, or take the concession out.',
    });
  },
};

function isPlaceholder(because: string): boolean {
  const words = because
    .replaceAll(blank, ' ')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u);
  return placeholders.has(words.filter((word) => word !== '').join(' '));
}
