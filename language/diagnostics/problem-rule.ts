import type { Source } from '../model/source.ts';
import { say } from '../say/say.ts';
import { isSlip } from '../syntax/nearest.ts';
import type { CorrectableCode, ProblemCode } from '../syntax/problem-code.ts';
import { collectCalls, grouped, placeKey } from './calls-of.ts';
import type { Rule } from './rule.ts';

/** What a rule of the text needs to write the replacement. */
interface Replaced {
  readonly source: Source;
  readonly replacement: string;
  readonly written: string | undefined;
}

interface Named<Code> {
  readonly code: Code;
  readonly title: string;
}

/** The rule of one kind of problem of the text, one finding per place. The parser's own errors have its name too. */
export function problemRule({ code, title }: Named<ProblemCode>): Rule<Replaced> {
  return {
    code,
    severity: 'error',
    since: '0.2.0',
    unsafe: true,
    title,
    problems(problems, report) {
      const unread = problems.filter((problem) => problem.kind === 'syntax');
      for (const same of grouped(unread, ({ source }) => placeKey(source))) {
        const { message, source, replacement, written } = same[0]!;
        // Of several problems at one place the first is reported, by its own rule.
        if (same[0]!.code !== code) continue;
        const related = collectCalls(same);
        report({
          at: source,
          message,
          ...(related.length === 0 ? {} : { related }),
          data: replacement === undefined ? undefined : { source, replacement, written },
        });
      }
    },
  };
}

/** The rule of problems that can come with the text to write instead. */
export function correctingRule(named: Named<CorrectableCode>): Rule<Replaced> {
  return {
    ...problemRule(named),
    fix({ source, replacement: text, written }) {
      const safe = written === undefined || isSlip(written, text);
      return { title: say`Write ${text}`, safe, edits: [{ source, text }] };
    },
  };
}
