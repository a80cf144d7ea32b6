import { nearest } from '../../language/grammar/nearest.ts';
import type { Job } from '../../language/model/job.ts';
import { UsageError } from './usage-error.ts';
import { openWorkspace } from './workspace.ts';

/** The job of a number, or the first of a file. Throws a UsageError with the nearest numbers. */
export async function openJob(name: string, workspace: string): Promise<Job> {
  const { result } = await openWorkspace([workspace, ...(name.endsWith('.rebuild') ? [name] : [])], undefined);
  const found = result.jobs.find((job) => job.name === name || job.source.file === name);
  if (found !== undefined) return found;
  const names = result.jobs.map((job) => job.name);
  const near = nearest(name, names);
  throw new UsageError(
    `No job is called ${name}. ${near.length > 0 ? `Did you mean ${near.join(' or ')}?` : `There are: ${names.join(', ') || 'none'}.`}`,
  );
}
