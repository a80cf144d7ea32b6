import type { CheckedProcedure } from '../../language/db/workspace.ts';
import type { Job } from '../../language/model/job.ts';
import { named } from './named.ts';
import { openQuietly } from './workspace.ts';

/** The procedure of a name, or the first of a file, with all jobs around it. Throws a UsageError with the nearest names. */
export async function openProcedure(
  name: string,
  workspace: string,
): Promise<CheckedProcedure & { readonly jobs: readonly Job[] }> {
  const { result } = await openQuietly([workspace, ...(name.endsWith('.rebuild') ? [name] : [])]);
  return { ...named('procedure', name, result.procedures, ({ procedure }) => procedure), jobs: result.jobs };
}
