/** What is to be printed: the names, files and folders of a command line, looked up in the workspace. */
import { statSync } from 'node:fs';
import type { Diagnostic } from '../../language/model/diagnostic.ts';
import type { Job } from '../../language/model/job.ts';
import type { Procedure } from '../../language/model/procedure.ts';
import { nearest } from '../../language/syntax/nearest.ts';
import { FileFinder, shownPath } from '../host/files/find-files.ts';
import { findingText, worded, words } from './messages.ts';
import { meant, thereAre } from './near.ts';
import { undeclared } from './undeclared.ts';
import { UsageError } from './usage-error.ts';
import { type CliWorkspace, excludedHere, openWorkspace } from './workspace.ts';

/** Something that prints. Without a job the sheet is blank. */
export interface Target {
  readonly procedure: Procedure;
  readonly job: Job | null;
}

export interface Targets {
  readonly workspace: CliWorkspace;
  /** Each once, in the order requested. */
  readonly targets: readonly Target[];
  /** Why something that was requested has no sheet. */
  readonly refused: readonly string[];
  /** What was taken, where it is not plain. */
  readonly notes: readonly string[];
}

interface Found {
  readonly targets: readonly Target[];
  readonly refused?: readonly string[];
  readonly note?: string;
}

/** What lies in a folder that was named: paths as the workspace has them. */
interface Folder {
  readonly files: readonly string[];
  /** What was found there and cannot be read. */
  readonly unread: readonly string[];
}

type Folders = ReadonlyMap<string, Folder>;

/** Looks all names up. A name is a job, else a procedure, else a folder. Throws a UsageError where it is nothing. */
export async function findTargets(names: readonly string[], around: string): Promise<Targets> {
  const files = names.filter((name) => isFile(name));
  const folders = new Map<string, Folder>();
  for (const name of names) if (!isFile(name) && isFolder(name)) folders.set(name, await folderAt(name, around));
  const workspace = await openWith(around, files, folders);
  const found = names.map((name) => targetsOf(name, workspace, folders));
  const targets = new Map(
    found.flatMap((one) => one.targets).map((target) => [target.job ?? target.procedure, target]),
  );
  const wanted = new Set([...folders.values()].flatMap((folder) => [...folder.files, ...folder.unread]));
  const costs = (one: Diagnostic) => one.severity === 'error' && wanted.has(one.source.file);
  return {
    workspace,
    targets: [...targets.values()],
    refused: [
      ...new Set(found.flatMap(({ refused }) => refused ?? [])),
      ...workspace.notRead.filter(costs).map((one) => worded`${one.source.file} is not printed: ${findingText(one)}`),
    ],
    notes: [
      ...found.flatMap(({ note }) => note ?? []),
      ...workspace.notRead.filter((one) => !costs(one)).map((one) => `${one.source.file}: ${findingText(one)}`),
    ],
  };
}

/**
 * Reads the workspace, and with it the folders that lie outside. One that has the name of a job or a procedure is not
 * requested, and must not bring its files in.
 */
async function openWith(around: string, files: readonly string[], folders: Folders): Promise<CliWorkspace> {
  if (folders.size > 0 && files.length === 0 && (await folderAt(around, around)).files.length === 0)
    return openWorkspace([around, ...folders.keys()], undefined);
  const workspace = await openWorkspace([around, ...files], undefined);
  const known = new Set(workspace.files.map(({ uri }) => uri));
  const outside = [...folders].flatMap(([name, folder]) =>
    named(name, workspace) === null && folder.files.some((file) => !known.has(file)) ? [name] : [],
  );
  return outside.length === 0 ? workspace : openWorkspace([around, ...files, ...outside], undefined);
}

