import pc from 'picocolors';
import { Workspace } from '../../language/db/workspace.ts';
import { withLines } from '../../language/drafting/imported.ts';
import { movedText } from '../../language/drafting/moved.ts';
import { type AskedOtherwise, askedOtherwise } from '../../language/judgment/held-over.ts';
import type { Job } from '../../language/model/job.ts';
import { nameWords } from '../../language/model/titles.ts';
import { closedIn } from './closed.ts';
import { diffOf, type FixedFile, writeFixed } from './fix.ts';
import { openJobIn } from './job.ts';
import { worded } from './messages.ts';
import { thereAre } from './near.ts';
import { note, say } from './say.ts';
import { UsageError } from './usage-error.ts';
import type { CliWorkspace } from './workspace.ts';

export interface MoveOptions {
  readonly to: string;
  readonly by: string;
  readonly reason: string;
  /** Tests that hold over though the new revision has them done otherwise: by the word of whoever moves the job. */
  readonly holds: readonly string[];
  readonly write: boolean;
  readonly today: string;
  readonly workspace: string;
  readonly records: string;
}

/** Moves a job to another revision, and says which of its results hold over. Exit code: 0 it is moved, or shown. */
export async function moveCommand(name: string, options: MoveOptions): Promise<number> {
  const { to, by, reason, today: on } = options;
  const workspace = await openJobIn(name, options.workspace);
  const { job, files, result } = workspace;
  const from = job.revision;
  if ([by, reason].some((text) => /["\r\n]/u.test(text) || text.trim() === ''))
    throw new UsageError(worded`Write --by and --reason in words, without quotes in them.`);
  if (from === to) throw new UsageError(worded`Job ${job.name} is at revision ${to} already.`);
  if (from === null)
    throw new UsageError(worded`${job.procedure.name} has no revision, so there is none to move from.`);
  if ((await closedIn(options.records)).has(job.name))
    throw new UsageError(worded`Job ${job.name} is closed: its record says by which revision it was judged.`);
  const { file } = job.source;
  const whole = symbolOf(job, workspace);
  const before = files.find(({ uri }) => uri === file)?.text ?? '';
  const text = movedText(before, whole.range, { from, to, by, on, reason });
  const target = jobIn(text, job, workspace);
  if (target === null || target.procedure.revision !== to) {
    const known = [
      ...result.issued.filter(({ procedure }) => procedure === job.procedure.name).map(({ revision }) => revision),
      result.procedureOf(job.procedure.name)?.procedure.revision ?? null,
    ].flatMap((one) => (one === null || one === from ? [] : [one]));
    throw new UsageError(`${worded`${job.procedure.name} has no revision ${to}.`} ${thereAre([...new Set(known)])}`);
  }
  const units = job.units.map((unit) => ({ unit, all: askedOtherwise(unit, job.procedure, target.procedure) }));
  const stray = options.holds.find((one) => !units.some(({ all }) => all.some((other) => other.name === one)));
  if (stray !== undefined)
    throw new UsageError(
      worded`--holds ${stray}: that is no result of this job that revision ${to} has done otherwise.`,
    );
  const after = units.toReversed().reduce((now, { unit, all }) => {
    const again = all.filter((one) => !options.holds.includes(one.name)).map((one) => one.name);
    const range = again.length === 0 ? null : unitRange(now, job, unit.place, workspace);
    return range === null ? now : withLines(now, range, [`again ${again.join(', ')}`]);
  }, text);
  const changed: FixedFile[] = [{ file, before, after, count: 1 }];
  const otherwise = new Map(units.flatMap(({ all }) => all.map((one) => [one.name, one])));
  say(`${[...otherwise.values()].map((one) => lineOf(one, job, options.holds)).join('')}`);
  if (otherwise.size === 0) say(`${worded`All results hold over: both revisions have them done in the same way.`}\n`);
  if (!options.write) {
    say(diffOf(changed));
    note(worded`This is what would be written. With --write it is.`);
    return 0;
  }
  await writeFixed(changed);
  say(`${pc.green(worded`moved`)}  ${worded`job ${job.name} from revision ${from} to ${to}, ${file}`}\n`);
  return 0;
}

function lineOf({ name, limits }: AskedOtherwise, { procedure }: Job, holds: readonly string[]): string {
  const how = limits === null ? worded`it is done otherwise` : worded`limit ${limits.before}, now ${limits.after}`;
  const what = holds.includes(name) ? worded`It holds over.` : worded`It is done again.`;
  return `${nameWords(procedure, name)}: ${how}. ${what}\n`;
}

function symbolOf({ source: { file, range } }: Job, { result }: CliWorkspace) {
  const found = (result.symbols.get(file) ?? []).find(
    ({ kind, nameRange }) => kind === 'job' && nameRange.start.line === range.start.line,
  );
  if (found === undefined)
    throw new UsageError(worded`The job in ${file} cannot be read. Run npx handtight check ${file}.`);
  return found;
}

function opened(text: string, job: Job, { files, settings }: CliWorkspace) {
  const { file } = job.source;
  return new Workspace().open(
    files.map(({ uri, text: own }) => ({ uri, text: uri === file ? text : own })),
    settings,
  );
}

function jobIn(text: string, job: Job, workspace: CliWorkspace): Job | null {
  return opened(text, job, workspace).jobOf(job.name);
}

function unitRange(text: string, job: Job, place: string, workspace: CliWorkspace) {
  const symbols = opened(text, job, workspace).symbols.get(job.source.file) ?? [];
  const own = symbols.find(({ kind, name }) => kind === 'job' && name.replaceAll('"', '') === job.name);
  return own?.children.find(({ name }) => name === `unit ${place}`)?.range ?? null;
}
