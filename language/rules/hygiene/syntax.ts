import { isSlip } from '../../grammar/nearest.ts';
import type { Source } from '../../model/source.ts';
import type { Rule } from '../rule.ts';

/** What cannot be read, or has no meaning where it stands. The parser's own errors come under this name too. */
export const syntax: Rule = {
  code: 'syntax',
  severity: 'error',
  unsafe: true,
  title: 'A line that cannot be read, or a clause that has no meaning where it stands.',
  workspace({ problems }, report) {
    for (const problem of problems) {
      if (problem.kind !== 'syntax') continue;
      report({
        at: problem.source,
        message: problem.message,
        data: problem.replacement === undefined ? undefined : problem,
      });
    }
  },
  fix(data) {
    const { source, replacement: text, written } = data as Replaced;
    const safe = written === undefined || isSlip(written, text);
    return { title: `Write ${text}`, safe, edits: [{ source, text }] };
  },
};

interface Replaced {
  readonly source: Source;
  readonly replacement: string;
  readonly written?: string;
}
