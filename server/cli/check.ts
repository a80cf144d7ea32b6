import type { Workspace } from '../../language/db/workspace.ts';
import { translated } from '../../language/i18n/translate.ts';
import type { Diagnostic } from '../../language/model/diagnostic.ts';
import { diffOf, type FixedFile, fixedLines, fixWorkspace, writeFixed } from './fix.ts';
import { messageLanguage, worded } from './messages.ts';
import { githubReport } from './report-github.ts';
import { jsonReport } from './report-json.ts';
import { sarifReport } from './report-sarif.ts';
import { textReport } from './report-text.ts';
import { say, sayData, tell } from './say.ts';
import { openWorkspace } from './workspace.ts';

export type CheckFormat = 'text' | 'json' | 'sarif' | 'github';

export interface CheckOptions {
  readonly format: CheckFormat;
  /** More warnings than this are findings too; null: any number is well. */
  readonly maxWarnings: number | null;
  readonly workspace: string | undefined;
  /** Make the safe fixes; `dry-run`: show what they would change, and write nothing. */
  readonly fix: boolean | 'dry-run';
}

/** What is reported by a check, whatever its form. Hints are for the editor. */
export interface Checked {
  readonly files: readonly string[];
  readonly diagnostics: readonly Diagnostic[];
  readonly errors: number;
  readonly warnings: number;
  /** Null: the file was not read. */
  readonly textOf: (file: string) => string | null;
  /** Files in which something was fixed before. */
  readonly fixed: readonly FixedFile[];
  /** Path of the settings file in force, and how many findings it changes the severity of or turns off. */
  readonly settings: { readonly file: string; readonly restated: number } | null;
}

/** Checks and writes the report, or what fixes would change. Exit code: 0 nothing at error, 1 findings in the files as they are. */
export async function checkCommand(paths: readonly string[], options: CheckOptions): Promise<number> {
  return (await checkOnce(paths, options)).code;
}

/** The same, with what was worked out, for the next check. @param known what an earlier check worked out */
export async function checkOnce(
  paths: readonly string[],
  options: CheckOptions,
  known: Workspace | null = null,
): Promise<{ readonly code: number; readonly workspace: Workspace }> {
  const workspace = await openWorkspace(paths, options.workspace, true, known);
  const { settings, asked, notRead } = workspace;
  const fixes = options.fix === false ? null : fixWorkspace(workspace);
  const isWritten = fixes !== null && options.fix !== 'dry-run';
  if (isWritten) await writeFixed(fixes.changed);
  const { files, result } = isWritten ? fixes : workspace;
  const language = messageLanguage();
  const diagnostics = [...result.diagnostics, ...notRead]
    .filter(({ severity, source }) => severity !== 'hint' && asked.has(source.file))
    .map((diagnostic) => translated(diagnostic, language));
  const texts = new Map(
    [...files, ...(settings !== null && 'text' in settings ? [settings] : [])].map(({ uri, text }) => [uri, text]),
  );
  const checked: Checked = {
    files: [...asked].filter((file) => texts.has(file)),
    diagnostics,
    errors: diagnostics.filter(({ severity }) => severity === 'error').length,
    warnings: diagnostics.filter(({ severity }) => severity === 'warning').length,
    textOf: (file) => texts.get(file) ?? null,
    fixed: isWritten ? fixes.changed : [],
    settings: settings === null ? null : { file: settings.uri, restated: result.restated },
  };
  if (options.fix === 'dry-run') showFixes(fixes?.changed ?? []);
  else showReport(checked, options.format);
  const isBad = checked.errors > 0 || (options.maxWarnings !== null && checked.warnings > options.maxWarnings);
  return { code: isBad ? 1 : 0, workspace: workspace.kept };
}

function showReport(checked: Checked, format: CheckFormat): void {
  const report = { text: textReport, json: jsonReport, sarif: sarifReport, github: githubReport }[format];
  (format === 'text' ? say : sayData)(report(checked));
}

function showFixes(changed: readonly FixedFile[]): void {
  say(diffOf(changed));
  tell(changed.length === 0 ? `${worded`No safe fix is left to make.`}\n` : fixedLines(changed, worded`would fix`));
}
