/** `handtight check --fix`: safe fixes, made in the files of the disk. */
import { readFile } from 'node:fs/promises';
import { createTwoFilesPatch } from 'diff';
import pc from 'picocolors';
import { type FixResult, fixFiles, mostRounds } from '../../language/db/fixes.ts';
import { Workspace } from '../../language/db/workspace.ts';
import type { Diagnostic } from '../../language/model/diagnostic.ts';
import { textProblem } from '../../language/syntax/text-problem.ts';
import { WriteError, writeWhole } from '../host/print/write.ts';
import { worded } from './messages.ts';
import { note } from './say.ts';
import { UsageError } from './usage-error.ts';
import type { CliWorkspace } from './workspace.ts';

/** A file that fixes change. */
export interface FixedFile {
  readonly file: string;
  readonly before: string;
  readonly after: string;
  readonly count: number;
}

/** What the safe fixes of the files asked about make of them. Writes nothing. */
export function fixWorkspace(workspace: CliWorkspace): FixResult & { readonly changed: readonly FixedFile[] } {
  const { files, settings, asked, result, notRead } = workspace;
  // A name that seems misspelled may be declared in what could not be read.
  const isWhole =
    notRead.every(({ rule }) => rule !== 'unreadable-file') && files.every(({ text }) => textProblem(text) === null);
  const mayFix = ({ rule, source }: Diagnostic) => asked.has(source.file) && (isWhole || rule !== 'unknown-name');
  const checker = new Workspace();
  const fixed = fixFiles({ files, result }, (now) => checker.check(now, settings), mayFix);
  const left = fixed.result.diagnostics.filter(
    (diagnostic) => diagnostic.fix?.safe === true && asked.has(diagnostic.source.file),
  );
  if (!fixed.isSettled)
    note(
      worded`After ${mostRounds} rounds there is still something to fix. This is a defect of Handtight: please report it, with the files.`,
    );
  else if (left.some(mayFix))
    note(
      worded`As long as a line cannot be read, nothing else of its file is fixed. Correct it, and run the command again.`,
    );
  if (left.some((diagnostic) => !mayFix(diagnostic)))
    note(worded`As long as a file cannot be read, no name is corrected: it may be declared in that file.`);
  const changed = files.flatMap(({ uri, text }, index) => {
    const count = fixed.counts.get(uri) ?? 0;
    const after = fixed.files[index]!.text;
    return after === text ? [] : [{ file: uri, before: text, after, count }];
  });
  return { ...fixed, changed };
}

/**
 * Writes the files that changed, each whole or not at all, with the byte order mark that it had. Throws a UsageError
 * where one cannot be written, or is no longer what was checked.
 */
export async function writeFixed(changed: readonly FixedFile[]): Promise<void> {
  for (const [index, { file, before, after }] of changed.entries()) {
    const written = changed.length === 1 ? '' : ` ${worded`${index} of ${changed.length} files were written.`}`;
    const now = await readFile(file, 'utf8').catch(() => '');
    const mark = now.startsWith('\uFEFF') ? '\uFEFF' : '';
    if (now !== `${mark}${before}`)
      throw new UsageError(
        worded`${file} changed while it was read, and is left as it is. Run the command again.${written}`,
      );
    try {
      writeWhole(file, `${mark}${after}`, null);
    } catch (error) {
      throw error instanceof WriteError ? new UsageError(`${error.message}${written}`) : error;
    }
  }
}

/** What fixing would change, as lines taken out and put in. */
export function diffOf(changed: readonly FixedFile[]): string {
  return changed
    .map(({ file, before, after }) =>
      createTwoFilesPatch(file, file, before, after, undefined, undefined, {
        stripTrailingCr: true,
        headerOptions: { includeIndex: false, includeUnderline: false, includeFileHeaders: true },
      }),
    )
    .join('')
    .replace(/^\+.*$/gmu, (line) => pc.green(line))
    .replace(/^-.*$/gmu, (line) => pc.red(line));
}

/** `fixed 3 in valve.rebuild`, a line for each file. */
export function fixedLines(changed: readonly FixedFile[], word: string): string {
  return changed.map(({ file, count }) => `${pc.green(word)} ${worded`${count} in ${file}`}\n`).join('');
}
