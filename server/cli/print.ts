import pc from 'picocolors';
import { recordEnding } from '../../language/archive/record.ts';
import { printedAs } from '../../language/config/config.ts';
import { isDraft, sheetSettings } from '../../language/db/issued/draft.ts';
import type { SheetPart } from '../../language/documents/print-context.ts';
import { buildSheet, type Paper, type Sheet } from '../../language/documents/traveler/index.ts';
import type { Language } from '../../language/i18n/index.ts';
import type { SheetForm } from '../../language/model/sheet-form.ts';
import type { Asset } from '../../language/model/shop.ts';
import { contentHash } from '../host/files/content-hash.ts';
import { shownPath } from '../host/files/find-files.ts';
import { type Printed, printSheet, printSheets, type SheetFormat, WriteError } from '../host/print/index.ts';
import { bookFile, pieceOf, sheetNames } from '../host/print/sheet-name.ts';
import { worded, words } from './messages.ts';
import { onStop } from './on-stop.ts';
import { type Progress, startProgress } from './progress.ts';
import { note, say, tell } from './say.ts';
import { calledIn, type Ready, sift } from './sift.ts';
import { findTargets } from './targets.ts';
import { toolWarning } from './tools.ts';
import { UsageError } from './usage-error.ts';
import type { CliWorkspace } from './workspace.ts';

export interface PrintCommandOptions {
  readonly formats: readonly SheetFormat[];
  /** Of the settings file, else A4. */
  readonly paper?: Paper | undefined;
  readonly language?: Language | undefined;
  /** Of the settings file, else the card. */
  readonly form?: SheetForm | undefined;
  /** One unit of the job, by its place. */
  readonly unit?: string | undefined;
  /** The spec table, the drawings or a repair alone. */
  readonly part?: SheetPart | undefined;
  /** Of an instruction: the stages at one station. */
  readonly station?: string | undefined;
  readonly to: string;
  readonly draft: boolean;
  /** Folder or file that names are looked up in. */
  readonly workspace: string;
  /** Name of the one file that all sheets go into; undefined: each has its own. */
  readonly oneFile?: string | undefined;
  /** ISO date that stands for today. */
  readonly today: string;
}

interface Run {
  readonly options: PrintCommandOptions;
  readonly workspace: CliWorkspace;
  readonly ready: readonly Ready[];
  readonly progress: Progress;
  /** Sheets that lie on the disk. */
  printed: number;
}

/** Prints what is named, and the jobs of folders. Exit code: 0 all printed, 1 one has errors and no draft was requested. */
export async function printCommand(names: readonly string[], options: PrintCommandOptions): Promise<number> {
  const record = names.find((name) => name.endsWith(recordEnding));
  if (record !== undefined)
    throw new UsageError(
      worded`${record} is the record of a closed job: it has its certificate, and no sheet. Print that: npx handtight certificate ${record}`,
    );
  const { workspace, targets, refused: unread, notes } = await findTargets(names, options.workspace);
  for (const one of notes) note(one);
  const sifted = sift(targets, workspace.result, { draft: options.draft, ownFiles: options.oneFile === undefined });
  const refused = [...unread, ...sifted.refused];
  const progress = await startProgress();
  const run: Run = { options, workspace, ready: sifted.ready, progress, printed: 0 };
  const over = onStop(() => {
    progress.stop();
    tell(`${worded`Stopped: ${run.printed} of ${run.ready.length} printed.`}\n`);
  });
  try {
    if (options.oneFile === undefined) await printEach(run);
    else printTogether(run, options.oneFile);
  } catch (error) {
    if (!(error instanceof WriteError)) throw error;
    throw new UsageError(
      run.ready.length > 1 ? worded`${error.said} ${run.printed} of ${run.ready.length} printed.` : words(error.said),
    );
  } finally {
    progress.stop();
    over();
  }
  for (const warning of toolWarnings(sifted.ready, options.today)) note(warning);
  for (const reason of refused) tell(`${withRed(reason)}\n`);
  if (run.printed + refused.length > 1)
    tell(
      `${pc.bold(refused.length === 0 ? worded`${run.printed} printed` : worded`${run.printed} printed, ${refused.length} not printed`)}\n`,
    );
  return refused.length > 0 ? 1 : 0;
}

