import type { Source } from '../../../model/source.ts';
import { isSlip } from '../../../syntax/nearest.ts';
import { collectCalls, grouped, placeKey } from '../../calls-of.ts';
import type { Rule } from '../../rule.ts';

/** What cannot be parsed, or has no meaning where it is written. The parser's own errors have this name too. */
export const syntax: Rule<Replaced> = {
  code: 'syntax',
  severity: 'error',
  since: '0.1.0',
  unsafe: true,
  title: 'A line that cannot be read, or a clause that has no meaning where it is written.',
  problems(problems, report) {
    const unread = problems.filter((problem) => problem.kind === 'syntax');
    for (const same of grouped(unread, ({ source }) => placeKey(source))) {
      const { message, source, replacement, written } = same[0]!;
      const related = collectCalls(same);
      report({
        at: source,
        message,
        ...(related.length === 0 ? {} : { related }),
        data: replacement === undefined ? undefined : { source, replacement, written },
      });
    }
  },
  fix({ source, replacement: text, written }) {
    const safe = written === undefined || isSlip(written, text);
    return { title: `Write ${text}`, safe, edits: [{ source, text }] };
  },
};

interface Replaced {
  readonly source: Source;
  readonly replacement: string;
  readonly written: string | undefined;
}
