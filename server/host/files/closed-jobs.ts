/** Sources of closed jobs: what they say is in their records, and nothing is found in them anymore. */
import { type Stats, statSync } from 'node:fs';
import { join } from 'node:path';
import { jobHeads } from '../../../language/db/job-heads.ts';
import { recordsFolder } from './record-names.ts';
import { recordName } from './records.ts';

/**
 * Whether a file declares closed jobs only, and is as it was when the last of their records was written: then a check need
 * not parse it. A number that is used a second time, and a job that is written on, are in a newer file.
 * @param folder that has the records
 */
export function declaresClosedJobs(path: string, text: string, folder: string): boolean {
  const jobs = jobHeads(text) ?? [];
  if (jobs.length === 0) return false;
  const written = stateOf(path)?.mtimeMs;
  return written !== undefined && jobs.every((job) => written <= (closedAt(join(folder, recordsFolder), job) ?? 0));
}

/** When the last issue of a job's record was written, ms since the epoch; null: it is not closed. */
function closedAt(records: string, job: string): number | null {
  let last: number | null = null;
  for (let issue = 1; ; issue++) {
    const state = stateOf(join(records, recordName(job, issue)));
    if (state === undefined) return last;
    last = state.mtimeMs;
  }
}

function stateOf(path: string): Stats | undefined {
  try {
    return statSync(path, { throwIfNoEntry: false });
  } catch {
    return undefined;
  }
}
