import { matchLines, shimLines } from '../../language/advice/report.ts';
import { openJob } from './job.ts';

/** Prints what to fit in each unit of a job by its last reading. */
export async function shimCommand(name: string, workspace: string): Promise<number> {
  process.stdout.write(`${shimLines(await openJob(name, workspace)).join('\n')}\n`);
  return 0;
}

/** Prints the shims for the whole set at once, with the least spread. */
export async function matchCommand(name: string, workspace: string): Promise<number> {
  process.stdout.write(`${matchLines(await openJob(name, workspace)).join('\n')}\n`);
  return 0;
}
