/**
 * An incremental computation engine: inputs, derived queries, recorded dependencies. It is demand-driven with revision
 * numbers, early cut-off and backdating as in salsa (red and green cells), and marks what may be stale when an input
 * changes (dirty bits), so that what an edit cannot affect is not even looked at.
 */

/** What a query is besides its function. */
export interface QueryOptions<Value> {
  /** Whether a result that is computed again is the same as before; then whoever read it stays valid, and the old one is kept. */
  readonly equal?: (before: Value, now: Value) => boolean;
  /**
   * A firewall passes on that it changed, never that it may have changed: it is brought up to date before anything is asked.
   * Those of a lower rank come first. It may read what is behind firewalls of lower ranks, and other firewalls up to its own.
   */
  readonly firewall?: number;
}

interface Query {
  readonly name: string;
  readonly compute: (key: string) => unknown;
  readonly equal: (before: never, now: never) => boolean;
  readonly firewall: number | null;
  readonly cells: Map<string, Cell>;
}

/** A result, kept with what it was computed from. */
interface Cell {
  /** Null: an input. */
  readonly query: Query | null;
  readonly key: string;
  value: unknown;
  isKnown: boolean;
  /** Revision in which the value last became another. */
  changedAt: number;
  /** Revision in which it was last known to be up to date. */
  verifiedAt: number;
  /** In the order in which they were read. */
  readonly dependencies: Set<Cell>;
  readonly dependents: Set<Cell>;
  isStale: boolean;
  isRunning: boolean;
  /** The highest firewall that it depends on. */
  rank: number;
}

/** A value that is set from outside. */
export interface Input<Value> {
  readonly get: (key: string) => Value | undefined;
  /** Without recording that it is read: for what is a function of something else that is recorded. */
  readonly peek: (key: string) => Value | undefined;
  readonly set: (key: string, value: Value) => void;
  readonly delete: (key: string) => void;
}

export class Database {
  /** What is computed, in order, as `query key`: for tests of what an edit makes again. Null: not kept. */
  log: string[] | null = null;
  private revision = 1;
  private running: Cell | null = null;
  private readonly queries: Query[] = [];
  /** Firewalls that may be stale, by rank. */
  private readonly pending: Cell[][] = [];
  private sinceSweep = 0;

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
      if (value === undefined && input.dependents.size === 0) cells.delete(key);
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
    { equal = Object.is, firewall }: QueryOptions<Value> = {},
  ): (key: string) => Value {
    const query: Query = { name, compute, equal, firewall: firewall ?? null, cells: new Map() };
    this.queries.push(query);
    return (key) => {
      let result = query.cells.get(key);
      if (result === undefined) {
        result = cell(query, key);
        query.cells.set(key, result);
        this.sinceSweep++;
      }
      if (this.running === null) this.settle();
      this.refresh(result);
      this.record(result);
      return result.value as Value;
    };
  }

  /** How many results are kept. */
  get size(): number {
    return this.queries.reduce((sum, { cells }) => sum + cells.size, 0);
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
      query !== null && dependents.size === 0 && !isRoot(query.name, key);
    const garbage = this.queries.flatMap(({ cells }) => [...cells.values()].filter(isGarbage));
    for (let one = garbage.pop(); one !== undefined; one = garbage.pop()) {
      one.query!.cells.delete(one.key);
      for (const other of one.dependencies) {
        other.dependents.delete(one);
        if (isGarbage(other)) garbage.push(other);
      }
      one.dependencies.clear();
    }
  }

  private record(read: Cell) {
    const reader = this.running;
    if (reader === null) return;
    reader.dependencies.add(read);
    read.dependents.add(reader);
    const firewall = read.query?.firewall ?? null;
    const limit = reader.query!.firewall;
    if (limit !== null && (firewall === null ? read.rank >= limit : firewall > limit))
      throw new Error(`${reader.query!.name} is a firewall of rank ${limit}, and reads ${read.query!.name}`);
    reader.rank = Math.max(reader.rank, firewall ?? read.rank);
  }

  /** Marks what may be stale since a cell changed; stops at firewalls. */
  private markDependents({ dependents }: Cell) {
    for (const one of dependents) {
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
    if (!one.isKnown || this.hasChanged(one)) this.compute(one);
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

  private compute(one: Cell) {
    const { name, compute, equal, firewall } = one.query!;
    for (const dependency of one.dependencies) dependency.dependents.delete(one);
    one.dependencies.clear();
    one.rank = 0;
    const reader = this.running;
    this.running = one;
    one.isRunning = true;
    this.log?.push(`${name} ${one.key}`);
    try {
      const value = compute(one.key);
      if (one.isKnown && equal(one.value as never, value as never)) return;
      one.value = value;
      one.changedAt = this.revision;
      const before = one.isKnown;
      one.isKnown = true;
      if (before && firewall !== null) this.markDependents(one);
    } finally {
      one.isRunning = false;
      this.running = reader;
    }
  }
}

function cell(query: Query | null, key: string): Cell {
  return {
    query,
    key,
    value: undefined,
    isKnown: query === null,
    changedAt: 0,
    verifiedAt: 0,
    dependencies: new Set(),
    dependents: new Set(),
    isStale: query !== null,
    isRunning: false,
    rank: 0,
  };
}
