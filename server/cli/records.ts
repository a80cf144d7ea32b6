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

  program
    .command('close')
    .description('close a finished job: write its record, which is never changed again')
    .argument('<job>')
    .option('--reissue <reason>', 'close it once more, with a new issue of its certificate')
    .option('--key <file>', "sign the record with the shop's private key (Ed25519, PEM)")
    .option('--to <folder>', 'where the records are', 'records')
    .option('--today <date>', 'date of closing, if the clock of this machine is wrong', dateText, today())
    .option('--workspace <folder>', 'look names up in this folder', '.')
    .action(async (name: string, options: { today: string; workspace: string; to: string }) => {
      const { closeCommand } = await import('./close.ts');
      end(await closeCommand(name, options));
    });

  program
    .command('verify')
    .description('check the records of closed jobs: name each that was changed, is missing, or is new')
    .argument('[folder]', '', 'records')
    .option('--key <file>', "require the signature of the shop's public key (PEM)")
    .action(async (folder: string, options: { key?: string }) => {
      const { verifyCommand } = await import('./verify.ts');
      end(verifyCommand(folder, options));
    });
}
