/**
 * An incremental computation engine: inputs, derived queries, recorded dependencies. It is demand-driven with revision
 * numbers, early cut-off and backdating as in salsa (red and green cells), and marks what may be stale when an input
 * changes (dirty bits), so that what an edit cannot affect is not even looked at. Between processes it keeps verifying
 * traces ("Build systems à la carte"): a result with the digests of what it was computed from.
 */
import { type Dependents, dependentsIn, withDependent, withoutDependent } from './dependents.ts';

/** What a query is besides its function. */
export interface QueryOptions<Value> {
  /** Whether a result that is computed again is the same as before; then whoever read it stays valid, and the old one is kept. */
  readonly equal?: (before: Value, now: Value) => boolean;
  /**
   * A firewall passes on that it changed, never that it may have changed: it is brought up to date before anything is asked.
   * Those of a lower rank come first. It may read what is behind firewalls of lower ranks, and other firewalls up to its own.
   */
  readonly firewall?: number;
  readonly trace?: Trace<Value>;
  /** For large values that are seldom needed again: those not used lately are dropped, and computed again when they are needed. */
  readonly held?: Held;
}

export interface Held {
  /** Most values that are held; it may be twice as many for a while. */
  readonly most: number;
  /** Keys whose values are held besides. */
  readonly always?: (key: string) => boolean;
}

/** How a query takes part in the traces that are kept between processes. What is between two traced queries is left out. */
export interface Trace<Value> {
  /** A text for each value, another for another value. Null: this one must not be kept. */
  readonly text: (value: Value) => string | null;
  /**
   * `end`: the value is cheap, so it is always computed, and only compared. `digest`: only a digest is kept, which shows whether
   * the value is another. A function: the value is kept as its text, and read from it.
   */
  readonly keeps: 'end' | 'digest' | ((text: string) => Value);
  /** Keys that it is for; all if not given. */
  readonly of?: (key: string) => boolean;
}

/** A result as it is kept between processes. */
export interface StoredResult {
  /** Null: only its digest is kept. */
  readonly text: string | null;
  readonly digest: string;
  /** What it was computed from. */
  readonly reads: readonly StoredRead[];
}

export interface StoredRead {
  readonly query: string;
  readonly key: string;
  readonly digest: string;
}

/** Results of an earlier process, or of another one. */
export interface Store {
  get(query: string, key: string): StoredResult | null;
}

interface Query {
  readonly name: string;
  readonly compute: (key: string) => unknown;
  readonly equal: (before: never, now: never) => boolean;
  readonly firewall: number | null;
  readonly cells: Map<string, Cell>;
  readonly trace: Trace<unknown> | null;
  readonly held: Held | null;
  /** Cells whose values may be dropped; the ones used last come last. */
  readonly recent: Set<Cell>;
}

/** A result, kept with what it was computed from. */
interface Cell {
  /** Null: an input. */
  readonly query: Query | null;
  readonly key: string;
  value: unknown;
  /** Whether there is a result, its value kept or not. */
  isKnown: boolean;
  isHeld: boolean;
  /** Revision in which the value last became another. */
  changedAt: number;
  /** Revision in which it was last known to be up to date. */
  verifiedAt: number;
  /** In the order in which they were read. */
  dependencies: readonly Cell[];
  dependents: Dependents<Cell>;
  isStale: boolean;
  isRunning: boolean;
  /** The highest firewall that it depends on. */
  rank: number;
  /** Of its value, once it was needed. */
  digest: string | null;
  isStored: boolean;
}

/** A cell that is being computed, and what it has read. */
interface Running {
  readonly cell: Cell;
  readonly reads: Set<Cell>;
}

/** A value that is set from outside. */
export interface Input<Value> {
  readonly get: (key: string) => Value | undefined;
  /** Without recording that it is read: for what is a function of something else that is recorded. */
  readonly peek: (key: string) => Value | undefined;
  readonly set: (key: string, value: Value) => void;
  readonly delete: (key: string) => void;
}

const none: readonly Cell[] = [];

export class Database {
  /** What is computed, in order, as `query key`: for tests of what an edit makes again. Null: not kept. */
  log: string[] | null = null;
  private readonly digest: (text: string) => string;
  private readonly store: Store | null;
  private revision = 1;
  private running: Running | null = null;
  private readonly queries = new Map<string, Query>();
  /** Firewalls that may be stale, by rank. */
  private readonly pending: Cell[][] = [];
  private sinceSweep = 0;

