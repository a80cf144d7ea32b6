import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { listName } from '../files/record-names.ts';
import type { KnownVisit } from '../host.ts';
import { openLedger } from './ledger.ts';
import { lastVisit } from './questions.ts';

/** So many new records are taken in while somebody types: some tenths of a second. A ledger that lacks more waits for a command. */
const most = 200;

/** The last visit of each serial that the records know; none where they cannot be read now. */
export async function visitsIn(records: string, serials: readonly string[]): Promise<ReadonlyMap<string, KnownVisit>> {
  const known = new Map<string, KnownVisit>();
  if (serials.length === 0 || !existsSync(join(records, listName))) return known;
  try {
    const ledger = await openLedger(records, { most });
    try {
      for (const serial of new Set(serials)) {
        const visit = lastVisit(ledger, serial);
        if (visit === null) continue;
        const { job, closed, customer, cause } = visit.unit;
        known.set(serial, {
          job: String(job),
          closed: String(closed),
          customer: customer === null ? null : String(customer),
          cause: cause === null ? null : String(cause),
          results: visit.results,
        });
      }
    } finally {
      ledger.close();
    }
  } catch {
    // The editor goes on without.
  }
  return known;
}
