import { translated } from '../../i18n/translate.ts';
import { fullMessage } from '../../model/diagnostic.ts';
import type { TableBlock } from '../model.ts';
import type { PrintContext } from '../print-context.ts';

/** Warnings that the procedure is printed with; on a draft, errors too. */
export function findingsTable({ options, words }: PrintContext): TableBlock | null {
  const { title, kind, step, message, error, warning } = words.diagnostics;
  const open = options.diagnostics.filter(({ severity }) => severity !== 'hint');
  if (open.length === 0) return null;
  return {
    kind: 'table',
    title,
    columns: [
      { head: kind, share: 2 },
      { head: step, share: 1 },
      { head: message, share: 9 },
    ],
    rows: open.map((diagnostic) => [
      { text: diagnostic.severity === 'error' ? error : warning, strong: true },
      { text: diagnostic.step ?? '' },
      { text: fullMessage(translated(diagnostic, words.language)) },
    ]),
  };
}