/** Tools that a sheet names, and that will not do for long; each once. */
function toolWarnings(ready: readonly Ready[], today: string): Set<string> {
  return new Set(
    ready.flatMap(({ procedure: { shop, stages, repairs } }) => {
      const steps = [...stages, ...repairs].flatMap((block) => block.steps);
      const named = new Set(
        steps.flatMap((step) => step.tools.flatMap((tool) => (tool.form === 'asset' ? tool.name : []))),
      );
      const stations = new Set(stages.map(({ station }) => station));
      const isUsed = (asset: Asset) =>
        named.has(asset.name) || (asset.kind === 'gauge' && asset.at !== null && stations.has(asset.at));
      return shop.assets.filter(isUsed).flatMap((asset) => toolWarning(asset, today) ?? []);
    }),
  );
}

async function printEach(run: Run): Promise<void> {
  const { options, ready, progress } = run;
  const { formats, to } = options;
  const nameOf = sheetNames(run.workspace.result);
  const done = new Set<string>();
  for (const [index, target] of ready.entries()) {
    if (ready.length > 1) progress.say(worded`${index + 1} of ${ready.length}: ${calledIn(target)}`);
    const asked = askedOf(run, target);
    // An instruction is that of the procedure, whatever job it is called for.
    const printed = asked.form === 'instruction' && asked.part === null ? { ...target, job: null } : target;
    const name = nameOf(printed, options.draft || isDraft(printed, run.workspace.result), pieceOf(asked));
    // Jobs of one procedure share its instruction.
    if (!done.has(name)) report(printSheet(sheetFor(printed, run), { formats, to, name }));
    done.add(name);
    run.printed++;
    // A signal is heard between two turns only, and what the typesetter gives back goes then.
    await new Promise((resolve) => setImmediate(resolve));
  }
}

function printTogether(run: Run, oneFile: string): void {
  const { options, ready, progress } = run;
  const { formats, to } = options;
  const [first, ...others] = ready.map((target) => sheetFor(target, run));
  if (first === undefined) return;
  progress.say(worded`${ready.length} into one file`);
  const name = bookFile(oneFile, options.draft);
  report(printSheets([first, ...others], `${first.header.subtitle}: ${name}`, { formats, to, name }));
  run.printed = ready.length;
}

function askedOf({ options, workspace }: Run, { job }: Ready) {
  const { unit = null, part = null, station = null } = options;
  return { ...printedAs(sheetSettings(job, workspace.result), options), unit, part, station };
}

function sheetFor(target: Ready, run: Run): Sheet {
  const { procedure, job, diagnostics } = target;
  const { options, workspace } = run;
  const asked = askedOf(run, target);
  refuseUnknown(target, asked);
  return buildSheet(procedure, {
    job,
    number: null,
    ...asked,
    draft: options.draft || isDraft(target, workspace.result),
    diagnostics,
    hash: contentHash(target, workspace),
  });
}

/** A unit, a repair or a station that is not there would print an empty page. */
function refuseUnknown({ procedure, job }: Ready, { unit, part, station, form }: ReturnType<typeof askedOf>): void {
  if (unit !== null && job === null)
    throw new UsageError(worded`--unit prints one unit of a job: name the job by its number.`);
  if (unit !== null && !job!.units.some(({ place }) => place === unit))
    throw new UsageError(
      worded`Job ${job!.name} has no unit ${unit}. Its units: ${job!.units.map(({ place }) => place).join(', ')}.`,
    );
  const repairs = procedure.repairs.map((_, index) => `R${index + 1}`);
  if (part !== null && part !== 'specs' && part !== 'drawing' && !repairs.includes(part))
    throw new UsageError(
      worded`${procedure.name} has no repair ${part}. ${repairs.length === 0 ? worded`It has none.` : worded`Its repairs: ${repairs.join(', ')}.`}`,
    );
  const stations = [...new Set(procedure.stages.flatMap((stage) => stage.station ?? []))];
  if (station !== null && form !== 'instruction')
    throw new UsageError(worded`--station prints what is done at one station: add --form instruction.`);
  if (station !== null && !stations.includes(station))
    throw new UsageError(worded`${procedure.name} has no stage at ${station}. Its stations: ${stations.join(', ')}.`);
}

/** Says what was written, and what a reader of it should know. */
export function report({ files, notes }: Printed): void {
  for (const file of files) say(`${pc.green(worded`printed`)}  ${shownPath(file)}\n`);
  for (const one of notes) note(words(one));
}

/** What is not printed, and why, comes first; what to do about it follows. */
function withRed(reason: string): string {
  return reason.replace(/^.*? is not printed: .*?\.(?= |$)/u, (why) => pc.red(why));
}