function targetsOf(name: string, workspace: CliWorkspace, folders: Folders): Found {
  if (isFile(name)) return targetsOfFile(name, workspace);
  const target = named(name, workspace);
  const folder = folders.get(name);
  if (target === null)
    return folder === undefined ? unknown(name, workspace) : targetsOfFolder(name, folder, workspace);
  if (folder === undefined) return { targets: [target] };
  return {
    targets: [target],
    note:
      target.job === null
        ? worded`${name} is both a procedure and a folder: the procedure is used. Write ./${name} for the folder.`
        : worded`${name} is both a job and a folder: the job is used. Write ./${name} for the folder.`,
  };
}

function named(name: string, { result }: CliWorkspace): Target | null {
  const job = result.jobOf(name);
  if (job !== null) return { procedure: job.procedure, job };
  const found = result.procedureOf(name);
  return found === null ? null : { procedure: found.procedure, job: null };
}

function targetsOfFile(name: string, workspace: CliWorkspace): Found {
  const files = [shownPath(name)];
  const targets = [...jobsIn(files, workspace), ...proceduresIn(files, workspace)];
  if (targets.length === 0)
    throw new UsageError(
      worded`${name} declares no procedure and no job that can be printed. Run npx handtight check ${name} first.`,
    );
  return { targets, refused: undeclared(['job', 'procedure'], files, workspace.result) };
}

/** The jobs of a folder. Its procedures are only where jobs are looked up, unless there is nothing else. */
function targetsOfFolder(name: string, { files, unread: lost }: Folder, workspace: CliWorkspace): Found {
  if (files.length === 0 && lost.length > 0) return { targets: [] };
  if (files.length === 0)
    throw new UsageError(
      worded`There is no .rebuild file in ${name}. Give a folder that has jobs or procedures in it.`,
    );
  const jobs = jobsIn(files, workspace);
  const unread = undeclared(['job'], files, workspace.result);
  if (jobs.length > 0 || unread.length > 0) return { targets: jobs, refused: unread };
  const procedures = proceduresIn(files, workspace);
  const refused = undeclared(['procedure'], files, workspace.result);
  if (procedures.length === 0 && refused.length === 0)
    throw new UsageError(worded`${name} declares no job and no procedure: there is nothing to print in it.`);
  return {
    targets: procedures,
    refused,
    note: worded`${name} declares no job: its procedures are printed as blank sheets.`,
  };
}

function jobsIn(files: readonly string[], { result }: CliWorkspace): Target[] {
  const wanted = new Set(files);
  return result.jobs.filter(({ source }) => wanted.has(source.file)).map((job) => ({ procedure: job.procedure, job }));
}

function proceduresIn(files: readonly string[], { result }: CliWorkspace): Target[] {
  const wanted = new Set(files);
  return result.procedures
    .filter(({ procedure }) => wanted.has(procedure.source.file))
    .map(({ procedure }) => ({ procedure, job: null }));
}

function unknown(name: string, { result }: CliWorkspace): never {
  const known = [...result.jobs.map((job) => job.name), ...result.procedures.map(({ procedure }) => procedure.name)];
  const near = nearest(name, known);
  throw new UsageError(worded`No job, procedure or folder is called ${name}. ${meant(near, thereAre(known))}`);
}

function isFile(name: string): boolean {
  return name.endsWith('.rebuild') && !isFolder(name);
}

function isFolder(name: string): boolean {
  try {
    return statSync(name).isDirectory();
  } catch {
    return false;
  }
}

async function folderAt(path: string, around: string): Promise<Folder> {
  const finder = new FileFinder();
  // What the workspace has found keeps the name that it has there.
  const isExcluded = await excludedHere();
  await finder.at(around, isExcluded);
  const found = await finder.at(path, isExcluded);
  if ('problem' in found) throw new UsageError(words(found.problem));
  return {
    files: found.files.filter((file) => file.endsWith('.rebuild')).map(shownPath),
    unread: finder.unread.map((one) => shownPath(one.path)).filter((one) => isWithin(one, shownPath(path))),
  };
}

function isWithin(path: string, folder: string): boolean {
  return folder === '' || path === folder || path.startsWith(`${folder}/`);
}
