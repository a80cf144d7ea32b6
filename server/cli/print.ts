import pc from 'picocolors';
import { nearest } from '../../language/grammar/nearest.ts';
import type { Finding } from '../../language/model/finding.ts';
import type { Job } from '../../language/model/job.ts';
import type { Procedure } from '../../language/model/procedure.ts';
import { printedAs } from '../../language/settings/settings.ts';
import { type Paper, type Sheet, sheetOf } from '../../language/sheet/index.ts';
import type { Language } from '../../language/words/index.ts';
import { printSheet, type SheetFormat, WriteError } from '../print/index.ts';
import { sheetName } from '../print/sheet-name.ts';
import { contentHash } from '../workspace/content-hash.ts';
import { shownPath } from '../workspace/find-files.ts';
import { UsageError } from './usage-error.ts';
import { type CliWorkspace, openWorkspace } from './workspace.ts';

export interface PrintCommandOptions {
  readonly formats: readonly SheetFormat[];
  /** Of the settings file, else A4. */
  readonly paper?: Paper | undefined;
  readonly language?: Language | undefined;
  readonly to: string;
  readonly draft: boolean;
  /** Folder or file that names are looked up in. */
  readonly workspace: string;
}

interface Target {
  readonly procedure: Procedure;
  readonly job: Job | null;
}

/** Prints each procedure or job named. Exit code: 0 all printed, 1 one has errors and no draft was asked for. */
export async function printCommand(names: readonly string[], options: PrintCommandOptions): Promise<number> {
  const paths = names.filter((name) => name.endsWith('.rebuild'));
  const workspace = await openWorkspace([options.workspace, ...paths], undefined);
  const targets = names.flatMap((name) => targetsOf(name, workspace));
  let refused = 0;
  for (const target of targets) if (!(await printOne(target, workspace, options))) refused++;
  return refused > 0 ? 1 : 0;
}

/** A job by its number, a procedure by its name, or all that a file declares. */
function targetsOf(name: string, { result }: CliWorkspace): Target[] {
  const procedures = result.procedures.map(({ procedure }) => procedure);
  if (name.endsWith('.rebuild')) {
    const file = shownPath(name);
    const jobs = result.jobs
      .filter((job) => job.source.file === file)
      .map((job) => ({ procedure: job.procedure, job }));
    const found = [
      ...jobs,
      ...procedures
        .filter((procedure) => procedure.source.file === file)
        .map((procedure) => ({ procedure, job: null })),
    ];
    if (found.length === 0)
      throw new UsageError(
        `${name} declares no procedure and no job that can be printed. Run handtight check ${name} first.`,
      );
    return found;
  }
  const job = result.jobs.find((other) => other.name === name);
  if (job !== undefined) return [{ procedure: job.procedure, job }];
  const procedure = procedures.find((other) => other.name === name);
  if (procedure !== undefined) return [{ procedure, job: null }];
  const known = [...result.jobs.map((other) => other.name), ...procedures.map((other) => other.name)];
  const near = nearest(name, known);
  throw new UsageError(
    `No job and no procedure is called ${name}. ${near.length > 0 ? `Did you mean ${near.join(' or ')}?` : `There are: ${known.join(', ') || 'none'}.`}`,
  );
}

async function printOne(
  { procedure, job }: Target,
  { files, result }: CliWorkspace,
  options: PrintCommandOptions,
): Promise<boolean> {
  const findings = findingsOn({ procedure, job }, result);
  const errors = findings.filter(({ severity }) => severity === 'error').length;
  const name = job === null ? procedure.name : `job ${job.name}`;
  if (errors > 0 && !options.draft) {
    process.stderr.write(
      `${pc.red(`${name} is not printed: it has ${errors} error${errors === 1 ? '' : 's'}.`)} Run handtight check ${procedure.source.file} to see them, or print it with --draft, which marks every page.\n`,
    );
    return false;
  }
  const sheet = sheetOf(procedure, {
    job,
    number: null,
    ...printedAs(result.sheet, options),
    draft: options.draft,
    findings,
    hash: contentHash({ procedure, job }, files),
  });
  await writeSheet(sheet, sheetName({ procedure, job }, options.draft), options);
  return true;
}

/** What was found in a procedure, and in the file of the job. */
export function findingsOn({ procedure, job }: Target, result: CliWorkspace['result']): Finding[] {
  const checked = result.procedures.find((other) => other.procedure === procedure)!;
  const own =
    job === null
      ? []
      : result.findings.filter(
          (finding) => finding.source.file === job.source.file && !checked.findings.includes(finding),
        );
  return [...checked.findings, ...own];
}

/** Writes a sheet in the formats that are asked for, and says which files. Throws a UsageError where it cannot. */
export async function writeSheet(
  sheet: Sheet,
  name: string,
  { formats, to }: Pick<PrintCommandOptions, 'formats' | 'to'>,
): Promise<void> {
  try {
    const printed = await printSheet(sheet, { formats, to, name });
    for (const file of printed.files) process.stdout.write(`${pc.green('printed')}  ${shownPath(file)}\n`);
    for (const note of printed.notes) process.stderr.write(`${pc.yellow('note')}  ${note}\n`);
  } catch (error) {
    if (error instanceof WriteError) throw new UsageError(error.message);
    throw error;
  }
}
