import type { CheckResult } from '../../../language/db/workspace.ts';
import type { SheetOptions } from '../../../language/documents/print-context.ts';
import type { Job } from '../../../language/model/job.ts';
import type { Procedure } from '../../../language/model/procedure.ts';
import { fileKey, nameDigits } from './file-name.ts';

/** What prints: a procedure, or a job by one. */
type Printed =
  | { readonly job: Pick<Job, 'name'> }
  | { readonly job: null; readonly procedure: Pick<Procedure, 'name' | 'revision'> };

/**
 * Names the files of sheets. Two sheets of a workspace never share a file, even where case is not distinguished: names
 * that would be the same get digits of their own. A draft has another name than the released sheet, so that it never takes
 * its place.
 * `piece`: what of it is printed, where that is not all.
 */
export function sheetNames({ declared: { jobs, procedures } }: Pick<CheckResult, 'declared'>) {
  const wanted = new Map<string, Set<string>>();
  const all = [
    ...jobs.map((job): Printed => ({ job })),
    ...procedures.map((procedure): Printed => ({ procedure, job: null })),
  ];
  for (const one of all) {
    const key = fileKey(plainName(one));
    wanted.set(key, (wanted.get(key) ?? new Set()).add(identityOf(one)));
  }
  return (one: Printed, draft: boolean, piece = ''): string => {
    const plain = plainName(one);
    const name = piece === '' ? plain : `${plain}-${piece}`;
    const identity = piece === '' ? identityOf(one) : `${identityOf(one)} ${piece}`;
    const others = [...(wanted.get(fileKey(name)) ?? [])].filter((other) => other !== identity);
    const own = others.length > 0 ? `${name}-${nameDigits(identity)}` : name;
    return draft ? `${own}-draft` : own;
  };
}

/** What of a sheet is in the file, where it is not the whole card: `record`, `unit-5`, `R3`. */
export function pieceOf({
  form,
  unit,
  part,
  station,
}: Pick<SheetOptions, 'form' | 'unit' | 'part' | 'station'>): string {
  const words = [
    part ?? (form === undefined || form === 'card' ? null : form),
    unit == null ? null : `unit-${unit}`,
    station ?? null,
  ];
  return words.filter((word) => word !== null).join('-');
}

function plainName(one: Printed): string {
  if (one.job !== null) return `job-${one.job.name}`;
  const { procedure } = one;
  return procedure.revision === null ? procedure.name : `${procedure.name}-revision-${procedure.revision}`;
}

function identityOf(one: Printed): string {
  return `${one.job === null ? 'procedure' : 'job'} ${plainName(one)}`;
}

/** Name of a certificate's file; `jobs` are all jobs of the workspace; no other shares it. */
export function certificateName(job: Pick<Job, 'name'>, draft: boolean, jobs: readonly Pick<Job, 'name'>[]): string {
  const own = `certificate-${job.name}`;
  const shared = jobs.some(({ name }) => name !== job.name && fileKey(`certificate-${name}`) === fileKey(own));
  return `${own}${shared ? `-${nameDigits(own)}` : ''}${draft ? '-draft' : ''}`;
}

/** Name of one file for several sheets, as given by hand: with or without its ending. */
export function bookFile(given: string, draft: boolean): string {
  const name = given.replace(/\.(pdf|html)$/iu, '');
  return draft && !name.endsWith('-draft') ? `${name}-draft` : name;
}
