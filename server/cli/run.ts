import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import pc from 'picocolors';
import { z } from 'zod';
import { languages } from '../../language/words/index.ts';
import manifest from '../../package.json' with { type: 'json' };
import type { CheckFormat } from './check.ts';
import type { SpecsFormat } from './specs.ts';
import { UsageError } from './usage-error.ts';

const paperFormats = ['a4', 'letter'] as const;
const sheetFormats = ['pdf', 'html'] as const;

/** Runs the command line; the exit code: 0 nothing at error, 1 findings, 2 usage or unreadable input. */
export async function run(argv: readonly string[]): Promise<number> {
  let code = 0;
  const program = new Command('handtight')
    .description('Checks and prints machine rebuild procedures (.rebuild files).')
    .version(manifest.version)
    .exitOverride()
    .showHelpAfterError('(--help says more)');

  program
    .command('check')
    .description('check files or folders (this folder if none is given)')
    .argument('[paths...]')
    .addOption(
      new Option('--format <format>', 'how it is written').choices(['text', 'json', 'sarif', 'github']).default('text'),
    )
    .option('--max-warnings <count>', 'more warnings than this are a failure', wholeNumber)
    .option('--workspace <folder>', 'where names are looked up besides')
    .action(async (paths: string[], options: { format: CheckFormat; maxWarnings?: number; workspace?: string }) => {
      const { checkCommand } = await import('./check.ts');
      code = await checkCommand(paths, {
        format: options.format,
        maxWarnings: options.maxWarnings ?? null,
        workspace: options.workspace,
      });
    });

  printed(
    program
      .command('print')
      .description(
        'print travelers: of a job (its number), of a procedure (its name), or of all jobs in a file or a folder',
      )
      .argument('<names...>'),
  )
    .option('--one-file <name>', 'all in one document of this name, each with pages of its own', sheetFileName)
    .option('--draft', 'print with errors; every page is marked', false)
    .option('--workspace <folder>', 'where names are looked up', '.')
    .action(async (names: string[], options) => {
      const { printCommand } = await import('./print.ts');
      code = await printCommand(names, printOptions.parse({ ...options, formats: options.format }));
    });

  printed(
    program
      .command('certificate')
      .description("print the customer's certificate of a job that is done (its number, or a file)")
      .argument('<job>'),
  )
    .option('--draft', 'print it with what is missing; every page is marked', false)
    .option('--workspace <folder>', 'where names are looked up', '.')
    .action(async (name: string, options) => {
      const { certificateCommand } = await import('./certificate.ts');
      code = await certificateCommand(name, printOptions.parse({ ...options, formats: options.format }));
    });

  program
    .command('replay')
    .description('show what each step of a procedure does to the unit, on every way through it')
    .argument('<procedure>')
    .addOption(new Option('--format <format>', 'how it is written').choices(['text', 'json']).default('text'))
    .option('--workspace <folder>', 'where names are looked up', '.')
    .action(async (name: string, options: { format: 'text' | 'json'; workspace: string }) => {
      const { replayCommand } = await import('./replay.ts');
      code = await replayCommand(name, options);
    });

  program
    .command('specs')
    .description('lay out the specifications of a procedure: limits, sources, tools, and what is missing')
    .argument('<procedure>')
    .addOption(new Option('--format <format>', 'how it is written').choices(['text', 'json', 'html']).default('text'))
    .option('--out <file>', 'write it to a file')
    .option('--workspace <folder>', 'where names are looked up', '.')
    .action(async (name: string, options: { format: SpecsFormat; out?: string; workspace: string }) => {
      const { specsCommand } = await import('./specs.ts');
      code = await specsCommand(name, { format: options.format, out: options.out, workspace: options.workspace });
    });

  program
    .command('shim')
    .description('say what to fit in each unit of a job, by its last reading')
    .argument('<job>')
    .option('--workspace <folder>', 'where names are looked up', '.')
    .action(async (name: string, { workspace }: { workspace: string }) => {
      const { shimCommand } = await import('./shims.ts');
      code = await shimCommand(name, workspace);
    });

  program
    .command('match')
    .description('choose the shims of a whole set at once, with the least spread')
    .argument('<job>')
    .option('--workspace <folder>', 'where names are looked up', '.')
    .action(async (name: string, { workspace }: { workspace: string }) => {
      const { matchCommand } = await import('./shims.ts');
      code = await matchCommand(name, workspace);
    });

  program
    .command('rate')
    .description('fit what a shim brings from the readings of the jobs of a procedure')
    .argument('<procedure>')
    .option('--workspace <folder>', 'where names are looked up', '.')
    .action(async (name: string, { workspace }: { workspace: string }) => {
      const { rateCommand } = await import('./rate.ts');
      code = await rateCommand(name, workspace);
    });

  program
    .command('work-out')
    .description('work a number out and show the way; without a name, list the calculations')
    .argument('[calculation]')
    .argument('[figures...]', 'such as "guide=6 mm"')
    .action(async (name: string | undefined, figures: string[]) => {
      const { workOutCommand } = await import('./work-out.ts');
      code = workOutCommand(name, figures);
    });

  program
    .command('explain')
    .description('print the page of a rule; without a name, list the rules')
    .argument('[rule]')
    .action(async (rule: string | undefined) => {
      const { explainCommand } = await import('./explain.ts');
      code = explainCommand(rule);
    });

  try {
    await program.parseAsync([...argv]);
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    if (error instanceof UsageError) {
      process.stderr.write(`${pc.red('handtight:')} ${error.message}\n`);
      return 2;
    }
    // Nothing should come to here. Where it does, a trace says nothing to who works with it.
    if (process.env.HANDTIGHT_DEBUG !== undefined) throw error;
    process.stderr.write(
      `${pc.red('handtight:')} This is a defect of Handtight, not of your files: ${error instanceof Error ? error.message : String(error)}\nPlease report it, with the command and the files. Run with HANDTIGHT_DEBUG=1, it shows where it happened.\n`,
    );
    return 2;
  }
}

const printOptions = z.object({
  formats: z.array(z.enum(sheetFormats)).min(1),
  paper: z.enum(paperFormats).optional(),
  language: z.enum(languages).optional(),
  to: z.string().min(1),
  oneFile: z.string().min(1).optional(),
  draft: z.boolean(),
  workspace: z.string().min(1),
});

/** The options of all that prints sheets. */
function printed(command: Command): Command {
  return command
    .option('--format <formats>', 'pdf, html, or both with a comma', listOf(sheetFormats), ['pdf'])
    .addOption(
      new Option('--paper <paper>', 'size of the paper (else as in handtight.json, else a4)').choices([
        ...paperFormats,
      ]),
    )
    .addOption(
      new Option('--language <language>', 'of the fixed words (else as in handtight.json, else en)').choices([
        ...languages,
      ]),
    )
    .option('--to <folder>', 'where the files go', 'traveler');
}

function sheetFileName(text: string): string {
  if (text.trim() === '' || /[\\/]/u.test(text))
    throw new InvalidArgumentError('Give the name of a file. Its folder is given with --to.');
  return text;
}

function wholeNumber(text: string): number {
  if (!/^\d+$/u.test(text)) throw new InvalidArgumentError('Give a whole number.');
  return Number(text);
}

function listOf<T extends string>(known: readonly T[]) {
  return (text: string): T[] => {
    const wanted = text.split(',').map((word) => word.trim());
    const wrong = wanted.find((word) => !known.includes(word as T));
    if (wrong !== undefined) throw new InvalidArgumentError(`Formats are ${known.join(' and ')}, not ${wrong}.`);
    return wanted as T[];
  };
}
