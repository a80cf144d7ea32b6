import type { CheckResult } from '../../../language/db/workspace.ts';
import type { Job } from '../../../language/model/job.ts';
import type { Procedure } from '../../../language/model/procedure.ts';
import { fileKey, nameDigits } from './file-name.ts';

/** What prints: a procedure, or a job by one. */
interface Printed {
  readonly procedure: Procedure;
  readonly job: Job | null;
}

/**
 * Names the files of sheets. Two sheets of a workspace never share a file, even where case is not distinguished: names
 * that would be the same get digits of their own. A draft has another name than the released sheet, so that it never takes
 * its place.
 */
export function sheetNames({ jobs, procedures }: Pick<CheckResult, 'jobs' | 'procedures'>) {
  const wanted = new Map<string, Set<string>>();
  const all = [
    ...jobs.map((job) => ({ procedure: job.procedure, job })),
    ...procedures.map(({ procedure }) => ({ procedure, job: null })),
  ];
  for (const one of all) {
    const key = fileKey(plainName(one));
    wanted.set(key, (wanted.get(key) ?? new Set()).add(identityOf(one)));
  }
  return (one: Printed, draft: boolean): string => {
    const name = plainName(one);
    const own = (wanted.get(fileKey(name))?.size ?? 1) > 1 ? `${name}-${nameDigits(identityOf(one))}` : name;
    return draft ? `${own}-draft` : own;
  };
}

function plainName({ procedure, job }: Printed): string {
  if (job !== null) return `job-${job.name}`;
  return procedure.revision === null ? procedure.name : `${procedure.name}-revision-${procedure.revision}`;
}

function identityOf(one: Printed): string {
  return `${one.job === null ? 'procedure' : 'job'} ${plainName(one)}`;
}

/** Name of a certificate's file; `jobs` are all jobs of the workspace; no other shares it. */
export function certificateName(job: Job, draft: boolean, jobs: readonly Job[]): string {
  const own = `certificate-${job.name}`;
  const shared = jobs.some(({ name }) => name !== job.name && fileKey(`certificate-${name}`) === fileKey(own));
  return `${own}${shared ? `-${nameDigits(own)}` : ''}${draft ? '-draft' : ''}`;
}

/** Name of one file for several sheets, as given by hand: with or without its ending. */
export function bookFile(given: string, draft: boolean): string {
  const name = given.replace(/\.(pdf|html)$/iu, '');
  return draft && !name.endsWith('-draft') ? `${name}-draft` : name;
}
