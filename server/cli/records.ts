/** The commands of what is kept: issued revisions, closed jobs, and questions about them. */
import { type Command, Option } from 'commander';
import { dateText, today } from './dates.ts';
import type { ImportOptions } from './import.ts';
import type { AffectedOptions, AskOptions, LearnOptions, OpenOptions } from './ledger.ts';
import type { MoveOptions } from './move.ts';
import { rowFormats } from './row-formats.ts';
import type { ToolsOptions } from './tools.ts';

/** @param end takes the exit code */
export function records(program: Command, end: (code: number) => void): void {
  tools(program, end);
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

  program
    .command('move')
    .description('move a job to another revision of its procedure, and say which of its results hold over')
    .argument('<job>')
    .requiredOption('--to <revision>', 'the revision that it is judged by from now on')
    .requiredOption('--by <person>', 'who decides that')
    .requiredOption('--reason <words>', 'why')
    .option(
      '--holds <tests>',
      'results that hold over though the new revision has them done otherwise, with commas',
      listOf,
      [],
    )
    .option('--write', 'write it; else what would be written is shown', false)
    .option('--today <date>', 'if the clock of this machine is wrong', dateText, today())
    .option('--records <folder>', 'the records of closed jobs', 'records')
    .option('--workspace <folder>', 'look names up in this folder', '.')
    .action(async (name: string, options: MoveOptions) => {
      const { moveCommand } = await import('./move.ts');
      end(await moveCommand(name, options));
    });

  program
    .command('import')
    .description('take the results of a test bench into their jobs, from a file and a mapping that says what is in it')
    .argument('<file>', 'CSV with a line of heads, or NDJSON (.ndjson, .jsonl)')
    .requiredOption('--mapping <file>', 'JSON that says which column is what')
    .option('--write', 'write it; else what would be written is shown', false)
    .option('--records <folder>', 'the records of closed jobs', 'records')
    .option('--workspace <folder>', 'the folder with the jobs', '.')
    .addHelpText(
      'after',
      `
Example of a mapping; a column is named, or { "is": … } holds for all rows:
  {
    "job": "Order", "serial": "SN", "by": "Operator",
    "on": "Date", "days": "day.month.year", "decimal": ",", "separator": ";",
    "results": [
      { "test": { "is": "opening" }, "value": "P_open", "unit": { "is": "bar" }, "tool": { "is": "PG-400" } },
      { "test": { "is": "chatter" }, "value": { "column": "Chatter", "words": { "OK": "pass", "NOK": "fail" } } }
    ]
  }`,
    )
    .action(async (file: string, options: ImportOptions) => {
      const { importCommand } = await import('./import.ts');
      end(await importCommand(file, options));
    });

  asking(program.command('history'))
    .description('say what was done to a unit, by its serial; or all of a job, part number, customer or renewed part')
    .argument('<serial>')
    .action(async (word: string, options: AskOptions) => {
      const { historyCommand } = await import('./ledger.ts');
      end(await historyCommand(word, options));
    });

  asking(program.command('affected'))
    .description('list what was judged with a tool, by somebody or by a procedure, nearest to its limit first')
    .option('--tool <number>', 'read with this tool')
    .option('--batch <batch>', 'a part of this batch went in')
    .option('--by <person>', 'done by this person')
    .option('--procedure <name>', 'judged by this procedure')
    .option('--revision <revision>', 'of the procedure')
    .option('--from <date>', 'on this day or later', dateText)
    .option('--to <date>', 'on this day or before', dateText)
    .option('--within <quantity>', 'only what was nearer than this to its limit, such as "3 bar"')
    .action(async (options: AffectedOptions) => {
      const { affectedCommand } = await import('./ledger.ts');
      end(await affectedCommand(options));
    });

  asking(program.command('learn'))
    .description('show month by month what the closed jobs say: passed at once, as found, comebacks by cause')
    .option('--procedure <name>', 'of this procedure')
    .option('--from <date>', 'closed on this day or later', dateText)
    .option('--to <date>', 'closed on this day or before', dateText)
    .action(async (options: LearnOptions) => {
      const { learnCommand } = await import('./ledger.ts');
      end(await learnCommand(options));
    });

  asking(program.command('open'))
    .description('list the jobs that are not closed: for whom, since when, how many units, and what is missing')
    .option('--today <date>', 'if the clock of this machine is wrong', dateText, today())
    .option('--workspace <folder>', 'the folder with the jobs', '.')
    .action(async (options: OpenOptions) => {
      const { openCommand } = await import('./ledger.ts');
      end(await openCommand(options));
    });
}

function tools(program: Command, end: (code: number) => void): void {
  program
    .command('tools')
    .description('list the tools of the shop by the day on which their calibration ends')
    .option('--within <days>', 'only what is due within so many days, or overdue')
    .option('--today <date>', 'if the clock of this machine is wrong', dateText, today())
    .addOption(new Option('--format <format>', 'output format').choices([...rowFormats]).default('text'))
    .option('--workspace <folder>', 'the folder with the shop', '.')
    .action(async (options: ToolsOptions) => {
      const { toolsCommand } = await import('./tools.ts');
      end(await toolsCommand(options));
    });
}

function listOf(text: string): string[] {
  return text.split(',').flatMap((one) => one.trim() || []);
}

function asking(command: Command): Command {
  return command
    .addOption(new Option('--format <format>', 'output format').choices([...rowFormats]).default('text'))
    .option('--page <file>', 'write the answer to this file as a page (HTML), with pictures over time')
    .option('--records <folder>', 'the records of closed jobs', 'records');
}