  /**
   * @param digest names a text; without it texts stand for themselves
   * @param store has results of an earlier process, or of another one
   */
  constructor(digest: (text: string) => string = (text) => text, store?: Store) {
    this.digest = digest;
    this.store = store ?? null;
  }

  input<Value>(): Input<Value> {
    const cells = new Map<string, Cell>();
    const cellOf = (key: string) => {
      const known = cells.get(key) ?? cell(null, key);
      cells.set(key, known);
      return known;
    };
    const put = (key: string, value: Value | undefined) => {
      const input = cellOf(key);
      if (input.value === value) return;
      input.value = value;
      input.changedAt = ++this.revision;
      this.markDependents(input);
      if (value === undefined && input.dependents === null) cells.delete(key);
    };
    return {
      get: (key) => {
        const input = cellOf(key);
        this.record(input);
        return input.value as Value | undefined;
      },
      peek: (key) => cells.get(key)?.value as Value | undefined,
      set: put,
      delete: (key) => put(key, undefined),
    };
  }

  /** A function of its key and of inputs and queries that it reads, nothing else. */
  query<Value>(
    name: string,
    compute: (key: string) => Value,
    { equal = Object.is, firewall, trace, held }: QueryOptions<Value> = {},
  ): (key: string) => Value {
    const query: Query = {
      name,
      compute,
      equal,
      firewall: firewall ?? null,
      cells: new Map(),
      trace: (trace as Trace<unknown> | undefined) ?? null,
      held: held ?? null,
      recent: new Set(),
    };
    this.queries.set(name, query);
    return (key) => {
      const result = this.cellOf(query, key);
      if (this.running === null) this.settle();
      this.refresh(result);
      this.hold(result);
      this.record(result);
      return result.value as Value;
    };
  }

  /** How many results are kept. */
  get size(): number {
    return [...this.queries.values()].reduce((sum, { cells }) => sum + cells.size, 0);
  }

  /** How many values of a query are held. */
  heldOf(name: string): number {
    return [...this.queries.get(name)!.cells.values()].filter(({ isHeld }) => isHeld).length;
  }

  /**
   * Drops results that nothing reads now, except those that are read from outside; only where many have come since.
   * @param roots gives which those are, by query and key
   */
  sweep(roots: () => (query: string, key: string) => boolean, least = 2_000) {
    if (this.sinceSweep < least) return;
    this.sinceSweep = 0;
    const isRoot = roots();
    const isGarbage = ({ query, key, dependents }: Cell) =>
      query !== null && dependents === null && !isRoot(query.name, key);
    const garbage = [...this.queries.values()].flatMap(({ cells }) => [...cells.values()].filter(isGarbage));
    for (let one = garbage.pop(); one !== undefined; one = garbage.pop()) {
      one.query!.cells.delete(one.key);
      one.query!.recent.delete(one);
      for (const other of one.dependencies) {
        other.dependents = withoutDependent(other.dependents, one);
        if (isGarbage(other)) garbage.push(other);
      }
      one.dependencies = none;
    }
  }

  /** Whether a result is known, or can be taken over from the store: then it is. */
  isReady(name: string, key: string): boolean {
    const query = this.queries.get(name)!;
    this.settle();
    const one = this.cellOf(query, key);
    if (!one.isKnown && this.restore(one)) {
      one.verifiedAt = this.revision;
      one.isStale = false;
    }
    return one.isKnown;
  }

  /** Whether a result is known, and nothing that it may depend on has changed since. */
  isUntouched(name: string, key: string): boolean {
    this.settle();
    const one = this.queries.get(name)!.cells.get(key);
    return one?.isKnown === true && !one.isStale;
  }

  /** Whether a result is known and need not be computed again; for that, what it was computed from is brought up to date. */
  isCurrent(name: string, key: string): boolean {
    if (!this.isReady(name, key)) return false;
    const one = this.cellOf(this.queries.get(name)!, key);
    return !one.isStale || !this.hasChanged(one);
  }

