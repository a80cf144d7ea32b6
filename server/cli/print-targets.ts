import { statSync } from 'node:fs';
import { nearest } from '../../language/grammar/nearest.ts';
import type { Job } from '../../language/model/job.ts';
import type { Procedure } from '../../language/model/procedure.ts';
import { shownPath } from '../workspace/find-files.ts';
import { UsageError } from './usage-error.ts';
import type { CliWorkspace } from './workspace.ts';

/** What is printed: a job's sheet, or the blank one of a procedure. */
export interface Target {
  readonly procedure: Procedure;
  readonly job: Job | null;
}

/** All that is asked for, each once, in the order of the names. */
export function targetsOf(names: readonly string[], workspace: CliWorkspace): Target[] {
  const all = names.flatMap((name) => named(name, workspace));
  return all.filter(
    (target, index) =>
      all.findIndex((other) => other.procedure === target.procedure && other.job === target.job) === index,
  );
}

export function isFolder(name: string): boolean {
  return statSync(name, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

/** A job by its number, a procedure by its name, or all that a file or a folder declares: names come before folders. */
function named(name: string, { result }: CliWorkspace): Target[] {
  const procedures = result.procedures.map(({ procedure }) => procedure);
  if (name.endsWith('.rebuild')) {
    const file = shownPath(name);
    const found = [...jobsIn(result, (path) => path === file), ...blanksIn(procedures, (path) => path === file)];
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
  if (isFolder(name)) return inFolder(name, result, procedures);
  const known = [...result.jobs.map((other) => other.name), ...procedures.map((other) => other.name)];
  const near = nearest(name, known);
  throw new UsageError(
    `No job, no procedure and no folder is called ${name}. ${near.length > 0 ? `Did you mean ${near.join(' or ')}?` : `There are: ${known.join(', ') || 'none'}.`}`,
  );
}

/** The jobs of a folder; where it has none, its procedures. */
function inFolder(name: string, result: CliWorkspace['result'], procedures: readonly Procedure[]): Target[] {
  const folder = shownPath(name).replace(/\/+$/u, '');
  const isIn = (path: string) => folder === '.' || folder === '' || path.startsWith(`${folder}/`);
  const jobs = jobsIn(result, isIn);
  const found = jobs.length > 0 ? jobs : blanksIn(procedures, isIn);
  if (found.length === 0)
    throw new UsageError(
      `In ${name} there is no job and no procedure that can be printed. Run handtight check ${name}.`,
    );
  return found;
}

function jobsIn({ jobs }: CliWorkspace['result'], isIn: (path: string) => boolean): Target[] {
  return jobs.filter(({ source }) => isIn(source.file)).map((job) => ({ procedure: job.procedure, job }));
}

function blanksIn(procedures: readonly Procedure[], isIn: (path: string) => boolean): Target[] {
  return procedures.filter(({ source }) => isIn(source.file)).map((procedure) => ({ procedure, job: null }));
}
