/** SQLite as this machine has it: that of Node, or a WebAssembly build that keeps to files. */

export type Value = string | number | null;
export type Row = Readonly<Record<string, Value>>;

export interface Sqlite {
  exec(sql: string): void;
  all(sql: string, values?: readonly Value[]): Row[];
  /** A statement that is run many times. */
  prepare(sql: string): (values: readonly Value[]) => void;
  /** Forgets the statements that were prepared. */
  finish(): void;
  close(): void;
}

/** Opens a file; `:memory:` for none. Throws what SQLite throws. */
export async function openSqlite(path: string): Promise<Sqlite> {
  return (await ofNode(path)) ?? (await ofWasm(path));
}

/** Null where this Node has none. */
export async function ofNode(path: string): Promise<Sqlite | null> {
  const { emitWarning } = process;
  let module: typeof import('node:sqlite');
  try {
    // Node says at each start that this part of it may still change.
    process.emitWarning = () => {};
    module = await import('node:sqlite');
  } catch {
    return null;
  } finally {
    process.emitWarning = emitWarning;
  }
  const database = new module.DatabaseSync(path);
  return {
    exec: (sql) => database.exec(sql),
    all: (sql, values = []) => database.prepare(sql).all(...values) as Row[],
    prepare(sql) {
      const statement = database.prepare(sql);
      return (values) => void statement.run(...values);
    },
    finish: () => {},
    close: () => database.close(),
  };
}

export async function ofWasm(path: string): Promise<Sqlite> {
  const module = await import('node-sqlite3-wasm');
  const { Database } = module.default ?? module;
  const database = new Database(path);
  const prepared: { finalize(): void }[] = [];
  return {
    exec: (sql) => database.exec(sql),
    all: (sql, values = []) => database.all(sql, [...values]) as Row[],
    prepare(sql) {
      const statement = database.prepare(sql);
      prepared.push(statement);
      return (values) => void statement.run([...values]);
    },
    finish() {
      for (const statement of prepared.splice(0)) statement.finalize();
    },
    close: () => database.close(),
  };
}