  /** Whether a result depends on another one as far as is known. */
  reads(name: string, key: string, other: string, otherKey: string): boolean {
    const [reader, read] = [this.queries.get(name)!.cells.get(key), this.queries.get(other)!.cells.get(otherKey)];
    return reader !== undefined && read !== undefined && reader.dependencies.includes(read);
  }

  /** What may be kept for another process; null: it is as it was in the store. */
  *stored(): Generator<{ readonly query: string; readonly key: string; readonly result: StoredResult | null }> {
    this.settle();
    for (const query of this.queries.values())
      for (const one of query.cells.values()) {
        if (!isTraced(one) || query.trace!.keeps === 'end' || one.isStale || !one.isKnown) continue;
        const result = one.isStored ? null : this.resultOf(one, query.trace!);
        if (one.isStored || result !== null) yield { query: query.name, key: one.key, result };
      }
  }

  private resultOf(one: Cell, { text: textOf, keeps }: Trace<unknown>): StoredResult | null {
    this.hold(one);
    const text = textOf(one.value);
    if (text === null) return null;
    const reads: StoredRead[] = [];
    const seen = new Set<Cell>();
    const walk = (cells: readonly Cell[]) => {
      for (const other of cells) {
        if (other.query === null || seen.has(other)) continue;
        seen.add(other);
        if (isTraced(other)) {
          const digest = this.digestOf(other);
          // What must not be kept is part of this one: neither may it be.
          if (digest === null) return false;
          reads.push({ query: other.query.name, key: other.key, digest });
        } else if (!walk(other.dependencies)) return false;
      }
      return true;
    };
    if (!walk(one.dependencies)) return null;
    return { text: keeps === 'digest' ? null : text, digest: this.named(text), reads };
  }

  /** Of the value of a traced cell that is up to date; null where it must not be kept. */
  private digestOf(one: Cell): string | null {
    if (one.digest !== null) return one.digest;
    this.hold(one);
    const text = one.query!.trace!.text(one.value);
    one.digest = text === null ? null : this.named(text);
    return one.digest;
  }

  private named(text: string): string {
    return text.length <= shortText ? text : this.digest(text);
  }

  private cellOf(query: Query, key: string): Cell {
    const known = query.cells.get(key);
    if (known !== undefined) return known;
    const made = cell(query, key);
    query.cells.set(key, made);
    this.sinceSweep++;
    return made;
  }

  private record(read: Cell) {
    if (this.running === null) return;
    const { cell: reader, reads } = this.running;
    reads.add(read);
    const firewall = read.query?.firewall ?? null;
    const limit = reader.query!.firewall;
    if (limit !== null && (firewall === null ? read.rank >= limit : firewall > limit))
      throw new Error(`${reader.query!.name} is a firewall of rank ${limit}, and reads ${read.query!.name}`);
    reader.rank = Math.max(reader.rank, firewall ?? read.rank);
  }

  /** Marks what may be stale since a cell changed; stops at firewalls. */
  private markDependents({ dependents }: Cell) {
    for (const one of dependentsIn(dependents)) {
      if (one.isStale) continue;
      one.isStale = true;
      const firewall = one.query!.firewall;
      if (firewall === null) this.markDependents(one);
      else this.pendingOf(firewall).push(one);
    }
  }

  private pendingOf(rank: number): Cell[] {
    while (this.pending.length <= rank) this.pending.push([]);
    return this.pending[rank]!;
  }

  /** Brings firewalls up to date, lower ranks first: what changed behind them is marked from there on. */
  private settle() {
    for (let rank = 0; rank < this.pending.length; ) {
      const one = this.pending[rank]!.pop();
      if (one === undefined) rank++;
      else {
        this.refresh(one);
        rank = 0;
      }
    }
  }

  /** Brings a cell up to date: by looking at its dependencies, and only if one became another by computing it again. */
  private refresh(one: Cell) {
    if (!one.isStale) return;
    if (one.isRunning) throw new Error(`${one.query!.name} of ${one.key} depends on itself`);
    if (one.isKnown ? this.hasChanged(one) : !this.restore(one)) this.compute(one);
    one.verifiedAt = this.revision;
    one.isStale = false;
  }

  private hasChanged(one: Cell): boolean {
    one.isRunning = true;
    try {
      for (const dependency of one.dependencies) {
        this.refresh(dependency);
        if (dependency.changedAt > one.verifiedAt) return true;
      }
      return false;
    } finally {
      one.isRunning = false;
    }
  }

