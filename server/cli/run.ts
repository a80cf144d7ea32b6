import { type Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import pc from 'picocolors';
import * as z from 'zod';
import { labelKinds } from '../../language/documents/labels/index.ts';
import { type Language, languages } from '../../language/i18n/index.ts';
import { sheetForms } from '../../language/model/sheet-form.ts';
import { listed } from '../../language/say/say.ts';
import { reserved } from '../../language/syntax/keywords.ts';
import { namePattern } from '../../language/syntax/name-pattern.ts';
import manifest from '../../package.json' with { type: 'json' };
import type { CheckFormat, CheckOptions } from './check.ts';
import { dateText, today } from './dates.ts';
import { defect } from './defect.ts';
import { chooseLanguage, worded } from './messages.ts';
import { records } from './records.ts';
import { say, tell } from './say.ts';
import type { SpecsFormat } from './specs.ts';
import { UsageError } from './usage-error.ts';
import { WordedCommand } from './worded-command.ts';

const paperFormats = ['a4', 'letter'] as const;
const sheetFormats = ['pdf', 'html'] as const;

/** Longer than any name or path; such an argument is a mistake of a script. */
const longestArgument = 4096;

interface CheckArguments {
  readonly format: CheckFormat;
  readonly maxWarnings?: number;
  readonly workspace?: string;
  readonly fix: boolean;
  readonly dryRun: boolean;
  readonly watch: boolean;
}

/**
 * Runs the command line; the exit code: 0 nothing at error, 1 findings, 2 usage or unreadable input, 3 a defect of this
 * program. Never throws.
 */
export async function run(argv: readonly string[]): Promise<number> {
  let code = 0;
  chooseLanguage(languageAsked(argv));
  const program = new WordedCommand('handtight')
    .description(worded`Checks and prints machine rebuild procedures (.rebuild files).`)
    .version(manifest.version, '-V, --version', worded`output the version number`)
    .helpOption('-h, --help', worded`display help for command`)
    .helpCommand('help [command]', worded`display help for command`)
    .exitOverride()
    .configureOutput({ writeOut: say, writeErr: tell })
    .showHelpAfterError(worded`(add --help for the options)`)
    .addOption(
      new Option(
        '--messages <language>',
        worded`language of what the command says (else as in handtight.json, else that of the machine)`,
      ).choices([...languages]),
    );

  program
    .command('check')
    .description(worded`check files or folders (this folder if none is given)`)
    .argument('[paths...]')
    .addOption(
      new Option('--format <format>', worded`output format`)
        .choices(['text', 'json', 'sarif', 'github'])
        .default('text'),
    )
    .option('--max-warnings <count>', worded`fail if there are more warnings than this`, wholeNumber)
    .option('--workspace <folder>', worded`also look names up in this folder`)
    .option('--fix', worded`make the safe fixes in the files, and report what is left`, false)
    .addOption(
      new Option('--dry-run', worded`show what --fix would change, and change nothing`)
        .default(false)
        .implies({ fix: true })
        .conflicts('format'),
    )
    .addOption(
      new Option('--watch', worded`check again after each change, until Ctrl-C`)
        .default(false)
        .conflicts(['format', 'fix', 'dryRun', 'maxWarnings']),
    )
    .action(async (paths: string[], options: CheckArguments) => {
      const checked: CheckOptions = {
        format: options.format,
        maxWarnings: options.maxWarnings ?? null,
        workspace: options.workspace,
        fix: options.dryRun ? 'dry-run' : options.fix,
      };
      if (options.watch) await (await import('./watch.ts')).watchCommand(paths, checked);
      code = await (await import('./check.ts')).checkCommand(paths, checked);
    });

  program
    .command('format')
    .description(worded`lay out files or folders (this folder if none is given): indentation, blanks, columns`)
    .argument('[paths...]')
    .option('--check', worded`only say which files are not laid out, and fail if there are any`, false)
    .action(async (paths: string[], options: { check: boolean }) => {
      const { formatCommand } = await import('./format.ts');
      code = await formatCommand(paths, options);
    });

  printed(
    program
      .command('print')
      .description(
        worded`print the card of a job (by number), of a procedure (by name), or of all jobs in a file or folder`,
      )
      .argument('<names...>'),
  )
    .addOption(
      new Option(
        '--form <form>',
        worded`card: all of it; record: what is written down; instruction: what is done, for the wall (else as in handtight.json, else card)`,
      ).choices([...sheetForms]),
    )
    .option('--unit <place>', worded`one unit of the job, which was added later`)
    .option('--station <name>', worded`of an instruction: the stages at one station`)
    .option('--part <part>', worded`specs, drawing, or a repair by its number (R3), alone`, sheetPart)
    .option(
      '--one-file <name>',
      worded`put all sheets into one document of this name, each with its own page numbers`,
      sheetFileName,
    )
    .option('--draft', worded`print despite errors; every page is marked`, false)
    .option('--today <date>', worded`if the clock of this machine is wrong`, dateText, today())
    .option('--workspace <folder>', worded`look names up in this folder`, '.')
    .action(async (names: string[], options) => {
      const { printCommand } = await import('./print.ts');
      code = await printCommand(names, printOptions.parse({ ...options, formats: options.format }));
    });

  printed(
    program
      .command('certificate')
      .description(
        worded`print the customer's certificate for a finished job (by number, file, or record of a closed job)`,
      )
      .argument('<job>'),
  )
    .option('--draft', worded`print it with a list of what is missing; every page is marked`, false)
    .option('--today <date>', worded`date of issue, if the clock of this machine is wrong`, dateText, today())
    .option('--workspace <folder>', worded`look names up in this folder`, '.')
    .action(async (name: string, options) => {
      const parsed = printOptions.parse({ ...options, formats: options.format });
      const { certificateCommand } = await import('./certificate.ts');
      code = await certificateCommand(name, parsed);
    });
  program
    .command('label')
    .description(
      worded`print labels of a job, one to a page: a tag for each unit, a slip for the box, or what is certified`,
    )
    .argument('<job>')
    .addOption(new Option('--kind <kind>', worded`what for`).choices([...labelKinds]).default('tag'))
    .option('--size <size>', worded`width and height of the label in millimeters`, labelSize, { width: 70, height: 36 })
    .option('--unit <place>', worded`of one unit`)
    .option('--format <formats>', worded`pdf, html, or both with a comma`, listOf(sheetFormats), ['pdf'])
    .addOption(
      new Option('--language <language>', worded`of the fixed words (else as in handtight.json, else en)`).choices([
        ...languages,
      ]),
    )
    .option('--to <folder>', worded`where the file goes`, 'traveler')
    .option('--today <date>', worded`date of issue, if the clock of this machine is wrong`, dateText, today())
    .option('--workspace <folder>', worded`look names up in this folder`, '.')
    .action(async (name: string, options) => {
      const { labelCommand } = await import('./label.ts');
      code = await labelCommand(name, labelOptions.parse({ ...options, formats: options.format }));
    });

  records(program, (done) => {
    code = done;
  });

  program
    .command('replay')
    .description(worded`show what each step of a procedure does to the unit, on every path through it`)
    .argument('<procedure>')
    .addOption(new Option('--format <format>', worded`output format`).choices(['text', 'json']).default('text'))
    .option('--workspace <folder>', worded`look names up in this folder`, '.')
    .action(async (name: string, options: { format: 'text' | 'json'; workspace: string }) => {
      const { replayCommand } = await import('./replay.ts');
      code = await replayCommand(name, options);
    });

  program
    .command('specs')
    .description(worded`lay out the specifications of a procedure: limits, sources, tools, and what is missing`)
    .argument('<procedure>')
    .addOption(new Option('--format <format>', worded`output format`).choices(['text', 'json', 'html']).default('text'))
    .option('--out <file>', worded`write it to a file`)
    .option('--workspace <folder>', worded`look names up in this folder`, '.')
    .action(async (name: string, options: { format: SpecsFormat; out?: string; workspace: string }) => {
      const { specsCommand } = await import('./specs.ts');
      code = await specsCommand(name, { format: options.format, out: options.out, workspace: options.workspace });
    });

  program
    .command('shim')
    .description(worded`say what to fit in each unit of a job, from its last reading`)
    .argument('<job>')
    .option('--workspace <folder>', worded`look names up in this folder`, '.')
    .action(async (name: string, { workspace }: { workspace: string }) => {
      const { shimCommand } = await import('./shims.ts');
      code = await shimCommand(name, workspace);
    });

  program
    .command('match')
    .description(worded`choose the shims for a whole set at once, with the smallest spread`)
    .argument('<job>')
    .option('--workspace <folder>', worded`look names up in this folder`, '.')
    .action(async (name: string, { workspace }: { workspace: string }) => {
      const { matchCommand } = await import('./shims.ts');
      code = await matchCommand(name, workspace);
    });

  program
    .command('rate')
    .description(worded`fit the rate of a shim to the readings of all jobs of a procedure`)
    .argument('<procedure>')
    .option('--workspace <folder>', worded`look names up in this folder`, '.')
    .action(async (name: string, { workspace }: { workspace: string }) => {
      const { rateCommand } = await import('./rate.ts');
      code = await rateCommand(name, workspace);
    });

  program
    .command('work-out')
    .description(worded`do a calculation and show the working; without a name, list the calculations`)
    .argument('[calculation]')
    .argument('[figures...]', worded`such as "guide=6 mm"`)
    .action(async (name: string | undefined, figures: string[]) => {
      const { workOutCommand } = await import('./work-out.ts');
      code = workOutCommand(name, figures);
    });

  program
    .command('explain')
    .description(
      worded`print the page of a rule, or what a caution follows from; without a name, list the rules; “cautions” lists the cautions; a procedure and a step: the cautions of the step, and why`,
    )
    .argument('[rule]', worded`a rule, a caution, “cautions”, or a procedure`)
    .argument('[step]', worded`number of a step of that procedure`)
    .option('--workspace <folder>', worded`the folder that the procedure is in`, '.')
    .action(async (rule: string | undefined, step: string | undefined, options: { workspace: string }) => {
      const { explainCommand } = await import('./explain.ts');
      code = await explainCommand(rule, step, options);
    });

  const begin = program
    .command('new')
    .description(worded`begin a procedure or a family, or copy the samples; alone, list what there is to begin from`)
    .argument('[what]')
    .allowExcessArguments()
    .action(async (what: string | undefined) => {
      const { newCommand } = await import('./new.ts');
      code = newCommand(what);
    });
  begin
    .command('procedure')
    .description(worded`write a first procedure for a family, with blanks for what only you know`)
    .argument('<family>')
    .option('--name <name>', worded`of the procedure (else rebuild- and the family)`, nameText)
    .option('--title <title>', worded`of the procedure`, worded`Rebuild and test`)
    .option('--reads <tests>', worded`tests that give a figure, such as opening=pressure,leak=time`, commaList, [])
    .option('--to <file>', worded`where it goes (else a file of its name)`)
    .option('--workspace <folder>', worded`the folder with your shop and families`, '.')
    .action(async (family: string, options) => {
      const { newProcedureCommand } = await import('./new.ts');
      code = await newProcedureCommand(family, { name: undefined, to: undefined, ...options });
    });
  begin
    .command('family')
    .description(worded`write a first family from the names of its parts`)
    .argument('<name>', '', nameText)
    .requiredOption(
      '--parts <names>',
      worded`in the order in which they are built, such as body,spring,plug; the first again begins another stack on it`,
      commaNames,
    )
    .option('--tests <names>', worded`what every unit must pass`, commaNames, [])
    .option('--title <title>', worded`of the family`, worded`Unit`)
    .option('--to <file>', worded`where it goes (else a file of its name)`)
    .action(async (name: string, options) => {
      const { newFamilyCommand } = await import('./new.ts');
      code = newFamilyCommand(name, { to: undefined, ...options });
    });
  begin
    .command('job')
    .description(worded`write the job of an order that has come in, and say which of its serials were here before`)
    .argument('<number>', '', lineText)
    .requiredOption('--of <procedure>', worded`the procedure that it follows`)
    .option('--units <count>', worded`how many came in`, countOf, 1)
    .option('--number <number>', worded`their part number`)
    .option('--serials <serials>', worded`as marked on the bodies, in their order`, commaList, [])
    .option('--own-serials', worded`give each the next serial of the shop`, false)
    .option('--customer <name>', worded`whose they are`, lineText)
    .option('--title <title>', worded`of the job`, lineText)
    .option('--today <date>', worded`day on which they came in`, dateText, today())
    .option('--to <file>', worded`where it goes (else a file of its number)`)
    .option('--records <folder>', worded`the records of closed jobs`, 'records')
    .option('--workspace <folder>', worded`the folder with your procedures`, '.')
    .action(async (number: string, options) => {
      const { newJobCommand } = await import('./new-job.ts');
      code = await newJobCommand(number, options);
    });
  begin
    .command('samples')
    .description(worded`copy the library that comes with the program into a new folder`)
    .argument('<folder>')
    .action(async (folder: string) => {
      const { newSamplesCommand } = await import('./new.ts');
      code = newSamplesCommand(folder);
    });

  program
    .command('mcp')
    .description(
      worded`serve an assistant: check, explain, replay, calculate and look up, by the Model Context Protocol`,
    )
    .option('--workspace <folder>', worded`the folder that it may read`, '.')
    .action(async ({ workspace }: { workspace: string }) => {
      const { serve } = await import('../mcp/serve.ts');
      await serve(workspace);
    });
  for (const command of program.commands)
    if (command.options.some(({ long }) => long === '--workspace'))
      command
        .option('--no-cache', worded`work everything out again, and keep nothing for the next run`)
        .hook('preAction', async () => (await import('./workspace.ts')).useCache(command.opts().cache))
        .hook('postAction', async () => (await import('./workspace.ts')).keepResults());

  try {
    sensible(argv.slice(2));
    await program.parseAsync([...argv]);
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    if (!(error instanceof UsageError)) return defect(error);
    tell(
      `${pc.red('handtight:')} ${error.message.replace(/\S{400,}?(?=[.,:]?(?:\s|$))/gu, (word) => `${word.slice(0, 80)}…`)}\n`,
    );
    return 2;
  }
}

/** The language that is given anywhere in the arguments: the help is in it too. */
function languageAsked(argv: readonly string[]): Language | null {
  const at = argv.findLastIndex((one) => /^--messages(?:=|$)/u.test(one));
  const asked = argv[at] === '--messages' ? argv[at + 1] : argv[at]?.slice('--messages='.length);
  return languages.find((language) => language === asked) ?? null;
}

/** Refuses what no command has a use for. */
function sensible(args: readonly string[]): void {
  if (args.includes(''))
    throw new UsageError(
      worded`One of the arguments is empty. Give a name, a file or a folder there, or leave it out; in a script, check that the variable has a value.`,
    );
  const long = args.find(({ length }) => length > longestArgument);
  if (long !== undefined)
    throw new UsageError(
      worded`The argument that begins with ${long.slice(0, 40)} has ${long.length} characters. No name, file or figure is that long: check that the quotes are closed.`,
    );
}

const printOptions = z.object({
  form: z.enum(sheetForms).optional(),
  unit: z.string().min(1).optional(),
  station: z.string().min(1).optional(),
  part: z.union([z.enum(['specs', 'drawing']), z.templateLiteral(['R', z.int()])]).optional(),
  formats: z.array(z.enum(sheetFormats)).min(1),
  paper: z.enum(paperFormats).optional(),
  language: z.enum(languages).optional(),
  to: z.string().min(1),
  oneFile: z.string().min(1).optional(),
  draft: z.boolean(),
  workspace: z.string().min(1),
  today: z.iso.date(),
});

const labelOptions = z.object({
  kind: z.enum(labelKinds),
  size: z.object({ width: z.number(), height: z.number() }),
  unit: z.string().min(1).optional(),
  formats: z.array(z.enum(sheetFormats)).min(1),
  language: z.enum(languages).optional(),
  to: z.string().min(1),
  workspace: z.string().min(1),
  today: z.iso.date(),
});

/** The options of all that prints sheets. */
function printed(command: Command): Command {
  return command
    .option('--format <formats>', worded`pdf, html, or both with a comma`, listOf(sheetFormats), ['pdf'])
    .addOption(
      new Option('--paper <paper>', worded`size of the paper (else as in handtight.json, else a4)`).choices([
        ...paperFormats,
      ]),
    )
    .addOption(
      new Option('--language <language>', worded`of the fixed words (else as in handtight.json, else en)`).choices([
        ...languages,
      ]),
    )
    .option('--to <folder>', worded`where the files go`, 'traveler');
}

/** `70x36`: millimeters, as label paper is sold. */
function labelSize(text: string): { width: number; height: number } {
  const [, width, height] = /^(\d{2,3}(?:\.\d)?)\s*[x×]\s*(\d{2,3}(?:\.\d)?)(?:\s*mm)?$/u.exec(text) ?? [];
  const size = { width: Number(width), height: Number(height) };
  if (!(size.width >= 20 && size.width <= 300 && size.height >= 10 && size.height <= 300))
    throw new InvalidArgumentError(worded`Give width and height of the label in millimeters: 70x36.`);
  return size;
}

function sheetPart(text: string): string {
  if (text !== 'specs' && text !== 'drawing' && !/^R\d+$/u.test(text))
    throw new InvalidArgumentError(worded`Parts are specs, drawing, or a repair by its number, such as R3.`);
  return text;
}

function sheetFileName(text: string): string {
  if (text.trim() === '' || /[\\/]/u.test(text))
    throw new InvalidArgumentError(worded`Give the name of a file. Give its folder with --to.`);
  return text;
}

function commaList(text: string): string[] {
  return text
    .split(',')
    .map((part) => part.trim())
    .filter((part) => part !== '');
}

function commaNames(text: string): string[] {
  return commaList(text).map(nameText);
}

/** A name that the language reads. */
function nameText(text: string): string {
  if (!namePattern.test(text) || reserved.includes(text))
    throw new InvalidArgumentError(
      worded`“${text}” is no name. A name begins with a letter and has letters, digits and single hyphens, and is not a word such as ${reserved.slice(0, 3).join(', ')}: spring-seat.`,
    );
  return text;
}

function wholeNumber(text: string): number {
  if (!/^\d+$/u.test(text)) throw new InvalidArgumentError(worded`Give a whole number.`);
  return Number(text);
}

function listOf<T extends string>(known: readonly T[]) {
  return (text: string): T[] => {
    const wanted = text.split(',').map((word) => word.trim());
    const wrong = wanted.find((word) => !known.includes(word as T));
    if (wrong !== undefined) throw new InvalidArgumentError(worded`Formats are ${listed(known)}, not ${wrong}.`);
    return wanted as T[];
  };
}

/** Words that go into quotes, or are a number: of one line. */
function lineText(text: string): string {
  if (/["\n\r]/u.test(text)) throw new InvalidArgumentError(worded`It cannot have a quote or a line end in it.`);
  return text;
}

/** How many units came in: one to 99. */
function countOf(text: string): number {
  const count = Number(text);
  if (!/^\d{1,2}$/u.test(text) || count === 0) throw new InvalidArgumentError(worded`Give a count from 1 to 99.`);
  return count;
}
