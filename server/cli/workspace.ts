import { dirname, resolve } from 'node:path';
import { readSettings, type SettingsFile } from '../../language/config/config.ts';
import { isSettings } from '../../language/config/settings-name.ts';
import { jobHeads } from '../../language/db/job-heads.ts';
import { type CheckResult, type SourceFile, Workspace } from '../../language/db/workspace.ts';
import type { Diagnostic } from '../../language/model/diagnostic.ts';
import { type Filling, say } from '../../language/say/say.ts';
import { digest } from '../host/cache/digest.ts';
import { JobIndex } from '../host/cache/job-index.ts';
import { cachePlace, ResultCache } from '../host/cache/result-cache.ts';
import { declaresClosedJobs } from '../host/files/closed-jobs.ts';
import { excludedBy, FileFinder, type IsExcluded, settingsAt, shownPath } from '../host/files/find-files.ts';
import { idleSettings, unreadFinding } from '../host/files/not-read.ts';
import { readText, readTextNow } from '../host/files/read-text.ts';
import { isRead } from '../host/files/which-files.ts';
import type { ReadText } from '../host/host.ts';
import { workOutInThreads } from '../host/threads/check-threads.ts';
import { findingText, worded, words, workspaceLanguage } from './messages.ts';
import { note } from './say.ts';
import { UsageError } from './usage-error.ts';

/** The files of a run: those asked about, and those whose names are visible to them. */
export interface CliWorkspace {
  readonly files: readonly SourceFile[];
  /** Paths that findings are wanted for. */
  readonly asked: ReadonlySet<string>;
  /** The settings file in force. */
  readonly settings: SettingsFile | null;
  readonly result: CheckResult;
  /** What was found and not read, each with the reason. */
  readonly notRead: readonly Diagnostic[];
}

/** With what was worked out, for another look at the same files. */
interface OpenedWorkspace extends CliWorkspace {
  readonly kept: Workspace;
}

/**
 * Reads and checks. Names are looked up in the paths given and, where `around` is given or a single file is asked
 * about, in the folder around. Throws a UsageError where a path that was named cannot be read; what is found in a folder
 * and cannot be read costs itself.
 * @param isWhole all that is found will be reported
 * @param known what was worked out in an earlier look of the same run
 */
export async function openWorkspace(
  paths: readonly string[],
  around: string | undefined,
  isWhole = false,
  known: Workspace | null = null,
): Promise<OpenedWorkspace> {
  const finder = new FileFinder();
  const settings = await settingsInForce();
  const isExcluded = excludes(settings);
  const asked = await filesOf(finder, paths.length === 0 ? ['.'] : paths, isExcluded);
  const stray = paths.find((path) => !isRead(path) && asked.includes(shownPath(path)));
  if (stray !== undefined)
    throw new UsageError(worded`${stray} is not a .rebuild file. Give one, or a folder that has some.`);
  const unread = [...finder.unread];
  const alone = paths.length > 0 && paths.every((path) => path.endsWith('.rebuild'));
  const near =
    around !== undefined
      ? await filesOf(finder, [around], isExcluded)
      : alone
        ? await filesOf(finder, ['.'], isExcluded)
        : [];
  const named = new Set(paths.map(shownPath));
  if (!asked.some((path) => !isSettings(path) || named.has(path)) && unread.length === 0)
    throw new UsageError(
      worded`There is no .rebuild file in ${paths.length === 0 ? worded`this folder` : paths.join(', ')}. Give a file or a folder that has some.`,
    );
  const found = [...new Set([...asked, ...near])].sort();
  const files: SourceFile[] = [];
  const notRead = new Map<string, Filling>(finder.unread.map(({ path, message }) => [shownPath(path), message]));
  const place = usesCache ? cachePlace() : null;
  const jobs = isWhole || place === null ? null : new JobIndex(place, process.cwd());
  for (const path of found.filter((one) => !isSettings(one))) {
    const known = jobs?.jobsOf(path);
    if (known != null) {
      files.push(new UnreadFile(path, known));
      continue;
    }
    const read = readTextNow(path);
    if (read.kind === 'text' && isWhole && !named.has(path) && declaresClosedJobs(path, read.text, '.')) continue;
    if (read.kind === 'text')
      files.push({ uri: path, text: read.text, jobs: isWhole ? undefined : (jobHeads(read.text) ?? undefined) });
    else if (named.has(path)) throw new UsageError(`${path}: ${words(whyNot(read))}`);
    else notRead.set(path, whyNot(read));
  }
  const idle = found.filter((path) => isSettings(path) && path !== settings?.uri);
  const cache = new ResultCache(place, process.cwd(), isWhole ? ['sources', 'jobs'] : ['sources']);
  const workspace = known ?? new Workspace({ digest, store: cache });
  if (isWhole && known === null) await workOutInThreads(workspace, files, (pack) => cache.add(pack));
  if (known === null)
    opened.push(() => {
      cache.keep(workspace.database, (uri) => workspace.jobsOf(uri) !== null);
      jobs?.keep((path) => workspace.jobsOf(path));
    });
  const result = known === null ? workspace.open(files, settings) : workspace.check(files, settings);
  workspaceLanguage(result.messages);
  return {
    files,
    asked: new Set([
      ...asked,
      ...unread.map(({ path }) => shownPath(path)),
      ...(settings === null ? [] : [settings.uri]),
    ]),
    settings,
    result,
    kept: workspace,
    notRead: [
      ...[...notRead].sort().map(([path, message]) => unreadFinding(path, message)),
      ...idle.map((path) => idleSettings(path, settings?.uri ?? null)),
    ],
  };
}