  /** Computes the value of a cell that is up to date, if it was dropped: it is the same again. */
  private hold(one: Cell) {
    const { name, compute, held, recent } = one.query!;
    if (!one.isHeld) {
      this.log?.push(`${name} ${one.key}`);
      one.value = this.run(one, () => compute(one.key));
      one.isHeld = true;
    }
    if (held === null || held.always?.(one.key) === true) return;
    recent.delete(one);
    recent.add(one);
    if (recent.size <= 2 * held.most) return;
    for (const old of recent) {
      if (recent.size <= held.most) break;
      recent.delete(old);
      old.value = undefined;
      old.isHeld = false;
    }
  }

  private compute(one: Cell) {
    const { name, compute, equal, firewall } = one.query!;
    this.log?.push(`${name} ${one.key}`);
    const value = this.run(one, () => compute(one.key));
    one.isStored = false;
    if (one.isKnown && this.isSame(one, value, equal)) return;
    const before = one.isKnown;
    this.put(one, value);
    if (before && firewall !== null) this.markDependents(one);
  }

  private isSame(one: Cell, value: unknown, equal: Query['equal']): boolean {
    if (one.isHeld) return equal(one.value as never, value as never);
    if (one.digest === null) return false;
    const digest = one.digest;
    Object.assign(one, { value, isHeld: true, digest: null });
    return this.digestOf(one) === digest;
  }

  private put(one: Cell, value: unknown) {
    one.value = value;
    one.isHeld = true;
    one.isKnown = true;
    one.changedAt = this.revision;
    one.digest = null;
    one.isStored = false;
  }

  /** Takes a result over from the store if what it was computed from is as it was then. */
  private restore(one: Cell): boolean {
    const { name, trace } = one.query!;
    if (this.store === null || trace === null || trace.keeps === 'end' || !isTraced(one)) return false;
    const stored = this.store.get(name, one.key);
    if (stored === null) return false;
    const { keeps } = trace;
    const isValid = this.run(one, () => stored.reads.every((read) => this.isAsRead(read)));
    if (!isValid) return false;
    if (keeps !== 'digest') {
      const value = readValue(stored, keeps);
      if (value == null) return false;
      this.put(one, value);
    }
    one.isKnown = true;
    one.changedAt = this.revision;
    one.isStored = true;
    one.digest = stored.digest;
    return true;
  }

  private isAsRead({ query, key, digest }: StoredRead): boolean {
    const of = this.queries.get(query);
    if (of === undefined) return false;
    const read = this.cellOf(of, key);
    this.refresh(read);
    this.record(read);
    return isTraced(read) && this.digestOf(read) === digest;
  }

  /** Does something for a cell, and records what it reads. */
  private run<T>(one: Cell, work: () => T): T {
    const outer = this.running;
    const reads = new Set<Cell>();
    this.running = { cell: one, reads };
    one.isRunning = true;
    one.rank = 0;
    try {
      return work();
    } finally {
      one.isRunning = false;
      this.running = outer;
      this.connect(one, reads);
    }
  }

  private connect(one: Cell, reads: ReadonlySet<Cell>) {
    const before = new Set(one.dependencies);
    for (const other of before) if (!reads.has(other)) other.dependents = withoutDependent(other.dependents, one);
    for (const other of reads) if (!before.has(other)) other.dependents = withDependent(other.dependents, one);
    one.dependencies = reads.size === 0 ? none : [...reads];
  }
}

/** Null where the text is none of a value: the store may be damaged. */
function readValue({ text }: StoredResult, read: (text: string) => unknown): unknown {
  try {
    return text === null ? null : read(text);
  } catch {
    return null;
  }
}

/** Texts up to this length are their own digest. */
const shortText = 64;

function isTraced({ query, key }: Cell): boolean {
  return query !== null && query.trace !== null && (query.trace.of?.(key) ?? true);
}

function cell(query: Query | null, key: string): Cell {
  return {
    query,
    key,
    value: undefined,
    isKnown: query === null,
    isHeld: query === null,
    changedAt: 0,
    verifiedAt: 0,
    dependencies: none,
    dependents: null,
    isStale: query !== null,
    isRunning: false,
    rank: 0,
    digest: null,
    isStored: false,
  };
}
