import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { listName } from '../host/files/record-names.ts';
import { openLedger } from '../host/ledger/ledger.ts';
import { closedJobs } from '../host/ledger/questions.ts';
import { words } from './messages.ts';
import { note } from './say.ts';

/** Numbers of the jobs that are closed in a folder of records; none where there is no such folder. */
export async function closedIn(records: string): Promise<ReadonlySet<string>> {
  if (!existsSync(join(records, listName))) return new Set();
  const ledger = await openLedger(records);
  for (const one of ledger.notes) note(words(one));
  const closed = closedJobs(ledger);
  ledger.close();
  return closed;
}
