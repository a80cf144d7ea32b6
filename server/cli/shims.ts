import { matchLines, shimLines } from '../../language/recommendations/report.ts';
import { openJob } from './job.ts';
import { messageReader } from './messages.ts';
import { say } from './say.ts';

/** Prints what to fit in each unit of a job by its last reading. */
export async function shimCommand(name: string, workspace: string): Promise<number> {
  say(`${shimLines(await openJob(name, workspace), messageReader()).join('\n')}\n`);
  return 0;
}

/** Prints the shims for the whole set at once, with the least spread. */
export async function matchCommand(name: string, workspace: string): Promise<number> {
  say(`${matchLines(await openJob(name, workspace), messageReader()).join('\n')}\n`);
  return 0;
}
