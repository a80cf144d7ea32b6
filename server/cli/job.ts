import type { Job } from '../../language/model/job.ts';
import { named } from './named.ts';
import { openQuietly } from './workspace.ts';

/** The job of a number, or the first of a file. Throws a UsageError with the nearest numbers. */
export async function openJob(name: string, workspace: string): Promise<Job> {
  const { result } = await openQuietly([workspace, ...(name.endsWith('.rebuild') ? [name] : [])]);
  return named('job', name, result.jobs, (job) => job);
}
