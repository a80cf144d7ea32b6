import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { draftJob, nextSerials } from '../../language/drafting/job.ts';
import { listName } from '../host/files/record-names.ts';
import { openLedger } from '../host/ledger/ledger.ts';
import { closedJobs, lastVisit } from '../host/ledger/questions.ts';
import { worded, words } from './messages.ts';
import { named } from './named.ts';
import { listOf } from './near.ts';
import { written } from './new.ts';
import { note } from './say.ts';
import { UsageError } from './usage-error.ts';
import { openQuietly } from './workspace.ts';

export interface NewJobOptions {
  readonly of: string;
  readonly units: number;
  readonly number?: string;
  readonly serials: readonly string[];
  readonly ownSerials: boolean;
  readonly customer?: string;
  readonly title?: string;
  readonly today: string;
  readonly to?: string;
  readonly workspace: string;
  readonly records: string;
}

/** Writes the job of an order that has come in, and reports when each known serial was here. Overwrites nothing. */
export async function newJobCommand(name: string, options: NewJobOptions): Promise<number> {
  const { workspace, of, units, serials, customer, title, today, number, to, records } = options;
  const { result } = await openQuietly([workspace]);
  if (result.declared.jobs.some((job) => job.name === name))
    throw new UsageError(worded`There is a job ${name} already. Give the next number.`);
  const { procedure } = named('procedure', of, result.procedures, (one) => one.procedure);
  if (number !== undefined && !procedure.numbers.some((one) => one.name === number))
    throw new UsageError(
      worded`${of} has no part number ${number}. It has: ${listOf(procedure.numbers.map((one) => one.name))}.`,
    );
  const count = Math.max(units, serials.length);
  const given = result.jobs.flatMap((job) =>
    job.units.flatMap(({ results }) =>
      results.flatMap((one) =>
        one.form === 'fact' && one.word === 'shop-serial' && one.text !== null ? [one.text] : [],
      ),
    ),
  );
  const text = draftJob(procedure, {
    name,
    title: title ?? (count === 1 ? worded`One unit` : worded`Set of ${count}`),
    customer: customer ?? null,
    received: today,
    number: number ?? null,
    serials,
    units: count,
    ownSerials: options.ownSerials ? nextSerials(given, count) : [],
  });
  const code = written(to ?? join(workspace, `job-${name.replace(/[^\p{L}\p{N}._-]/gu, '-')}.rebuild`), text);
  const closed = existsSync(join(records, listName)) ? await known(serials, records) : new Set<string>();
  for (const serial of serials) {
    const open = result.jobs.find((job) => !closed.has(job.name) && job.units.some((unit) => unit.serial === serial));
    if (open !== undefined) note(worded`Serial ${serial} is in job ${open.name} too, which is not closed.`);
  }
  return code;
}

/** Reports when each serial was here. Gives the jobs that are closed. */
async function known(serials: readonly string[], records: string): Promise<ReadonlySet<string>> {
  const ledger = await openLedger(records);
  for (const one of ledger.notes) note(words(one));
  const closed = closedJobs(ledger);
  for (const serial of serials) {
    const visit = lastVisit(ledger, serial);
    if (visit !== null)
      note(
        worded`Serial ${serial} was here before: job ${String(visit.unit.job)}, closed ${String(visit.unit.closed)}, ${String(visit.unit.customer)}. For all of it: npx handtight history ${serial}`,
      );
  }
  ledger.close();
  return closed;
}
