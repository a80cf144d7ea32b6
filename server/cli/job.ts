import type { Job } from '../../language/model/job.ts';
import { named } from './named.ts';
import { openWorkspace } from './workspace.ts';

/** The job of a number, or the first of a file. Throws a UsageError with the nearest numbers. */
export async function openJob(name: string, workspace: string): Promise<Job> {
  const { result } = await openWorkspace([workspace, ...(name.endsWith('.rebuild') ? [name] : [])], undefined);
  return named('job', name, result.jobs, (job) => job);
}