/** A file of jobs whose text is read when one of them is needed. */
class UnreadFile implements SourceFile {
  readonly uri: string;
  readonly jobs: readonly string[];
  #text: string | null = null;

  constructor(uri: string, jobs: readonly string[]) {
    this.uri = uri;
    this.jobs = jobs;
  }

  get text(): string {
    if (this.#text === null) {
      const read = readTextNow(this.uri);
      this.#text = read.kind === 'text' ? read.text : '';
    }
    return this.#text;
  }
}

let usesCache = true;
/** What keeps the results of the workspaces that were opened. */
let opened: (() => void)[] = [];

/** Begins a run. @param uses whether what earlier runs worked out is used, and what this one works out is kept */
export function useCache(uses: boolean) {
  usesCache = uses;
  opened = [];
}

/** Keeps for the next run what was worked out in this one. */
export function keepResults() {
  for (const keep of opened) keep();
}

/** Reads and checks for a command that reports no findings: what was not read is reported beside its answer. */
export async function openQuietly(paths: readonly string[]): Promise<CliWorkspace> {
  const workspace = await openWorkspace(paths, undefined);
  for (const one of workspace.notRead) note(`${one.source.file}: ${findingText(one)}`);
  return workspace;
}

/** The settings of the folder that the command is run in, or the nearest above it, whatever is asked about. */
async function settingsInForce(): Promise<SettingsFile | null> {
  const path = settingsAt('.');
  if (path === null) return null;
  const uri = shownPath(path);
  const read = await readText(path);
  return read.kind === 'text' ? { uri, text: read.text } : { uri, unreadable: whyNot(read) };
}

/** What is not read in this run, by the settings in force. */
export async function excludedHere(): Promise<IsExcluded> {
  return excludes(await settingsInForce());
}

function excludes(settings: SettingsFile | null): IsExcluded {
  return settings === null ? () => false : excludedBy(dirname(resolve(settings.uri)), readSettings(settings).exclude);
}

function whyNot(read: Exclude<ReadText, { kind: 'text' }>): Filling {
  return read.kind === 'gone'
    ? say`This file disappeared while it was being read. Run the command again.`
    : read.message;
}

async function filesOf(finder: FileFinder, paths: readonly string[], isExcluded: IsExcluded): Promise<string[]> {
  const found: string[] = [];
  for (const path of paths) {
    const at = await finder.at(path, isExcluded);
    if ('problem' in at) throw new UsageError(words(at.problem));
    found.push(...at.files.map(shownPath));
  }
  return [...new Set(found)];
}
