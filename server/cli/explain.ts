import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import pc from 'picocolors';
import { areaOf, rules } from '../../language/diagnostics/index.ts';
import { term } from '../../language/say/say.ts';
import { nearest } from '../../language/syntax/nearest.ts';
import { packageRoot } from '../host/files/package-root.ts';
import { explainCaution, explainCautions, explainStep } from './explain-cautions.ts';
import { worded, words } from './messages.ts';
import { meant } from './near.ts';
import { say } from './say.ts';
import { UsageError } from './usage-error.ts';

/** Prints the page of a rule or what a caution follows from, or the list of all; of a step of a procedure its cautions. */
export async function explainCommand(
  code: string | undefined,
  step: string | undefined,
  options: { workspace: string },
): Promise<number> {
  if (code !== undefined && step !== undefined) return explainStep(code, step, options.workspace);
  if (code === 'cautions') {
    explainCautions();
    return 0;
  }
  if (code === undefined) {
    const width = Math.max(...rules.map((rule) => rule.code.length));
    const severities = ['error', 'warning', 'hint'].map((one) => words(term(one)));
    const wide = Math.max(...severities.map((one) => one.length));
    for (const { code: name, severity, title } of rules)
      say(`${name.padEnd(width)}  ${words(term(severity)).padEnd(wide)}  ${words(term(title))}\n`);
    return 0;
  }
  if (explainCaution(code)) return 0;
  const { markdown, since, references } = rulePage(code);
  say(markdown.replace(/^#+ (.*)$/gmu, (_, heading) => pc.bold(heading)).replace(/^```.*\n/gmu, ''));
  const more = references.length === 0 ? '' : ` ${worded`References: ${references.join(', ')}.`}`;
  say(`\n${worded`In Handtight since ${since}.`}${more}\n`);
  return 0;
}

/** The page of a rule as it is written. Throws a UsageError with the nearest names. */
export function rulePage(code: string): {
  readonly markdown: string;
  readonly since: string;
  readonly references: readonly string[];
} {
  const area = areaOf(code);
  const rule = rules.find((one) => one.code === code);
  if (area === null || rule === undefined) {
    const near = nearest(
      code,
      rules.map((rule) => rule.code),
    );
    throw new UsageError(
      worded`No rule is called ${code}. ${meant(near, worded`To list them all: npx handtight explain`)}`,
    );
  }
  const page = join(packageRoot(), 'language/diagnostics/areas', area, `${code}.md`);
  if (!existsSync(page))
    throw new UsageError(worded`The page of ${code} is missing from this installation (${page}). Install it again.`);
  return { markdown: readFileSync(page, 'utf8'), since: rule.since, references: rule.references ?? [] };
}
