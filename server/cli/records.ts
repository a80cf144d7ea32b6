/** The commands of what is kept: issued revisions, closed jobs, and questions about them. */
import type { Command } from 'commander';
import { dateText, today } from './dates.ts';

/** @param end takes the exit code */
export function records(program: Command, end: (code: number) => void): void {
  program
    .command('issue')
    .description('issue a revision of a procedure: its text is kept, and jobs that name it are judged by it')
    .argument('<procedure>')
    .option('--today <date>', 'date of issue, if the clock of this machine is wrong', dateText, today())
    .option('--workspace <folder>', 'look names up in this folder', '.')
    .action(async (name: string, options: { today: string; workspace: string }) => {
      const { issueCommand } = await import('./issue.ts');
      end(await issueCommand(name, options));
    });
}
