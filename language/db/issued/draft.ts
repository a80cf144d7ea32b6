import type { SheetSettings } from '../../config/config.ts';
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

/** How a sheet is printed: by the settings of today, in the words of the day of its issue. */
export function sheetSettings(
  job: Pick<Job, 'name'> | null,
  { sheet, judgedBy }: Pick<CheckResult, 'sheet' | 'judgedBy'>,
): SheetSettings {
  const issued = job === null ? null : judgedBy(job.name);
  return issued === null ? sheet : { ...sheet, word: issued.settings.word, kinds: issued.settings.kinds };
}
