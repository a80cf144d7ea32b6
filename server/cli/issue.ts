import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import pc from 'picocolors';
import { issuedFileName, writeIssued } from '../../language/db/issued/format.ts';
import { buildIssued } from '../../language/db/issued/issue.ts';
import { type SourceFile, Workspace } from '../../language/db/workspace.ts';
import { translated } from '../../language/i18n/translate.ts';
import { fullMessage } from '../../language/model/diagnostic.ts';
import { shownPath } from '../host/files/find-files.ts';
import { WriteError, writeWhole } from '../host/print/write.ts';
import { messageLanguage, worded, words } from './messages.ts';
import { named } from './named.ts';
import { say, tell } from './say.ts';
import { UsageError } from './usage-error.ts';
import { type CliWorkspace, openQuietly } from './workspace.ts';

export interface IssueOptions {
  readonly workspace: string;
  /** ISO date that stands for today. */
  readonly today: string;
}

/**
 * Writes the file of a revision beside its sources. Exit code: 0 it is issued, or was already and is the same; 1 it has
 * errors, no revision or no approval.
 */
export async function issueCommand(name: string, { workspace: around, today }: IssueOptions): Promise<number> {
  const workspace = await openQuietly([around, ...(name.endsWith('.rebuild') ? [name] : [])]);
  const { result, files } = workspace;
  const { procedure, diagnostics } = named('procedure', name, result.procedures, (one) => one.procedure);
  const before = result.issued.find((one) => one.procedure === procedure.name && one.revision === procedure.revision);
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  const refusal = whyNot(procedure, today) ?? null;
  if (refusal !== null || errors.length > 0) {
    const lines = [
      ...(refusal === null ? [] : [refusal]),
      ...errors.map(
        (one) =>
          `${one.source.file}:${one.source.range.start.line + 1}: ${fullMessage(translated(one, messageLanguage()))}`,
      ),
    ];
    tell(`${pc.red(worded`${procedure.name} is not issued.`)}\n${lines.map((line) => `  ${line}\n`).join('')}`);
    return 1;
  }
  if (before !== undefined) {
    say(
      `${worded`Revision ${before.revision} of ${procedure.name} is issued already, and is the same: ${before.uri}`}\n`,
    );
    return 0;
  }
  const checked = { files, result };
  const text = writeIssued(buildIssued(procedure, checked, today));
  const file = join(dirname(procedure.source.file), 'issued', issuedFileName(procedure.name, procedure.revision!));
  if (existsSync(file))
    throw new UsageError(
      worded`${file} is in the way: it is there, and is not this revision. Where it was changed, take it back from version control; else move it away.`,
    );
  readsBack({ uri: shownPath(file), text }, procedure.name, workspace);
  try {
    writeWhole(file, text, null);
  } catch (error) {
    throw error instanceof WriteError ? new UsageError(words(error.said)) : error;
  }
  say(`${worded`Issued: revision ${procedure.revision!} of ${procedure.name}, ${file}`}\n`);
  return 0;
}

function whyNot(
  {
    name,
    revision,
    approvedBy,
    approvedOn,
  }: {
    readonly name: string;
    readonly revision: string | null;
    readonly approvedBy: string | null;
    readonly approvedOn: string | null;
  },
  today: string,
): string | null {
  if (revision === null)
    return worded`It has no revision, so no job could name it. Write one into the head of ${name}: revision A.`;
  if (approvedBy === null || approvedOn === null)
    return worded`Nobody has approved it, or the day is missing: what is issued is what the bench works by. Write approved by "…" on the day, as year-month-day, into its head.`;
  return approvedOn > today
    ? worded`It is approved on ${approvedOn}, which is after today, ${today}. Correct the day; with --today, where the clock of this machine is wrong.`
    : null;
}

/** What is written must give the same procedure when it is read alone: years later there is nothing else. */
function readsBack(issued: SourceFile, name: string, { files, settings }: CliWorkspace) {
  const { procedureOf, issued: all } = new Workspace().open([...files, issued], settings);
  const found = procedureOf(name)?.diagnostics.some(({ rule }) => rule === 'issued-and-edited') ?? true;
  if (found || !all.some(({ uri }) => uri === issued.uri))
    throw new Error(`The issued text of ${name} does not give the same procedure when it is read alone.`);
}
