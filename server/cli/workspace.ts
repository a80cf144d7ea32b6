import { existsSync } from 'node:fs';
import { Checker, type CheckResult, type SourceFile } from '../../language/check.ts';
import { settingsName } from '../../language/settings/settings.ts';
import { filesAt, shownPath } from '../workspace/find-files.ts';
import { readText } from '../workspace/read-text.ts';
import { UsageError } from './usage-error.ts';

/** The files of a run: those asked about, and those whose names are visible to them. */
export interface CliWorkspace {
  readonly files: readonly SourceFile[];
  /** Paths that findings are wanted for. */
  readonly asked: ReadonlySet<string>;
  readonly result: CheckResult;
}

/**
 * Reads and checks. Names are looked up in the paths given and, where `around` is given or a single file is asked
 * about, in the folder around.
 */
export async function openWorkspace(paths: readonly string[], around: string | undefined): Promise<CliWorkspace> {
  const asked = collect(paths.length === 0 ? ['.'] : paths);
  if (!asked.some((path) => path.endsWith('.rebuild'))) {
    throw new UsageError(
      `There is no .rebuild file in ${paths.length === 0 ? 'this folder' : paths.join(', ')}. Give a file or a folder that has some.`,
    );
  }
  const alone = paths.length > 0 && paths.every((path) => path.endsWith('.rebuild'));
  const near = around !== undefined ? collect([around]) : alone ? collect(['.']) : [];
  // The settings of the folder that the command is run in hold whatever is asked about.
  const own = existsSync(settingsName) ? [settingsName] : [];
  const all = [...new Set([...asked, ...near, ...own])];
  const files: SourceFile[] = [];
  for (const path of all) {
    const read = await readText(path);
    if (read.kind === 'text') files.push({ uri: path, text: read.text });
    else if (asked.includes(path))
      throw new UsageError(read.kind === 'gone' ? `${path} is no longer there.` : `${path}: ${read.message}`);
  }
  return { files, asked: new Set([...asked, ...own]), result: new Checker().check(files) };
}

function collect(paths: readonly string[]): string[] {
  const found = paths.flatMap((path) => {
    const at = filesAt(path);
    if ('problem' in at) throw new UsageError(at.problem);
    return at.files.map(shownPath);
  });
  return [...new Set(found)];
}
