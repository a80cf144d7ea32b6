import equal from 'fast-deep-equal';
import type { Source } from '../model/source.ts';
import type { UnitInWork } from '../model/unit-in-work.ts';
import { kindOfId, uriOfId } from '../semantics/declaration-id.ts';
import type { Input } from './engine.ts';
import { type GatheredProblem, placeKey, type Queries } from './queries.ts';

/** Items that come of one file and are about another. */
class Elsewhere<Item> {
  private readonly fileOf: (item: Item) => string | null;
  /** What came of each file, and which files that is about. */
  private readonly from = new Map<string, { readonly items: readonly Item[]; readonly about: ReadonlySet<string> }>();
  /** By the file that it is about, then by the file that it comes of. */
  private readonly about = new Map<string, Map<string, readonly Item[]>>();
  private readonly changed = new Set<string>();

  /** @param fileOf the file that something is about; null: it is not gathered */
  constructor(fileOf: (item: Item) => string | null) {
    this.fileOf = fileOf;
  }

  /** @param items the same array as long as they are the same */
  take(from: string, items: readonly Item[]) {
    const before = this.from.get(from);
    if (before === undefined ? items.length === 0 : before.items === items) return;
    const byFile = new Map<string, Item[]>();
    for (const item of items) {
      const file = this.fileOf(item);
      if (file === null || file === from) continue;
      const known = byFile.get(file);
      if (known === undefined) byFile.set(file, [item]);
      else known.push(item);
    }
    for (const file of before?.about ?? []) this.put(file, from, byFile.get(file));
    for (const [file, own] of byFile) this.put(file, from, own);
    if (items.length === 0) this.from.delete(from);
    else this.from.set(from, { items, about: new Set(byFile.keys()) });
  }

  private put(file: string, from: string, items: readonly Item[] | undefined) {
    const ofFile = this.about.get(file) ?? new Map<string, readonly Item[]>();
    if (items === undefined) ofFile.delete(from);
    else ofFile.set(from, items);
    if (ofFile.size === 0) this.about.delete(file);
    else this.about.set(file, ofFile);
    this.changed.add(file);
  }

  /** Files that something about a file comes of. */
  sources(file: string): Iterable<string> {
    return this.about.get(file)?.keys() ?? [];
  }

  /** Sets what is another since the last time. */
  settle<Value>(input: Input<readonly Value[]>, value: (item: Item) => Value) {
    for (const file of this.changed) {
      const now = [...(this.about.get(file)?.values() ?? [])].flat().map(value);
      if (equal(now, input.peek(file) ?? [])) continue;
      if (now.length === 0) input.delete(file);
      else input.set(file, now);
    }
    this.changed.clear();
  }
}

/** Units by serial: each file is shown those of others that have one of its own. */
class Namesakes {
  private readonly from = new Map<string, readonly UnitInWork[]>();
  /** Files by serial. */
  private readonly files = new Map<string, Set<string>>();
  private readonly changed = new Set<string>();

  /** @param units the same array as long as they are the same */
  take(uri: string, units: readonly UnitInWork[]) {
    const before = this.from.get(uri) ?? none;
    if (before === units || (before.length === 0 && units.length === 0)) return;
    for (const { serial } of before) {
      this.touch(serial);
      this.files.get(serial)?.delete(uri);
    }
    for (const { serial } of units) {
      const files = this.files.get(serial) ?? new Set();
      this.files.set(serial, files.add(uri));
      this.touch(serial);
    }
    if (units.length === 0) this.from.delete(uri);
    else this.from.set(uri, units);
  }

  private touch(serial: string) {
    for (const file of this.files.get(serial) ?? []) this.changed.add(file);
  }

  /** Sets what is another since the last time. */
  settle(input: Input<readonly UnitInWork[]>) {
    for (const uri of this.changed) {
      const own = new Set((this.from.get(uri) ?? none).map(({ serial }) => serial));
      const others = new Set([...own].flatMap((serial) => [...(this.files.get(serial) ?? [])]));
      others.delete(uri);
      const now = [...others].sort().flatMap((other) => this.from.get(other)!.filter(({ serial }) => own.has(serial)));
      if (equal(now, input.peek(uri) ?? none)) continue;
      if (now.length === 0) input.delete(uri);
      else input.set(uri, now);
    }
    this.changed.clear();
  }
}

const none: readonly UnitInWork[] = [];

/**
 * What comes of one file and is about another: problems in a sequence come of the procedures that call it. It is gathered
 * file by file between questions, and set as an input, so that no single question has to look at every file.
 */
export class Gathering {
  private readonly queries: Queries;
  private readonly problems = new Elsewhere<GatheredProblem>(({ problem }) => uriOfId(problem.source.file));
  private readonly readings = new Elsewhere<string>((file) => file);
  private readonly used = new Elsewhere<Source>(({ file }) => (kindOfId(file) === 'Procedure' ? null : uriOfId(file)));

  private readonly namesakes = new Namesakes();

  constructor(queries: Queries) {
    this.queries = queries;
  }

  /** What comes of reading a file's declarations. */
  read(uri: string) {
    this.problems.take(uri, this.queries.problemsFrom(uri));
    this.readings.take(uri, this.queries.readsIn(uri));
    this.meet(uri);
  }

  /** The units of its jobs. */
  meet(uri: string) {
    this.namesakes.take(uri, this.queries.unitsIn(uri));
  }

  /** What comes of checking its procedures. */
  check(uri: string) {
    this.used.take(uri, this.queries.usedFrom(uri));
  }

  /** Makes known what was gathered. */
  settle() {
    this.problems.settle(this.queries.problemsElsewhere, (problem) => problem);
    this.used.settle(this.queries.usedAnywhere, placeKey);
    this.namesakes.settle(this.queries.unitsElsewhere);
  }

  forget(uri: string) {
    this.problems.take(uri, []);
    this.readings.take(uri, []);
    this.used.take(uri, []);
    this.namesakes.take(uri, none);
  }

  /** Other files whose declarations read names in this one. */
  readersOf(uri: string): Iterable<string> {
    return this.readings.sources(uri);
  }
}
