/**
 * Which jobs the files of a workspace declare that declare nothing else, so that one job among thousands is found without reading
 * them all. A file is as it was while its size, its times and its number on the disk are.
 */
import { statSync } from 'node:fs';
import { plainJson } from '../../../language/db/plain-json.ts';
import { readKept, writeKept } from './cache-folder.ts';
import { digest } from './digest.ts';
import type { CachePlace } from './result-cache.ts';

const form = 'handtight jobs 2';

/** A file that was written so shortly before it was looked at may have been written again since, at the same time, ms. */
const shortly = 2_000;

/** So many files may have to be read before it is worth to write the index again. */
const fewFiles = 32;

/** Files with what is known of each, in the same order; names of jobs with a sign between them that no name can have. */
interface Known {
  readonly paths: readonly string[];
  readonly states: readonly string[];
  readonly jobs: readonly string[];
}

const nothing: Known = { paths: [], states: [], jobs: [] };
const between = '"';

export class JobIndex {
  private readonly place: CachePlace;
  private readonly name: string;
  private readonly known: Known;
  /** Files are looked up in the order in which they were kept. */
  private next = 0;
  private places: ReadonlyMap<string, number> | null = null;
  /** Known files that are as they were, by their place among them. */
  private readonly same: number[] = [];
  private readonly states = new Map<string, string>();

  constructor(place: CachePlace, workspace: string) {
    this.place = place;
    this.name = `${digest(workspace).replace(/\W/gu, '-')}jobs`;
    this.known = knownFiles(readKept(place.folder, this.name), place.version);
  }

  /** The jobs of a file that declares only jobs and is as it was; null where it has to be read. */
  jobsOf(path: string): readonly string[] | null {
    const state = stateOf(path);
    if (state === null) return null;
    const at = this.placeOf(path);
    if (at !== undefined && this.known.states[at] === state) {
      this.same.push(at);
      return this.known.jobs[at]!.split(between);
    }
    this.states.set(path, state);
    return null;
  }

  private placeOf(path: string): number | undefined {
    const { paths } = this.known;
    if (paths[this.next] === path) return this.next++;
    this.places ??= new Map(paths.map((one, index) => [one, index]));
    const at = this.places.get(path);
    if (at !== undefined) this.next = at + 1;
    return at;
  }

  /** @param jobsOf of a file that was read; null where it declares something else */
  keep(jobsOf: (path: string) => readonly string[] | null) {
    const read = [...this.states].flatMap(([path, state]) => {
      const jobs = jobsOf(path);
      return jobs === null || jobs.length === 0 ? [] : [{ path, state, jobs: jobs.join(between) }];
    });
    if (read.length < fewFiles) return;
    const { paths, states, jobs } = this.known;
    const all = [...this.same.map((at) => ({ path: paths[at]!, state: states[at]!, jobs: jobs[at]! })), ...read].sort(
      (a, b) => (a.path < b.path ? -1 : 1),
    );
    const columns = [all.map(({ path }) => path), all.map(({ state }) => state), all.map((one) => one.jobs)];
    const body = `${form}\n${this.place.version}\n${plainJson(columns.map((column) => column.join('\n')))}\n`;
    writeKept(this.place.folder, this.name, `${body}${digest(body)}`);
  }
}

function knownFiles(text: string | null, version: string): Known {
  if (text === null) return nothing;
  const end = text.lastIndexOf('\n') + 1;
  if (!text.startsWith(`${form}\n${version}\n`) || digest(text.slice(0, end)) !== text.slice(end)) return nothing;
  try {
    const columns: string[] = JSON.parse(text.slice(0, end).split('\n')[2]!);
    const [paths, states, jobs] = columns.map((column) => column.split('\n'));
    return { paths: paths!, states: states!, jobs: jobs! };
  } catch {
    return nothing;
  }
}

/** Null where it says nothing. */
function stateOf(path: string): string | null {
  // A line break would part it in two.
  if (path.includes('\n')) return null;
  try {
    const at = statSync(path, { throwIfNoEntry: false });
    if (at === undefined || !at.isFile() || Date.now() - Math.max(at.mtimeMs, at.ctimeMs) < shortly) return null;
    return `${at.size} ${at.mtimeMs} ${at.ctimeMs} ${at.ino}`;
  } catch {
    return null;
  }
}
