import type { Job } from '../../model/job.ts';
import type { Procedure } from '../../model/procedure.ts';
import type { CheckResult } from '../workspace.ts';

/**
 * A procedure that is issued has drafts too: each revision that is not issued yet, and a job that is printed by it. Where
 * none of its revisions is issued, nothing is a draft for that.
 */
export function isDraft(
  {
    procedure: { name, revision },
    job,
  }: { readonly procedure: Pick<Procedure, 'name' | 'revision'>; readonly job: Pick<Job, 'name'> | null },
  { issued, judgedBy }: Pick<CheckResult, 'issued' | 'judgedBy'>,
): boolean {
  if (job !== null && judgedBy(job.name) !== null) return false;
  const own = issued.filter(({ procedure }) => procedure === name);
  return own.length > 0 && !own.some((one) => one.revision === revision);
}
