import { existsSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod';
import type { Job, Result, Unit } from '../../../language/model/job.ts';
import { readingAt } from '../../../language/model/reading-id.ts';
import { formatQuantity } from '../../../language/quantities/index.ts';
import { shimLines } from '../../../language/recommendations/report.ts';
import { visitText } from '../../cli/ledger.ts';
import { messageReader, worded } from '../../cli/messages.ts';
import { named } from '../../cli/named.ts';
import { UsageError } from '../../cli/usage-error.ts';
import { listName } from '../../host/files/record-names.ts';
import { openLedger } from '../../host/ledger/ledger.ts';
import { history, type Visit } from '../../host/ledger/questions.ts';
import { type AddTool, answered, readOnly, text } from '../tool.ts';

/** What to fit or to turn in the units of a job. */
export const addShims: AddTool = (server, folder) => {
  server.registerTool(
    'shims',
    {
      title: worded`Advise on a job`,
      description: worded`Returns what to fit or to turn in each unit of a job, from its last reading; nothing for a unit that passes.`,
      inputSchema: { job: z.string().min(1).describe(worded`Number of the job`) },
      annotations: readOnly,
    },
    ({ job: number }) =>
      answered(async () => {
        const { result } = await folder.open();
        const job = result.jobOf(number) ?? named('job', number, result.jobs, (one) => one);
        return text(shimLines(job, messageReader()).join('\n'));
      }),
  );
};

/** What was done to a unit before. */
export const addHistory: AddTool = (server, folder) => {
  server.registerTool(
    'history',
    {
      title: worded`Find the history of a unit`,
      description: worded`Returns each job in which a serial number occurs, closed ones first and oldest first: what was found, fitted, read and done.`,
      inputSchema: { serial: z.string().min(1).describe(worded`Serial number, as it is marked on the unit`) },
      annotations: readOnly,
    },
    ({ serial }) =>
      answered(async () => {
        const { result } = await folder.open();
        const closed = await closedVisits(join(folder.path, 'records'), serial);
        const found = result.jobs
          .filter(({ name }) => !closed.some(({ unit }) => unit.job === name))
          .flatMap((job) => job.units.filter((unit) => unit.serial === serial).map((unit) => ({ job, unit })))
          .sort((a, b) => ((a.job.received ?? '') < (b.job.received ?? '') ? -1 : 1));
        if (found.length === 0 && closed.length === 0)
          throw new UsageError(worded`No job of this folder has a unit with the serial ${serial}.`);
        const texts = found.map(({ job, unit }) => [head(job, unit), ...unit.results.map(line)].join('\n'));
        return text([...closed.map(visitText).reverse(), ...texts].join('\n\n'));
      }),
  );
};

/** From the records of closed jobs, the last first; none where nothing was closed. */
async function closedVisits(records: string, serial: string): Promise<readonly Visit[]> {
  if (!existsSync(join(records, listName))) return [];
  const ledger = await openLedger(records);
  try {
    const found = history(ledger, serial);
    return found?.by === 'serial' ? found.visits : [];
  } finally {
    ledger.close();
  }
}

function head({ name, procedure, revision, received }: Job, { place, numberText, onHold }: Unit): string {
  const parts = [
    worded`Job ${name}`,
    received === null ? null : worded`received ${received}`,
    revision === null ? procedure.name : worded`${procedure.name} revision ${revision}`,
    worded`unit ${place}, ${numberText}`,
    onHold === null ? null : worded`on hold: ${onHold}`,
  ];
  return parts.filter((part) => part !== null).join(', ');
}

/** `delivery full 3`. */
function where(id: string): string {
  const { test, point, place } = readingAt(id);
  return [test, point, place].filter((word) => word !== null).join(' ');
}

/** A result as a job writes it. */
function line(result: Result): string {
  const found = 'asFound' in result && result.asFound ? 'as found ' : '';
  switch (result.form) {
    case 'reading':
      return `  ${found}${where(result.name)} ${formatQuantity(result.value)}${result.tool === null ? '' : ` on ${result.tool}`}`;
    case 'words':
      return `  ${where(result.name)} “${result.text}”`;
    case 'verdict':
      return `  ${found}${where(result.name)} ${result.passed ? 'pass' : 'fail'}`;
    case 'shim':
      return `  ${result.part} ${result.fitted ? 'in' : 'out'} ${formatQuantity(result.size)}`;
    case 'torque':
      return `  torque ${result.part} ${formatQuantity(result.value)}${result.tool === null ? '' : ` with ${result.tool}`}`;
    case 'renewed':
      return `  renewed ${result.part}`;
    case 'remark':
      return `  ${found}“${result.text}”`;
    case 'fact':
      return `  ${[result.word, result.name, result.text, result.label, result.by, result.on].filter((one) => one !== null).join(' ')}`;
    case 'done':
      return `  done by ${result.by}${result.on === null ? '' : ` on ${result.on}`}`;
  }
}
