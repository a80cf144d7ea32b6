import type { Database, Store, StoredResult } from '../../../language/db/engine.ts';
import { Pack, type PackedResult, packed } from '../../../language/db/pack.ts';
import { uriOfId } from '../../../language/semantics/declaration-id.ts';
import { cacheFolder, readKept, writeKept } from './cache-folder.ts';
import { digest } from './digest.ts';
import { PackStore } from './pack-store.ts';
import { programVersion } from './program.ts';

type Known = ReturnType<Database['stored']> extends Generator<infer T> ? T : never;

/** Results that were not needed in so many runs that kept some go. */
const mostRuns = 20;

export interface CachePlace {
  readonly folder: string;
  readonly version: string;
}

/** Where the running program keeps its results; null: nowhere. */
export function cachePlace(): CachePlace | null {
  const folder = cacheFolder();
  const version = folder === null ? null : programVersion();
  return folder === null || version === null ? null : { folder, version };
}

/** What is kept apart: a question about one job needs nothing of thousands of others. */
export type Area = 'sources' | 'jobs';

/**
 * The results of one workspace, from an earlier run and from other threads. What is cut off, altered or of another version
 * is left out in silence.
 */
export class ResultCache implements Store {
  private readonly place: CachePlace | null;
  private readonly name: string;
  private readonly areas: readonly Area[];
  private hasMore = false;
  private packs = new PackStore();
  private kept: ReadonlyMap<Area, Pack | null> = new Map();

  /**
   * @param workspace names it: the same files under the same names
   * @param areas those that are read, and kept
   */
  constructor(place: CachePlace | null, workspace: string, areas: readonly Area[] = ['sources', 'jobs']) {
    this.place = place;
    this.name = digest(workspace).replace(/\W/gu, '-');
    this.areas = areas;
    this.load();
  }

  private load() {
    const { place } = this;
    this.kept = new Map(
      this.areas.map((area) => {
        const text = place === null ? null : readKept(place.folder, this.name + area);
        return [area, place === null || text === null ? null : Pack.of(text, place.version, digest)];
      }),
    );
    for (const pack of this.kept.values()) this.packs.add(pack);
  }

  get(query: string, key: string): StoredResult | null {
    return this.packs.get(query, key);
  }

  /** Lets go of what was read: for a long session, in which the workspace knows by now what it needs. */
  release() {
    this.packs = new PackStore();
    this.kept = new Map();
  }

  /** Takes results of another thread over. */
  add(pack: Pack) {
    this.packs.add(pack);
    this.hasMore = true;
  }

  /**
   * Keeps what was worked out, if something was.
   * @param isOfJobs whether a file declares jobs and nothing else
   */
  keep(database: Database, isOfJobs: (uri: string) => boolean) {
    const { place } = this;
    if (place === null) return;
    if (this.kept.size === 0) this.load();
    try {
      const known = [...database.stored()].map((one) => ({
        ...one,
        area: isOfJobs(uriOfId(one.key)) ? ('jobs' as const) : ('sources' as const),
      }));
      for (const area of this.areas) {
        const own = known.filter((one) => one.area === area);
        if (!this.hasMore && own.every(({ result }) => result === null)) continue;
        writeKept(place.folder, this.name + area, packed(this.all(own, area), place.version, digest));
      }
    } catch {
      // What cannot be kept is worked out again.
    }
  }

  /** What is known now, and of what was not needed this time as much as may be needed again. */
  private *all(known: readonly Known[], area: Area): Generator<PackedResult> {
    const seen = new Set<string>();
    for (const { query, key, result: now } of known) {
      const result = now ?? this.get(query, key);
      if (result === null) continue;
      seen.add(`${query}\n${key}`);
      yield { query, key, result, age: 0 };
    }
    for (const one of this.kept.get(area)?.results() ?? [])
      if (one.age < mostRuns && !seen.has(`${one.query}\n${one.key}`)) yield { ...one, age: one.age + 1 };
  }
}
