/**
 * Which jobs the files of a workspace declare that declare nothing else, so that one job among thousands is found without reading
 * them all. A file is as it was while its size, its times and its number on the disk are.
 */
import { statSync } from 'node:fs';
import { plainJson } from '../../../language/db/plain-json.ts';
import { readKept, writeKept } from './cache-folder.ts';
import { digest } from './digest.ts';
import type { CachePlace } from './result-cache.ts';

const form = 'handtight jobs 1';

/** A file that was written so shortly before it was looked at may have been written again since, at the same time, ms. */
const shortly = 2_000;

/** So many files may have to be read before it is worth to write the index again. */
const fewFiles = 32;

interface KnownFile {
  readonly state: string;
  readonly jobs: readonly string[];
}

export class JobIndex {
  private readonly place: CachePlace;
  private readonly name: string;
  private readonly files: ReadonlyMap<string, KnownFile>;
  /** Files as they are now. */
  private readonly now = new Map<string, KnownFile>();
  private readonly states = new Map<string, string>();
  private read = 0;

  constructor(place: CachePlace, workspace: string) {
    this.place = place;
    this.name = `${digest(workspace).replace(/\W/gu, '-')}jobs`;
    this.files = knownFiles(readKept(place.folder, this.name), place.version);
  }

  /** The jobs of a file that declares only jobs and is as it was; null where it has to be read. */
  jobsOf(path: string): readonly string[] | null {
    const state = stateOf(path);
    if (state === null) return null;
    const known = this.files.get(path);
    if (known?.state === state) {
      this.now.set(path, known);
      return known.jobs;
    }
    this.states.set(path, state);
    return null;
  }

  /** @param jobsOf of a file that was read; null where it declares something else */
  keep(jobsOf: (path: string) => readonly string[] | null) {
    for (const [path, state] of this.states) {
      const jobs = jobsOf(path);
      if (jobs === null) continue;
      this.now.set(path, { state, jobs });
      this.read++;
    }
    if (this.read < fewFiles) return;
    const all = [...this.now];
    const content = plainJson([
      all.map(([path]) => path),
      all.map(([, { state }]) => state),
      all.map(([, { jobs }]) => jobs),
    ]);
    const body = `${form}\n${this.place.version}\n${content}\n`;
    writeKept(this.place.folder, this.name, `${body}${digest(body)}`);
  }
}

function knownFiles(text: string | null, version: string): ReadonlyMap<string, KnownFile> {
  if (text === null) return new Map();
  const end = text.lastIndexOf('\n') + 1;
  if (!text.startsWith(`${form}\n${version}\n`) || digest(text.slice(0, end)) !== text.slice(end)) return new Map();
  try {
    const [paths, states, jobs] = JSON.parse(text.slice(0, end).split('\n')[2]!);
    return new Map(
      (paths as string[]).map((path, index) => [
        path,
        { state: states[index] as string, jobs: jobs[index] as string[] },
      ]),
    );
  } catch {
    return new Map();
  }
}

/** Null where it says nothing. */
function stateOf(path: string): string | null {
  try {
    const at = statSync(path, { throwIfNoEntry: false });
    if (at === undefined || !at.isFile() || Date.now() - Math.max(at.mtimeMs, at.ctimeMs) < shortly) return null;
    return `${at.size} ${at.mtimeMs} ${at.ctimeMs} ${at.ino}`;
  } catch {
    return null;
  }
}
