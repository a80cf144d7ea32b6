/** Closes the jobs of a season, as the command does: every record of a folder in one go. */
import { buildRecord } from '../../language/archive/build.ts';
import { type UnsealedRecord, writeRecord } from '../../language/archive/record.ts';
import { writeIssued } from '../../language/db/issued/format.ts';
import { buildIssued } from '../../language/db/issued/issue.ts';
import { type SourceFile, Workspace } from '../../language/db/workspace.ts';
import { findMissing } from '../../language/documents/certificate/index.ts';
import { enterInList, writeRecordFile } from '../../server/host/files/records.ts';
import { type Season, type SeasonJob, seasonProcedure } from './season.ts';

export interface ClosedJob {
  readonly job: SeasonJob;
  /** Null: something is missing. */
  readonly record: UnsealedRecord | null;
  /** What is missing. */
  readonly missing: number;
}

/** The files of a season with its issued revision, and the record of each job that can be closed. */
export function closeSeason({ library, jobs }: Season): {
  readonly files: readonly SourceFile[];
  readonly closed: readonly ClosedJob[];
} {
  const first = new Workspace().open(library);
  const { procedure } = first.procedureOf(seasonProcedure)!;
  const issued = {
    uri: `procedures/one-spring/issued/${seasonProcedure}-C.issued.rebuild`,
    text: writeIssued(buildIssued(procedure, { files: library, result: first }, '2026-10-06')),
  };
  const files = [...library, issued, ...jobs.map(({ file }) => file)];
  const result = new Workspace().open(files);
  const closed = jobs.map((job): ClosedJob => {
    const read = result.jobOf(job.name)!;
    const diagnostics = result.findingsIn(job.file.uri);
    const missing = findMissing(read.procedure, read, { diagnostics, today: job.done }).length;
    if (missing > 0) return { job, record: null, missing };
    const record = buildRecord(read, {
      paper: 'a4',
      hash: 'ab'.repeat(32),
      today: job.done,
      issue: 1,
      reason: null,
      replaces: null,
      texts: { job: job.file.text, issued: issued.text, tools: '' },
      version: '0',
    });
    return { job, record, missing };
  });
  return { files, closed };
}

/** Writes the records of a season into a folder, with their list. */
export function writeSeason(folder: string, closed: readonly ClosedJob[]): void {
  for (const { job, record } of closed) {
    if (record === null) continue;
    const name = `${job.name}-1.record.json`;
    const text = writeRecord(record, null);
    if (writeRecordFile(folder, name, text)) enterInList(folder, name, Buffer.from(text));
  }
}
