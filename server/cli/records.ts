/** The commands of what is kept: issued revisions, closed jobs, and questions about them. */
import { type Command, Option } from 'commander';
import { dateText, today } from './dates.ts';
import type { ImportOptions } from './import.ts';
import type { AffectedOptions, AskOptions, LearnOptions, OpenOptions } from './ledger.ts';
import { worded } from './messages.ts';
import type { MoveOptions } from './move.ts';
import { rowFormats } from './row-formats.ts';
import type { ToolsOptions } from './tools.ts';

/** @param end takes the exit code */
export function records(program: Command, end: (code: number) => void): void {
  tools(program, end);
  program
    .command('issue')
    .description(worded`issue a revision of a procedure: its text is kept, and jobs that name it are judged by it`)
    .argument('<procedure>')
    .option('--today <date>', worded`date of issue, if the clock of this machine is wrong`, dateText, today())
    .option('--workspace <folder>', worded`look names up in this folder`, '.')
    .action(async (name: string, options: { today: string; workspace: string }) => {
      const { issueCommand } = await import('./issue.ts');
      end(await issueCommand(name, options));
    });

  program
    .command('close')
    .description(worded`close a finished job: write its record, which is never changed again`)
    .argument('<job>')
    .option('--reissue <reason>', worded`close it once more, with a new issue of its certificate`)
    .option('--key <file>', worded`sign the record with the shop's private key (Ed25519, PEM)`)
    .option('--to <folder>', worded`where the records are`, 'records')
    .option('--today <date>', worded`date of closing, if the clock of this machine is wrong`, dateText, today())
    .option('--workspace <folder>', worded`look names up in this folder`, '.')
    .action(async (name: string, options: { today: string; workspace: string; to: string }) => {
      const { closeCommand } = await import('./close.ts');
      end(await closeCommand(name, options));
    });

  program
    .command('verify')
    .description(worded`check the records of closed jobs: name each that was changed, is missing, or is new`)
    .argument('[folder]', '', 'records')
    .option('--key <file>', worded`require the signature of the shop's public key (PEM)`)
    .action(async (folder: string, options: { key?: string }) => {
      const { verifyCommand } = await import('./verify.ts');
      end(verifyCommand(folder, options));
    });

  program
    .command('move')
    .description(worded`move a job to another revision of its procedure, and say which of its results hold over`)
    .argument('<job>')
    .requiredOption('--to <revision>', worded`the revision that it is judged by from now on`)
    .requiredOption('--by <person>', worded`who decides that`)
    .requiredOption('--reason <words>', worded`why`)
    .option(
      '--holds <tests>',
      worded`results that hold over though the new revision has them done otherwise, with commas`,
      listOf,
      [],
    )
    .option('--write', worded`write it; else what would be written is shown`, false)
    .option('--today <date>', worded`if the clock of this machine is wrong`, dateText, today())
    .option('--records <folder>', worded`the records of closed jobs`, 'records')
    .option('--workspace <folder>', worded`look names up in this folder`, '.')
    .action(async (name: string, options: MoveOptions) => {
      const { moveCommand } = await import('./move.ts');
      end(await moveCommand(name, options));
    });

  program
    .command('import')
    .description(
      worded`take the results of a test bench into their jobs, from a file and a mapping that says what is in it`,
    )
    .argument('<file>', worded`CSV with a line of heads, or NDJSON (.ndjson, .jsonl)`)
    .requiredOption('--mapping <file>', worded`JSON that says which column is what`)
    .option('--write', worded`write it; else what would be written is shown`, false)
    .option('--records <folder>', worded`the records of closed jobs`, 'records')
    .option('--workspace <folder>', worded`the folder with the jobs`, '.')
    .addHelpText(
      'after',
      `\n${worded`Example of a mapping; a column is named, and what is in “is” holds for all rows:`}
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
    .description(
      worded`say what was done to a unit, by its serial; or all of a job, part number, customer or renewed part`,
    )
    .argument('<serial>')
    .action(async (word: string, options: AskOptions) => {
      const { historyCommand } = await import('./ledger.ts');
      end(await historyCommand(word, options));
    });

  asking(program.command('affected'))
    .description(worded`list what was judged with a tool, by somebody or by a procedure, nearest to its limit first`)
    .option('--tool <number>', worded`read with this tool`)
    .option('--batch <batch>', worded`a part of this batch went in`)
    .option('--by <person>', worded`done by this person`)
    .option('--procedure <name>', worded`judged by this procedure`)
    .option('--revision <revision>', worded`of the procedure`)
    .option('--from <date>', worded`on this day or later`, dateText)
    .option('--to <date>', worded`on this day or before`, dateText)
    .option('--within <quantity>', worded`only what was nearer than this to its limit, such as "3 bar"`)
    .action(async (options: AffectedOptions) => {
      const { affectedCommand } = await import('./ledger.ts');
      end(await affectedCommand(options));
    });

  asking(program.command('learn'))
    .description(worded`show month by month what the closed jobs say: passed at once, as found, comebacks by cause`)
    .option('--procedure <name>', worded`of this procedure`)
    .option('--from <date>', worded`closed on this day or later`, dateText)
    .option('--to <date>', worded`closed on this day or before`, dateText)
    .action(async (options: LearnOptions) => {
      const { learnCommand } = await import('./ledger.ts');
      end(await learnCommand(options));
    });

  asking(program.command('open'))
    .description(worded`list the jobs that are not closed: for whom, since when, how many units, and what is missing`)
    .option('--today <date>', worded`if the clock of this machine is wrong`, dateText, today())
    .option('--workspace <folder>', worded`the folder with the jobs`, '.')
    .action(async (options: OpenOptions) => {
      const { openCommand } = await import('./ledger.ts');
      end(await openCommand(options));
    });
}

function tools(program: Command, end: (code: number) => void): void {
  program
    .command('tools')
    .description(worded`list the tools of the shop by the day on which their calibration ends`)
    .option('--within <days>', worded`only what is due within so many days, or overdue`)
    .option('--today <date>', worded`if the clock of this machine is wrong`, dateText, today())
    .addOption(new Option('--format <format>', worded`output format`).choices([...rowFormats]).default('text'))
    .option('--workspace <folder>', worded`the folder with the shop`, '.')
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
    .addOption(new Option('--format <format>', worded`output format`).choices([...rowFormats]).default('text'))
    .option('--page <file>', worded`write the answer to this file as a page (HTML), with pictures over time`)
    .option('--records <folder>', worded`the records of closed jobs`, 'records');
}
