/** `handtight format`: the layout of files, made in them or only compared. */
import pc from 'picocolors';
import { isIssuedFile } from '../../language/db/issued/format.ts';
import { formatted, unreadable } from '../../language/ide/format/format.ts';
import { type FixedFile, writeFixed } from './fix.ts';
import { findingText, worded } from './messages.ts';
import { say, tell } from './say.ts';
import { openWorkspace } from './workspace.ts';

export interface FormatOptions {
  /** Write nothing: only say which files are not laid out. */
  readonly check: boolean;
}

/** Exit code: 0 all files are laid out, 1 some are not, or cannot be. */
export async function formatCommand(paths: readonly string[], { check }: FormatOptions): Promise<number> {
  const { files, asked, notRead } = await openWorkspace(paths, undefined);
  // An issued revision is never touched.
  const own = files.filter(({ uri }) => asked.has(uri) && !isIssuedFile(uri));
  const refused = own.flatMap(({ uri, text }) => {
    const why = unreadable(text);
    return why === null ? [] : [{ uri, ...why }];
  });
  for (const { uri, line, message } of refused)
    tell(
      `${pc.red(worded`not laid out`)}  ${uri}:${line + 1}: ${worded`${message} Correct it, and run the command again.`}\n`,
    );
  for (const one of notRead) tell(`${pc.yellow(worded`not read`)}  ${one.source.file}: ${findingText(one)}\n`);
  const changed = own.flatMap(({ uri, text }): FixedFile[] => {
    const after = refused.some((one) => one.uri === uri) ? text : formatted(text);
    return after === text ? [] : [{ file: uri, before: text, after, count: 1 }];
  });
  if (!check) await writeFixed(changed);
  for (const { file } of changed)
    say(`${check ? pc.yellow(worded`would lay out`) : pc.green(worded`laid out`)} ${file}\n`);
  if (changed.length === 0 && refused.length === 0)
    say(`${own.length === 1 ? worded`The file is laid out.` : worded`All ${own.length} files are laid out.`}\n`);
  return refused.length > 0 || (check && changed.length > 0) ? 1 : 0;
}
