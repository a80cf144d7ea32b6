import type { Job } from '../../language/model/job.ts';
import type { Procedure } from '../../language/model/procedure.ts';

/** Name of a sheet's file. A draft has another one, so that it never takes the place of a released sheet. */
export function sheetName(
  { procedure, job }: { readonly procedure: Procedure; readonly job: Job | null },
  draft: boolean,
): string {
  const revision = procedure.revision === null ? '' : `-revision-${procedure.revision}`;
  const name = job === null ? `${procedure.name}${revision}` : `job-${job.name}`;
  return draft ? `${name}-draft` : name;
}

/** Name of a certificate's file. */
export function certificateName({ name }: Job, draft: boolean): string {
  return draft ? `certificate-${name}-draft` : `certificate-${name}`;
}

/** Name of one file for several sheets, as given by hand: with or without its ending. */
export function bookFile(given: string, draft: boolean): string {
  const name = given.replace(/\.(pdf|html)$/iu, '');
  return draft && !name.endsWith('-draft') ? `${name}-draft` : name;
}
