import { SingleBar } from 'cli-progress';
import pc from 'picocolors';
import type { Finding } from '../../language/model/finding.ts';
import { printedAs } from '../../language/settings/settings.ts';
import { type Paper, type Sheet, sheetOf } from '../../language/sheet/index.ts';
import type { Language } from '../../language/words/index.ts';
import { fileName, type Printed, printSheet, printSheets, type SheetFormat, WriteError } from '../print/index.ts';
import { sheetName } from '../print/sheet-name.ts';
import { contentHash } from '../workspace/content-hash.ts';
import { shownPath } from '../workspace/find-files.ts';
import { isFolder, type Target, targetsOf } from './print-targets.ts';
import { UsageError } from './usage-error.ts';
import { type CliWorkspace, openWorkspace } from './workspace.ts';

export interface PrintCommandOptions {
  readonly formats: readonly SheetFormat[];
  /** Of the settings file, else A4. */
  readonly paper?: Paper | undefined;
  readonly language?: Language | undefined;
  readonly to: string;
  /** All in one document of this name; else one for each. */
  readonly oneFile?: string | undefined;
  readonly draft: boolean;
  /** Folder or file that names are looked up in. */
  readonly workspace: string;
}

/** A sheet that can be printed, with the name of its file. */
interface Ready {
  readonly name: string;
  readonly sheet: Sheet;
}

/** Prints each procedure or job named. Exit code: 0 all printed, 1 one has errors and no draft was asked for. */
export async function printCommand(names: readonly string[], options: PrintCommandOptions): Promise<number> {
  const paths = names.filter((name) => name.endsWith('.rebuild') || isFolder(name));
  const workspace = await openWorkspace([options.workspace, ...paths], undefined);
  const targets = targetsOf(names, workspace);
  const ready: Ready[] = [];
  const refused: string[] = [];
  for (const target of targets) {
    const findings = findingsOf(target, workspace);
    const errors = findings.filter(({ severity }) => severity === 'error');
    if (errors.length > 0 && !options.draft) refused.push(refusal(target, errors));
    else ready.push(made(target, findings, workspace, options));
  }
  refuseSameNames(ready);
  const printed =
    options.oneFile === undefined ? await oneByOne(ready, options) : allInOne(ready, options.oneFile, options);
  for (const file of printed.files) process.stdout.write(`${pc.green('printed')}  ${shownPath(file)}\n`);
  for (const note of printed.notes) process.stderr.write(`${pc.yellow('note')}  ${note}\n`);
  for (const reason of refused) process.stderr.write(`${reason}\n`);
  if (targets.length > 1)
    process.stdout.write(
      `${ready.length} printed${refused.length === 0 ? '' : `, ${refused.length} not printed`}${options.oneFile === undefined ? '' : ', in one file'}\n`,
    );
  return refused.length > 0 ? 1 : 0;
}

/** What was found in a procedure, and in the file of the job. */
export function findingsOf({ procedure, job }: Target, { result }: CliWorkspace): Finding[] {
  const checked = result.procedures.find((other) => other.procedure === procedure)!;
  // A name that is wrong in several jobs is found once, and told with the others.
  const standsIn = (finding: Finding, file: string) =>
    finding.source.file === file || (finding.related ?? []).some(({ source }) => source.file === file);
  const own =
    job === null
      ? []
      : result.findings.filter((finding) => standsIn(finding, job.source.file) && !checked.findings.includes(finding));
  return [...checked.findings, ...own];
}

function refusal({ procedure, job }: Target, errors: readonly Finding[]): string {
  const name = job === null ? procedure.name : `job ${job.name}`;
  const files = [...new Set(errors.map(({ source }) => source.file))].join(' ');
  return `${pc.red(`${name} is not printed: it has ${errors.length} error${errors.length === 1 ? '' : 's'}.`)} Run handtight check ${files} to see them, or print it with --draft, which marks every page.`;
}

function made(
  target: Target,
  findings: readonly Finding[],
  { files, result }: CliWorkspace,
  options: PrintCommandOptions,
): Ready {
  const { procedure, job } = target;
  const sheet = sheetOf(procedure, {
    job,
    number: null,
    ...printedAs(result.sheet, options),
    draft: options.draft,
    findings,
    hash: contentHash(target, files),
  });
  return { name: sheetName(target, options.draft), sheet };
}

/** One file would take the place of the other, on a disk that takes large and small letters for the same. */
function refuseSameNames(ready: readonly Ready[]): void {
  const byFile = new Map<string, string>();
  for (const { name } of ready) {
    const file = fileName(name).toLowerCase();
    const other = byFile.get(file);
    if (other !== undefined)
      throw new UsageError(
        `${other} and ${name} would be printed into the same file. Give one of them another name, or print them apart with --to.`,
      );
    byFile.set(file, name);
  }
}

/** A file for each, with a bar where somebody is looking. What was printed before a failure stays. */
async function oneByOne(ready: readonly Ready[], { formats, to }: PrintCommandOptions): Promise<Printed> {
  const files: string[] = [];
  const notes: string[] = [];
  // Silent where the output goes into a file or another program.
  const bar =
    ready.length > 1 ? new SingleBar({ format: 'printing {bar} {value} of {total}', clearOnComplete: true }) : null;
  bar?.start(ready.length, 0);
  const signals = ['SIGINT', 'SIGTERM'] as const;
  let stopped = false;
  const stop = () => {
    stopped = true;
  };
  for (const signal of signals) process.once(signal, stop);
  try {
    for (const [index, { name, sheet }] of ready.entries()) {
      // A signal is heard between two sheets: none is left half written.
      await new Promise(setImmediate);
      if (stopped) throw new UsageError(`Stopped. ${index} of ${ready.length} are printed, and are whole.`);
      const printed = written(() => printSheet(sheet, { formats, to, name }), files.length);
      files.push(...printed.files);
      notes.push(...printed.notes);
      bar?.increment();
    }
  } finally {
    bar?.stop();
    for (const signal of signals) process.off(signal, stop);
  }
  return { files, notes };
}

function allInOne(ready: readonly Ready[], name: string, { formats, to }: PrintCommandOptions): Printed {
  const [first, ...others] = ready.map(({ sheet }) => sheet);
  if (first === undefined) return { files: [], notes: [] };
  return written(() => printSheets([first, ...others], name, { formats, to, name }), 0);
}

/** Writes one sheet in the formats that are asked for, and says which files. */
export function writeSheet(sheet: Sheet, name: string, { formats, to }: PrintCommandOptions): void {
  const { files, notes } = written(() => printSheet(sheet, { formats, to, name }), 0);
  for (const file of files) process.stdout.write(`${pc.green('printed')}  ${shownPath(file)}\n`);
  for (const note of notes) process.stderr.write(`${pc.yellow('note')}  ${note}\n`);
}

function written(print: () => Printed, before: number): Printed {
  try {
    return print();
  } catch (error) {
    if (!(error instanceof WriteError)) throw error;
    const stays = before === 0 ? '' : ` The ${before} files written before it are whole.`;
    throw new UsageError(`${error.message}${stays}`);
  }
}
