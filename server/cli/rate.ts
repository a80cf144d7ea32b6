import { rateLines } from '../../language/recommendations/rate-report.ts';
import { words } from './messages.ts';
import { openProcedure } from './procedure.ts';
import { say } from './say.ts';

/** Prints what a shim brings by the readings of all jobs of a procedure. */
export async function rateCommand(name: string, workspace: string): Promise<number> {
  const { found, result } = await openProcedure(name, workspace);
  say(`${rateLines(found.procedure, result.jobs, words).join('\n')}\n`);
  return 0;
}
