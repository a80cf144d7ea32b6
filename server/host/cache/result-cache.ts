import type { Database, Store, StoredResult } from '../../../language/db/engine.ts';
import { Pack, type PackedResult, packed } from '../../../language/db/pack.ts';
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

/**
 * The results of one workspace, from an earlier run and from other threads. What is cut off, altered or of another version
 * is left out in silence.
 */
export class ResultCache implements Store {
  private readonly place: CachePlace | null;
  private readonly name: string;
  private readonly kept: Pack | null;
  private hasMore = false;
  private readonly packs = new PackStore();

  /** @param workspace names it: the same files under the same names */
  constructor(place: CachePlace | null, workspace: string) {
    this.place = place;
    this.name = digest(workspace).replace(/\W/gu, '-');
    const text = place === null ? null : readKept(place.folder, this.name);
    this.kept = place === null || text === null ? null : Pack.of(text, place.version, digest);
    this.packs.add(this.kept);
  }

  get(query: string, key: string): StoredResult | null {
    return this.packs.get(query, key);
  }

  /** Takes results of another thread over. */
  add(pack: Pack) {
    this.packs.add(pack);
    this.hasMore = true;
  }

  /** Keeps what was worked out, if something was. */
  keep(database: Database) {
    const { place } = this;
    if (place === null) return;
    try {
      const known = [...database.stored()];
      if (!this.hasMore && known.every(({ result }) => result === null)) return;
      writeKept(place.folder, this.name, packed(this.all(known), place.version, digest));
    } catch {
      // What cannot be kept is worked out again.
    }
  }

  /** What is known now, and of what was not needed this time as much as may be needed again. */
  private *all(known: readonly Known[]): Generator<PackedResult> {
    const seen = new Set<string>();
    for (const { query, key, result: now } of known) {
      const result = now ?? this.get(query, key);
      if (result === null) continue;
      seen.add(`${query}\n${key}`);
      yield { query, key, result, age: 0 };
    }
    for (const one of this.kept?.results() ?? [])
      if (one.age < mostRuns && !seen.has(`${one.query}\n${one.key}`)) yield { ...one, age: one.age + 1 };
  }
}
