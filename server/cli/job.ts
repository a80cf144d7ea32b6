import type { CheckResult } from '../../language/db/workspace.ts';
import { translated } from '../../language/i18n/translate.ts';
import { fullMessage } from '../../language/model/diagnostic.ts';
import type { Job } from '../../language/model/job.ts';
import { shownPath } from '../host/files/find-files.ts';
import { messageLanguage, worded } from './messages.ts';
import { named } from './named.ts';
import { UsageError } from './usage-error.ts';
import { type CliWorkspace, openQuietly } from './workspace.ts';

/** The job of a number, or the first of a file. Throws a UsageError with the nearest numbers. */
export async function openJob(name: string, workspace: string): Promise<Job> {
  return (await openJobIn(name, workspace)).job;
}

/** The same, with the files around it. */
export async function openJobIn(name: string, around: string): Promise<CliWorkspace & { readonly job: Job }> {
  const isFile = name.endsWith('.rebuild');
  const workspace = await openQuietly([around, ...(isFile ? [name] : [])]);
  const path = isFile ? shownPath(name) : name;
  const found = workspace.result.jobOf(path);
  if (found !== null) {
    const { length } = workspace.result.declared.jobs.filter((one) => one.name === found.name);
    if (length > 1)
      throw new UsageError(
        worded`There are ${length} jobs ${found.name}, and nobody can say which is meant. Give one of them another number: npx handtight check names both.`,
      );
    return { ...workspace, job: found };
  }
  unreadable(path, workspace.result);
  return { ...workspace, job: named('job', path, workspace.result.jobs, (one) => one) };
}

/** A job that exists but cannot be read is not a job with a wrong number. */
function unreadable(name: string, { jobs, diagnostics, symbols }: CheckResult) {
  const made = (file: string) => jobs.some((job) => job.name === name || job.source.file === file);
  const [file] = [...symbols].find(
    ([uri, declared]) =>
      uri === name || declared.some((one) => one.kind === 'job' && one.name.replace(/"/gu, '') === name),
  ) ?? [null];
  if (file === null || made(file)) return;
  const first = diagnostics.find(({ severity, source }) => severity === 'error' && source.file === file);
  if (first === undefined) return;
  throw new UsageError(
    worded`The job in ${file} cannot be read. Line ${first.source.range.start.line + 1}: ${fullMessage(translated(first, messageLanguage()))} Run npx handtight check ${file} for all of it.`,
  );
}
