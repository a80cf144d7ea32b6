import { rateLines } from '../../language/recommendations/rate-report.ts';
import { openProcedure } from './procedure.ts';
import { say } from './say.ts';

/** Prints what a shim brings by the readings of all jobs of a procedure. */
export async function rateCommand(name: string, workspace: string): Promise<number> {
  const { procedure, jobs } = await openProcedure(name, workspace);
  say(`${rateLines(procedure, jobs).join('\n')}\n`);
  return 0;
}
