import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';

/** What is left where a reason belongs and none was written. */
const placeholders = new Set(['', 'reason', 'a reason', 'the reason', 'because', 'why', 'todo', 'tbd', 'n a', 'none']);

/** A concession says why the shop knows better. A placeholder says nothing. */
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
      message: say`This concession silences ${rule} but does not say why.`,
      why: say`it prints on the sheet, and nobody who reads it can judge it.`,
      help: say`Write the reason in the quotes, or delete the concession.`,
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
